import { footOf, type IntoBay, intoBays, reachBetween } from '../../base/foot';
import { tenth } from '../../base/tenth';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Vec2 } from '../../vocabulary/geometry';
import type { Rod, RodRun, RunJoin } from '../../vocabulary/rod';

/** One of the lengths of a strip on which its width is the same. */
interface Length {
  readonly low: number;
  readonly high: number;
  /** What stands out from the pillar beside it takes this much of its width there. */
  readonly taken: number;
}

/** A strip over a join: from `from` to `to` along the run, with a pillar on one side; made of lengths from the lowest up. */
export interface Strip {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  readonly pillarOn: 'left' | 'right';
  readonly lengths: readonly Length[];
}

/** A leg narrower than this breaks off, mm (common practice, no source). */
const LEAST_LEG = 10;

/** From the skirting, or the plinth that runs through, up to the top or the moulding under it; scribed round what stands out from its pillar. */
export function stripOf(rod: Rod, run: RodRun, { coverFrom: from, coverTo: to }: RunJoin): Strip {
  const foot = footOf(rod);
  const top = rod.frameHeight - (rod.heights.underTop ?? 0);
  const bay = run.bays.find((b) => b.from < to && b.to > from);
  const pillarOn = bay && from - bay.from > bay.to - to ? 'right' : 'left';
  const block = bay ? (pillarOn === 'left' ? bay.footFrom - bay.from : bay.to - bay.footTo) : 0;
  const inTheWay: readonly IntoBay[] = [{ low: 0, high: rod.heights.plinth ?? 0, by: block }, ...intoBays(rod)];
  const lines = [foot, top, ...inTheWay.flatMap((z) => [z.low, z.high])]
    .filter((z) => z >= foot && z <= top)
    .sort((a, b) => a - b)
    .filter((z, i, all) => i === 0 || z - all[i - 1] > SAME_LENGTH);
  const each = lines.slice(1).map((high, i): Length => {
    const low = lines[i];
    return { low, high, taken: reachBetween(inTheWay, low, high) };
  });
  // Where next to nothing of it would be left beside them, it ends above a block and below a cap.
  const narrow = ({ taken }: Length): boolean => to - from - taken < LEAST_LEG;
  const first = each.findIndex((l) => !narrow(l));
  const last = each.findLastIndex((l) => !narrow(l));
  const kept = first < 0 ? [] : each.slice(first, last + 1);
  const lengths = kept.some(narrow) ? [] : kept;
  return {
    from,
    to,
    low: lengths[0]?.low ?? foot,
    high: lengths.at(-1)?.high ?? foot,
    pillarOn,
    lengths,
  };
}

/** Its outline, counter-clockwise as seen from the front: first along the run from its left edge, then up from its lower edge. */
export function outlineOf({ from, to, low, high, pillarOn, lengths }: Strip): readonly Vec2[] {
  const width = to - from;
  const stepped = [...lengths].reverse().flatMap((l): Vec2[] => [
    [l.taken, l.high - low],
    [l.taken, l.low - low],
  ]);
  const left = [[width, 0] as const, [width, high - low] as const, ...stepped].filter(
    (p, i, all) => !inLine(all.at(i - 1), p, all[(i + 1) % all.length]),
  );
  return pillarOn === 'left' ? left : left.map(([x, z]): Vec2 => [width - x, z]).reverse();
}

/** Whether a corner is none: it lies on another, or on the straight line between its neighbours. */
const inLine = (a: Vec2 | undefined, [x, z]: Vec2, [nx, nz]: Vec2): boolean =>
  (same(x, nx) && same(z, nz)) ||
  (a !== undefined && ((same(a[0], x) && same(x, nx)) || (same(a[1], z) && same(z, nz))));

/** Sizes that differ in their last digits only make no step. */
const same = (a: number, b: number): boolean => Math.abs(a - b) < SAME_LENGTH;

/** What is taken out of its edge, in words. */
export function stepsInWords({ low, pillarOn, lengths }: Strip): readonly string[] {
  return lengths
    .filter((l) => l.taken > 0)
    .map(
      (l) =>
        `${tenth(l.taken)} taken off the ${pillarOn} edge from ${tenth(l.low - low)} to ${tenth(l.high - low)} from its lower end`,
    );
}
