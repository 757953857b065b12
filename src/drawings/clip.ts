import { SAME_LENGTH } from '../base/tolerance';
import type { Vec2 } from '../vocabulary/geometry';
import type { Rod, RodRun } from '../vocabulary/rod';
import { boundsOf, type Seen } from './view';

/** How far a front is seen along the run, mm: at an inside corner the neighbour comes forward and hides what lies beyond. */
export interface Limits {
  readonly from: number;
  readonly to: number;
}

/** At an inside corner the view ends on the neighbour's skin: where the innermost layer before the frame line meets its own mitre. */
export function limitsOf(run: RodRun, layers: Rod['layers']): Limits {
  const skin = Math.min(
    ...Object.values(layers).map(({ outer }) => (outer > SAME_LENGTH ? outer : Number.POSITIVE_INFINITY)),
  );
  const inset = Number.isFinite(skin) ? skin : 0;
  const inside = (end: RodRun['left']): boolean => end.kind === 'corner' && end.deflectionDeg < 0;
  return {
    from: inside(run.left) ? -run.left.grows * inset : Number.NEGATIVE_INFINITY,
    to: inside(run.right) ? run.length + run.right.grows * inset : Number.POSITIVE_INFINITY,
  };
}

/** What is seen of a part between the limits; null when nothing is. */
export function within(seen: Seen, { from, to }: Limits): Seen | null {
  if (seen.min[0] >= from && seen.max[0] <= to) return seen;
  const cut = (points: readonly Vec2[]): readonly Vec2[] => outlineWithin(points, { from, to });
  const outline = cut(seen.outline);
  const { min, max } = boundsOf(outline);
  if (outline.length < 3 || max[0] - min[0] < SAME_LENGTH) return null;
  const lines = seen.lines.flatMap((line) => cutLine(line, from, to));
  const holes = seen.holes.map(cut).filter((hole) => hole.length >= 3);
  return { ...seen, outline, holes, lines, min, max };
}

/** What is left of a polygon between the limits; no points when nothing is. */
export const outlineWithin = (points: readonly Vec2[], { from, to }: Limits): readonly Vec2[] =>
  keep(keep(points, from, 1), to, -1);

/** The part of a polygon on one side of an upright line: x ≥ at for side 1, x ≤ at for side −1 (Sutherland and Hodgman, 1974). */
function keep(polygon: readonly Vec2[], at: number, side: 1 | -1): readonly Vec2[] {
  if (!Number.isFinite(at)) return polygon;
  const isIn = ([x]: Vec2): boolean => (x - at) * side >= 0;
  return polygon.flatMap((p, i) => {
    const before = polygon[(i + polygon.length - 1) % polygon.length];
    const crossed = isIn(before) === isIn(p) ? [] : [crossing(before, p, at)];
    return isIn(p) ? [...crossed, p] : crossed;
  });
}

const crossing = (a: Vec2, b: Vec2, at: number): Vec2 => [at, a[1] + ((b[1] - a[1]) * (at - a[0])) / (b[0] - a[0])];

/** The pieces of an open line between the limits, segment by segment. */
function cutLine(line: readonly Vec2[], from: number, to: number): readonly (readonly Vec2[])[] {
  return line.slice(1).flatMap((b, i) => {
    const a = line[i];
    const [low, high] = [Math.max(from, Math.min(a[0], b[0])), Math.min(to, Math.max(a[0], b[0]))];
    if (low > high) return [];
    const end = (p: Vec2): Vec2 => {
      const x = Math.min(high, Math.max(low, p[0]));
      return x === p[0] ? p : crossing(a, b, x);
    };
    return [[end(a), end(b)]];
  });
}
