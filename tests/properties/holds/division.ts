import type { Design } from '../../../src/vocabulary/design';
import type { Part } from '../../../src/vocabulary/part';
import type { RodRun } from '../../../src/vocabulary/rod';
import { expectedLayers } from '../expected';
import { cornersIn, type Extent, extentAt, reachOf, same } from '../measure';
import type { Found } from '../sample';

/** Equal bays may differ by this much, mm. */
const EQUAL = 0.01;
/** Centres may be passed by the length below which two lengths are the same (0.004 mm), and a digit's noise. */
const OVER_CENTRES = 0.005;

const rising = (extents: readonly Extent[]): readonly Extent[] => [...extents].sort((a, b) => a.from - b.from);
const gapsOf = (extents: readonly Extent[]): readonly number[] =>
  extents.slice(1).map((e, i) => e.from - extents[i].to);
const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
const width = ({ from, to }: Extent): number => to - from;

/** Pillars and bays add up to the face of the run, and the bays are equal where the rhythm is by number or by pitch. */
export function bays(made: Design): Found {
  const wrong: string[] = [];
  let looked = 0;
  const { faces } = expectedLayers(made.job);
  for (const run of made.rod.runs) {
    const boards = made.parts.filter((p) => p.run === run.id && p.kind === 'pillar');
    const ends = endsOf(run, made);
    const seen = boards.flatMap((p) => extentAt(run, p, faces.pillar) ?? []);
    if (run.pillars.length === 0 || seen.length !== run.pillars.length) continue;
    looked++;
    const pillars = rising(seen);
    const gaps = gapsOf(pillars);
    const total = sum(pillars.map(width)) + sum(gaps);
    if (!same(total, ends.to - ends.from))
      wrong.push(`run ${run.id}: pillars and bays come to ${total} on a face of ${ends.to - ends.from}`);
    if (gaps.some((g) => g <= 0)) wrong.push(`run ${run.id}: a bay of ${Math.min(...gaps)}`);
    const asked = run.jobIndex === null ? undefined : made.job.unit.plan.runs[run.jobIndex].rhythm;
    if (asked?.by !== 'marks' && Math.max(...gaps) - Math.min(...gaps) > EQUAL)
      wrong.push(`run ${run.id}: bays from ${Math.min(...gaps)} to ${Math.max(...gaps)}`);
    const told = made.findings.some((f) => f.rule === 'bays-too-narrow' && f.subject.run === run.id);
    if (asked?.by === 'count' && !told && gaps.length !== asked.count)
      wrong.push(`run ${run.id}: ${gaps.length} bays; ${asked.count} were asked`);
    const pitch = asked?.by === 'pitch' ? asked.pitch : undefined;
    const centres = pillars.slice(2, -1).map((p, i) => (p.from + p.to - pillars[i + 1].from - pillars[i + 1].to) / 2);
    if (pitch !== undefined && !told && centres.some((c) => c > pitch + EQUAL))
      wrong.push(`run ${run.id}: pillars ${Math.max(...centres)} apart; ${pitch} at most were asked`);
  }
  return { wrong, looked };
}

/** The face of a run at the pillars, from the cladding it stands on: its backs give the frame line, its faces the slope of the corner. */
function endsOf(run: RodRun, made: Design): Extent {
  const { faces } = expectedLayers(made.job);
  const skin = made.parts.filter((p) => p.run === run.id && p.kind === 'cladding');
  const at = (d: number): Extent => {
    const all = skin.flatMap((p) => extentAt(run, p, d) ?? []);
    return { from: Math.min(...all.map((e) => e.from)), to: Math.max(...all.map((e) => e.to)) };
  };
  const [back, face] = [at(0), at(faces.cladding)];
  const k = faces.pillar / faces.cladding;
  return { from: back.from + (face.from - back.from) * k, to: back.to + (face.to - back.to) * k };
}

/** Studs and gaps add up to the plates; studs never further apart than the centres; each noggin fits between two studs and the plates. */
export function timber(made: Design): Found {
  const wrong: string[] = [];
  let looked = 0;
  const centresAtMost = made.job.unit.elements.frame.centres as number;
  for (const run of made.rod.runs.filter((r) => r.sound)) {
    const of = (code: string): readonly Part[] => made.parts.filter((p) => p.run === run.id && p.code === code);
    const [plate, other] = of('PL').map((p) => reachOf(run, p));
    const studs = rising(of('ST').map((p) => reachOf(run, p)));
    looked += studs.length;
    const gaps = gapsOf(studs);
    if (!same(plate.from, other.from) || !same(plate.to, other.to)) wrong.push(`run ${run.id}: plates differ`);
    if (!same(sum(studs.map(width)) + sum(gaps), width(plate)))
      wrong.push(
        `run ${run.id}: studs and gaps come to ${sum(studs.map(width)) + sum(gaps)}, the plate is ${width(plate)}`,
      );
    if (!same(studs[0].from, plate.from))
      wrong.push(`run ${run.id}: the first stud is at ${studs[0].from}, the plate at ${plate.from}`);
    if (gaps.some((g) => g < -1e-6)) wrong.push(`run ${run.id}: studs overlap by ${-Math.min(...gaps)}`);
    const centres = studs.slice(1).map((s, i) => (s.from + s.to - studs[i].from - studs[i].to) / 2);
    if (centres.some((c) => c > centresAtMost + OVER_CENTRES))
      wrong.push(`run ${run.id}: studs ${Math.max(...centres)} apart; ${centresAtMost} at most were asked`);
    wrong.push(...noggins(run, of('NG'), studs, of('PL')));
  }
  return { wrong, looked };
}

function noggins(
  run: RodRun,
  parts: readonly Part[],
  studs: readonly Extent[],
  plates: readonly Part[],
): readonly string[] {
  const heights = (p: Part): Extent => {
    const zs = cornersIn(run, p).map((c) => c.z);
    return { from: Math.min(...zs), to: Math.max(...zs) };
  };
  const [bottom, top] = plates.map(heights).sort((a, b) => a.from - b.from);
  const fitted = parts.map((p) => ({ p, x: reachOf(run, p), z: heights(p) }));
  return fitted.flatMap(({ p, x, z }, i) => {
    const said: string[] = [];
    if (!studs.some((s, k) => k > 0 && same(studs[k - 1].to, x.from) && same(s.from, x.to)))
      said.push(`${p.mark} from ${x.from} to ${x.to} fits between no two studs`);
    if (z.from < bottom.to - 1e-6 || z.to > top.from + 1e-6) said.push(`${p.mark} at ${z.from} runs into a plate`);
    const over = fitted.find(
      (q, k) => k > i && same(q.x.from, x.from) && q.z.from < z.to - 1e-6 && q.z.to > z.from + 1e-6,
    );
    if (over) said.push(`${p.mark} and ${over.p.mark} share a place`);
    return said;
  });
}
