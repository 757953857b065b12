import { level, UP } from '../base/place';
import { extentOf } from '../base/solid/extent';
import { projectOf } from '../base/solid/project';
import { SAME_LENGTH } from '../base/tolerance';
import type { Vec2, Vec3 } from '../vocabulary/geometry';
import type { Part } from '../vocabulary/part';
import type { Rod, RodRun } from '../vocabulary/rod';

/** From where a run is seen: from its front, where clients stand, or from behind, where those stand who serve. */
export type Side = 'front' | 'behind';

/**
 * A part as seen square to its run, mm: x to the right from that end of the frame line which is at the left as one sees it, y up from
 * the floor.
 */
export interface Seen {
  readonly part: Part;
  readonly outline: readonly Vec2[];
  readonly holes: readonly (readonly Vec2[])[];
  readonly lines: readonly (readonly Vec2[])[];
  readonly nearest: number;
  readonly min: Vec2;
  readonly max: Vec2;
}

/** How far along a run's direction its datum, the left end of the frame line, lies from the unit's own origin. */
const datumOf = ({ along, origin }: RodRun): number => along[0] * origin[0] + along[1] * origin[1];

/** Where a point of the room is seen on a run's elevation. */
export const onElevation = (run: RodRun): ((p: Vec3) => Vec2) => {
  const datum = datumOf(run);
  return ([x, y, z]) => [run.along[0] * x + run.along[1] * y - datum, z];
};

/** Parts as seen from one side of a run, the farthest first. */
export function seenFrom(side: Side, parts: readonly Part[], run: RodRun): readonly Seen[] {
  const [x, y] = run.along;
  const right = side === 'front' ? level([x, y]) : level([-x, -y]);
  // From behind, the right-hand end of the frame line is at the left.
  const datum = side === 'front' ? datumOf(run) : -datumOf(run) - run.length;
  const shift = ([x, y]: Vec2): Vec2 => [x - datum, y];
  return parts
    .map((part) => {
      const { outline, holes, lines, nearest } = projectOf(part, { right, up: UP });
      const points = outline.map(shift);
      const moved = (ones: typeof lines): typeof lines => ones.map((one) => one.map(shift));
      return { part, outline: points, holes: moved(holes), lines: moved(lines), nearest, ...boundsOf(points) };
    })
    .sort((a, b) => a.nearest - b.nearest);
}

/** Whether a part stands behind the front frame of its run: of carcass, shelves and whatever else those who serve see. */
export function isBehindFrame(part: Part, { origin, front }: RodRun, { timber }: Pick<Rod, 'timber'>): boolean {
  const [, foremost] = extentOf(part, level(front));
  return foremost - (origin[0] * front[0] + origin[1] * front[1]) < SAME_LENGTH - timber.depth;
}

/** The box around points; a box at the origin when there are none. */
export function boundsOf(points: readonly Vec2[]): { min: Vec2; max: Vec2 } {
  const first = points[0] ?? [0, 0];
  let [x0, y0] = first;
  let [x1, y1] = first;
  for (const [x, y] of points) {
    x0 = Math.min(x0, x);
    y0 = Math.min(y0, y);
    x1 = Math.max(x1, x);
    y1 = Math.max(y1, y);
  }
  return { min: [x0, y0], max: [x1, y1] };
}

/**
 * Leaves out what nothing shows of: a part whose box is covered by nearer parts that are upright rectangles, holes in them or not, for
 * nothing is shown in a hole. What is only covered by other figures is kept; painting from far to near hides it all the same.
 */
export function withoutHidden(farToNear: readonly Seen[]): readonly Seen[] {
  const rectangles = farToNear.map(isRectangle);
  return farToNear.filter((seen, i) => {
    const over = farToNear.filter((nearer, j) => j > i && rectangles[j] && meet(seen, nearer));
    return !covered(seen, over);
  });
}

const meet = (a: Seen, b: Seen): boolean =>
  a.min[0] < b.max[0] && b.min[0] < a.max[0] && a.min[1] < b.max[1] && b.min[1] < a.max[1];

function isRectangle({ outline, min, max }: Seen): boolean {
  const onSide = ([x, y]: Vec2): boolean =>
    [x - min[0], max[0] - x, y - min[1], max[1] - y].some((gap) => Math.abs(gap) < SAME_LENGTH);
  const atCorner = ([x, y]: Vec2): boolean =>
    [x - min[0], max[0] - x].some((gap) => Math.abs(gap) < SAME_LENGTH) &&
    [y - min[1], max[1] - y].some((gap) => Math.abs(gap) < SAME_LENGTH);
  return outline.filter(atCorner).length >= 4 && outline.every(onSide);
}

/** Cuts the box along the rectangles' edges: covered when every cell's middle lies in one of them. */
function covered({ min, max }: Seen, over: readonly Seen[]): boolean {
  if (over.length === 0) return false;
  const cuts = (i: 0 | 1): readonly number[] =>
    [min[i], max[i], ...over.flatMap((seen) => [seen.min[i], seen.max[i]])]
      .filter((at) => at >= min[i] && at <= max[i])
      .sort((a, b) => a - b);
  return middles(cuts(0)).every((x) =>
    middles(cuts(1)).every((y) =>
      over.some((seen) => x > seen.min[0] && x < seen.max[0] && y > seen.min[1] && y < seen.max[1]),
    ),
  );
}

const middles = (cuts: readonly number[]): readonly number[] =>
  cuts.slice(1).flatMap((to, i) => (to - cuts[i]! < SAME_LENGTH ? [] : [(cuts[i]! + to) / 2]));
