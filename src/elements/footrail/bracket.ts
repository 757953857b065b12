import { boundsOf, flatten } from '../../base/outline';
import type { Outline, Vec2 } from '../../vocabulary/geometry';

/** A rail's section and how a bracket holds it. All mm. */
export interface Rest {
  readonly height: number;
  readonly thickness: number;
  /** What the bracket's upper edge has cut out of it, as points (up, out) of the section, from its front to its back; none: it lies flat on it. */
  readonly seat: readonly Vec2[];
  /** How far the bracket's upper edge stands above the rail's lowest line. */
  readonly deep: number;
}

/** Noise of the last digits, mm. */
const NOISE = 1e-9;

/** A rail lies in its brackets to half its height, if it can be laid in from above; else it lies on them. */
export function restOf(section: Outline): Rest {
  const { max } = boundsOf(section);
  const [height, thickness] = max;
  const seat = lowerHalf(flatten(section), height / 2);
  return seat ? { height, thickness, seat, deep: height / 2 } : { height, thickness, seat: [], deep: 0 };
}

/** The part of a section, counter-clockwise, below `level`, in one piece from its front to its back; undefined where it undercuts. */
function lowerHalf(points: readonly Vec2[], level: number): readonly Vec2[] | undefined {
  const n = points.length;
  const below = (i: number): boolean => points[i % n][0] < level - NOISE;
  const starts = points.flatMap((_, i) => (!below(i) && below(i + 1) ? [i] : []));
  if (starts.length !== 1) return undefined;
  const [first] = starts;
  const seat: Vec2[] = [crossing(points[first], points[(first + 1) % n], level)];
  let i = first + 1;
  for (; below(i); i++) seat.push(points[i % n]);
  seat.push(crossing(points[(i - 1) % n], points[i % n], level));
  const falls = seat.every(([, v], k) => k === 0 || v <= seat[k - 1][1] + NOISE);
  return falls ? seat : undefined;
}

/** Where the line from a to b is at `level`. */
function crossing([au, av]: Vec2, [bu, bv]: Vec2, level: number): Vec2 {
  const k = (level - au) / (bu - au);
  return [level, av + (bv - av) * k];
}

/** Stuff left in front of a rail that lies in a seat, mm (common practice, no source). */
export const NOSE = 15;

/**
 * Outline of a bracket, first out from the front, then up from its lower edge, counter-clockwise. `reach`: from its back to the rail's back;
 * `under`: from its lower edge to the rail's lowest line.
 */
export function bracketOutline({ thickness, seat, deep }: Rest, reach: number, under: number): readonly Vec2[] {
  const nose = reach + thickness + (seat.length > 0 ? NOSE : 0);
  const high = under + deep;
  return [[0, 0], [nose, 0], [nose, high], ...seat.map(([u, v]): Vec2 => [reach + v, under + u]), [0, high]];
}
