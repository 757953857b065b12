import type { Design } from '../../../src/vocabulary/design';
import type { Part } from '../../../src/vocabulary/part';
import type { RodRun } from '../../../src/vocabulary/rod';
import { expectedLayers, expectedRuns } from '../expected';
import { cornersIn, type Extent, reachOf, same } from '../measure';
import type { Found } from '../sample';
import { gapsOf, rising, sum, width } from './extents';

/** Centres may be passed by the length below which two lengths are the same (0.004 mm), and a digit's noise. */
const OVER_CENTRES = 0.005;
/** Timber keeps so far from the side of a hole in the skin (common practice, no source). */
const CLEAR_OF_HOLE = 5;

/**
 * A run's plates lie end to end from one end of its frame to the other, and end on every join; on each pair of plates studs and gaps add up, a
 * stud stands at each end and none further from the next than the centres, but at an opening that is trimmed; each noggin fits between two studs
 * and the plates.
 */
export function timber(made: Design): Found {
  const wrong: string[] = [];
  let looked = 0;
  const { tolerance } = made.job.fit;
  for (const expected of expectedRuns(made.job)) {
    const run = made.rod.runs.find((r) => r.id === expected.id);
    const of = (code: string): readonly Part[] => made.parts.filter((p) => p.run === run?.id && p.code === code);
    // Under a top too low for studs no frame is made, and it is said.
    if (!run?.sound || made.findings.some((f) => f.rule === 'frame-no-height')) continue;
    const bottom = of('PL').filter((p) => p.where === 'bottom');
    const top = of('PL').filter((p) => p.where === 'top');
    const lines = rising(bottom.map((p) => reachOf(run, p)));
    const others = rising(top.map((p) => reachOf(run, p)));
    if (
      lines.length !== others.length ||
      lines.some((l, i) => !same(l.from, others[i].from) || !same(l.to, others[i].to))
    )
      wrong.push(`run ${run.id}: plates differ`);
    if (gapsOf(lines).some((g) => !same(g, 0)) || lines.length !== run.joins.length + 1)
      wrong.push(`run ${run.id}: ${lines.length} plates for ${run.joins.length} joins, ${gapsOf(lines)} apart`);
    run.joins.forEach(({ x }, i) => {
      if (!same(lines[i]?.to, x)) wrong.push(`run ${run.id}: a plate ends on ${lines[i]?.to}, the join is at ${x}`);
    });
    // At a wall the tolerances gathered are taken off; at a free end nothing is. At a corner the two frames divide it between them.
    const clear = { wall: tolerance, free: 0, corner: Number.NaN };
    const [first, last] = [clear[expected.left.kind], clear[expected.right.kind]];
    const length = lines[lines.length - 1]?.to;
    if (Math.abs(lines[0]?.from - first) > 1e-6 || Math.abs(run.length - length - last) > 1e-6)
      wrong.push(`run ${run.id}: its plates lie from ${lines[0]?.from} to ${length} of ${run.length}`);
    const studs = rising(of('ST').map((p) => reachOf(run, p)));
    looked += studs.length;
    const stood = lines.map((plate) => studs.filter((s) => s.from >= plate.from - 1e-6 && s.to <= plate.to + 1e-6));
    if (sum(stood.map((s) => s.length)) !== studs.length) wrong.push(`run ${run.id}: a stud stands across a join`);
    wrong.push(...stood.flatMap((mine, i) => onPlate(made, run, mine, lines[i])));
    wrong.push(...noggins(run, of('NG'), stood, [...bottom.slice(0, 1), ...top.slice(0, 1)]));
  }
  return { wrong, looked };
}

/** The studs on one pair of plates. */
function onPlate(made: Design, run: RodRun, studs: readonly Extent[], plate: Extent): readonly string[] {
  const wrong: string[] = [];
  const gaps = gapsOf(studs);
  const total = sum(studs.map(width)) + sum(gaps);
  if (!same(total, width(plate)))
    wrong.push(`run ${run.id}: studs and gaps come to ${total}, the plate is ${width(plate)}`);
  if (!same(studs[0]?.from, plate.from))
    wrong.push(`run ${run.id}: the first stud is at ${studs[0]?.from}, the plate at ${plate.from}`);
  if (gaps.some((g) => g < -1e-6)) wrong.push(`run ${run.id}: studs overlap by ${-Math.min(...gaps)}`);
  const atMost = made.job.unit.elements.frame.centres as number;
  const holes = trimmed(made, run);
  for (const [i, stud] of studs.slice(1).entries()) {
    const before = studs[i];
    const apart = (stud.from + stud.to - before.from - before.to) / 2;
    // Beside an opening a stud stands tight against it, or serves from within its own width of that.
    const hole = holes.find((h) => h.from >= before.to - 1e-6 && h.to <= stud.from + 1e-6);
    const most = Math.max(atMost, hole ? width(hole) + width(before) / 2 + width(stud) / 2 + 2 * width(stud) : 0);
    if (apart > most + OVER_CENTRES) wrong.push(`run ${run.id}: studs ${apart} apart; ${most} at most were asked`);
  }
  return wrong;
}

/** The lengths without studs for openings in the front: those too near one another for a stud are one. From the job's own numbers. */
function trimmed({ job, openings }: Design, run: RodRun): readonly Extent[] {
  const { stud } = expectedLayers(job);
  const holes = openings
    .filter((o) => o.run === run.id && o.through === 'front')
    .map(({ index }) => job.unit.openings[index])
    .map(({ x, width: wide }) => ({ from: x - wide / 2 - CLEAR_OF_HOLE, to: x + wide / 2 + CLEAR_OF_HOLE }));
  const all: Extent[] = [];
  for (const hole of rising(holes)) {
    const last = all.at(-1);
    if (last && hole.from - last.to < stud - 1e-6)
      all.splice(-1, 1, { from: last.from, to: Math.max(last.to, hole.to) });
    else all.push(hole);
  }
  return all;
}

function noggins(
  run: RodRun,
  parts: readonly Part[],
  stood: readonly (readonly Extent[])[],
  plates: readonly Part[],
): readonly string[] {
  const heights = (p: Part): Extent => {
    const zs = cornersIn(run, p).map((c) => c.z);
    return { from: Math.min(...zs), to: Math.max(...zs) };
  };
  const [bottom, top] = plates.map(heights);
  const fitted = parts.map((p) => ({ p, x: reachOf(run, p), z: heights(p) }));
  return fitted.flatMap(({ p, x, z }, i) => {
    const said: string[] = [];
    const between = stood.some((studs) =>
      studs.some((s, k) => k > 0 && same(studs[k - 1].to, x.from) && same(s.from, x.to)),
    );
    if (!between) said.push(`${p.mark} from ${x.from} to ${x.to} fits between no two studs`);
    if (z.from < bottom.to - 1e-6 || z.to > top.from + 1e-6) said.push(`${p.mark} at ${z.from} runs into a plate`);
    const over = fitted.find(
      (q, k) => k > i && same(q.x.from, x.from) && q.z.from < z.to - 1e-6 && q.z.to > z.from + 1e-6,
    );
    if (over) said.push(`${p.mark} and ${over.p.mark} share a place`);
    return said;
  });
}
