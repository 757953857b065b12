import type { Design } from '../../../src/vocabulary/design';
import type { RodRun } from '../../../src/vocabulary/rod';
import { type ExpectedRun, expectedLayers, expectedRuns } from '../expected';
import { type Extent, extentAt, same } from '../measure';
import type { Found } from '../sample';
import { gapsOf, rising, sum, width } from './extents';

/** Equal bays may differ by this much, mm. */
const EQUAL = 0.01;

/** Pillars and bays add up to the face of the run, and the bays are equal where the rhythm is by number or by pitch. */
export function bays(made: Design): Found {
  const wrong: string[] = [];
  let looked = 0;
  const { faces } = expectedLayers(made.job);
  const expected = expectedRuns(made.job);
  for (const run of made.rod.runs) {
    const boards = made.parts.filter((p) => p.run === run.id && p.code === 'PI');
    const bare = bareAt(made, expected.find((e) => e.id === run.id) as ExpectedRun);
    const ends = endsOf(run, made, bare);
    const pillars = rising(boards.flatMap((p) => extentAt(run, p, faces.pillar) ?? []));
    // Where a board is left out, and said, or there are no bays, nothing can be added up.
    if (run.bays.length === 0 || pillars.length !== run.pillars.length) continue;
    looked++;
    const gaps = gapsOf([
      ...(bare.left ? [{ from: ends.from, to: ends.from }] : []),
      ...pillars,
      ...(bare.right ? [{ from: ends.to, to: ends.to }] : []),
    ]);
    const total = sum(pillars.map(width)) + sum(gaps);
    if (!same(total, ends.to - ends.from))
      wrong.push(`run ${run.id}: pillars and bays come to ${total} on a face of ${ends.to - ends.from}`);
    const outer = pillars.at(0);
    if (
      outer &&
      ((!bare.left && !same(outer.from, ends.from)) || (!bare.right && !same(pillars[pillars.length - 1].to, ends.to)))
    )
      wrong.push(`run ${run.id}: end pillars stand away from its ends, ${ends.from} and ${ends.to}`);
    if (gaps.some((g) => g <= 0)) wrong.push(`run ${run.id}: a bay of ${Math.min(...gaps)}`);
    const asked = run.jobIndex === null ? undefined : made.job.unit.plan.runs[run.jobIndex].rhythm;
    if (asked?.by !== 'marks' && Math.max(...gaps) - Math.min(...gaps) > EQUAL)
      wrong.push(`run ${run.id}: bays from ${Math.min(...gaps)} to ${Math.max(...gaps)}`);
    const told = made.findings.some((f) => f.rule === 'bays-too-narrow' && f.subject.run === run.id);
    if (asked?.by === 'count' && !told && gaps.length !== asked.count)
      wrong.push(`run ${run.id}: ${gaps.length} bays; ${asked.count} were asked`);
    const pitch = asked?.by === 'pitch' ? asked.pitch : undefined;
    const between = pillars.slice(bare.left ? 0 : 1, bare.right ? undefined : -1);
    const centres = gapsOf(between).map((gap) => gap + width(between[0]));
    if (pitch !== undefined && !told && centres.some((c) => c > pitch + EQUAL))
      wrong.push(`run ${run.id}: pillars ${Math.max(...centres)} apart; ${pitch} at most were asked`);
  }
  return { wrong, looked };
}

interface Bare {
  readonly left: boolean;
  readonly right: boolean;
}

/** At which ends a bay runs into the corner. */
function bareAt({ job }: Design, { left, right }: ExpectedRun): Bare {
  const none = job.unit.elements.pillar.atCorners === false;
  return { left: none && left.kind === 'corner', right: none && right.kind === 'corner' };
}

/**
 * The face of a run at the pillars, from the cladding it stands on: its backs give the frame line, its faces the slope of the corner. Where a bay
 * runs into the corner it ends with the face of the cladding itself.
 */
function endsOf(run: RodRun, made: Design, bare: Bare): Extent {
  const { faces } = expectedLayers(made.job);
  const skin = made.parts.filter((p) => p.run === run.id && p.kind === 'cladding');
  const at = (d: number): Extent => {
    const all = skin.flatMap((p) => extentAt(run, p, d) ?? []);
    return { from: Math.min(...all.map((e) => e.from)), to: Math.max(...all.map((e) => e.to)) };
  };
  const [back, face] = [at(0), at(faces.cladding)];
  const k = faces.pillar / faces.cladding;
  return {
    from: back.from + (face.from - back.from) * (bare.left ? 1 : k),
    to: back.to + (face.to - back.to) * (bare.right ? 1 : k),
  };
}
