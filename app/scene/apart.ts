import { extentOf } from '../../src/base/solid/extent';
import { add, scale } from '../../src/base/vec';
import type { Design } from '../../src/vocabulary/design';
import type { Vec3 } from '../../src/vocabulary/geometry';
import type { Part } from '../../src/vocabulary/part';
import type { RodRun } from '../../src/vocabulary/rod';
import { cornersOf } from './assembly';

/** How far two sections are drawn from each other, and loose parts from the section before or under them, at the furthest, mm (by eye). */
export const FURTHEST = 450;
const LOOSE = 0.75;

const NOWHERE: Vec3 = [0, 0, 0];

/** Where a part is drawn instead of where it belongs, mm. */
export type Shift = (part: Part) => Vec3;

/**
 * The unit drawn apart: each section along the chain of runs by its order, so that neighbours part by the same; what is fitted on
 * site further still: off the front, off the back, or up, as it comes on. Nothing is told of a unit drawn together (`apart` 0).
 * @param apart 0 to 1
 */
export function drawnApart({ rod, joins }: Pick<Design, 'rod' | 'joins'>, apart: number): Shift | null {
  if (apart === 0) return null;
  const of = shiftsOf(rod.runs, joins, FURTHEST * apart);
  const runs = new Map(rod.runs.map((run) => [run.id, run]));
  return (part) => {
    const run = runs.get(part.run);
    if (!run) return NOWHERE;
    if (part.inSection !== undefined) return of.get(part.inSection) ?? NOWHERE;
    return add(middleOf(part, run, of), scale(wayOff(part, run, rod), FURTHEST * LOOSE * apart));
  };
}

/** The shift of each section, in order along the chain; the whole stays where it is in the middle. */
function shiftsOf(runs: readonly RodRun[], joins: Design['joins'], gap: number): ReadonlyMap<string, Vec3> {
  const order = [...new Set(runs.flatMap((run) => run.sections))];
  const shifts: Vec3[] = [];
  order.forEach((id, i) => {
    const before = order[i - 1];
    const join = joins.find(({ sections: [left, right] }) => left === before && right === id);
    shifts.push(add(shifts[i - 1] ?? NOWHERE, scale(directionAt(runs, join?.run), before === undefined ? 0 : gap)));
  });
  const middle = scale(shifts.reduce(add, NOWHERE), 1 / Math.max(1, shifts.length));
  return new Map(order.map((id, i) => [id, add(shifts[i]!, scale(middle, -1))]));
}

/** The way in which the chain goes on where a run is joined: along it, at its end half-way round the corner to the next. */
function directionAt(runs: readonly RodRun[], id: string | undefined): Vec3 {
  const at = runs.findIndex((run) => run.id === id);
  const run = runs[at];
  if (!run) return NOWHERE;
  const next = run.joinAtRight === undefined ? undefined : runs[at + 1];
  const [x, y] = next ? [run.along[0] + next.along[0], run.along[1] + next.along[1]] : run.along;
  const size = Math.hypot(x, y) || 1;
  return [x / size, y / size, 0];
}

/** Of a loose part: half-way between the sections that it goes over. */
function middleOf(part: Part, run: RodRun, of: ReadonlyMap<string, Vec3>): Vec3 {
  const datum = run.origin[0] * run.along[0] + run.origin[1] * run.along[1];
  const [from, to] = extentOf(part, [run.along[0], run.along[1], 0]).map((x) => x - datum) as [number, number];
  const first = run.joins.filter(({ x }) => x <= from).length;
  const last = run.joins.filter(({ x }) => x < to).length;
  const over = run.sections.slice(first, Math.max(first, last) + 1);
  return scale(
    over.reduce((sum: Vec3, id) => add(sum, of.get(id) ?? NOWHERE), NOWHERE),
    1 / Math.max(1, over.length),
  );
}

/** Off which side a loose part comes: up when it lies on the frame, to the back when it lies behind it, else to the front. */
function wayOff(part: Part, run: RodRun, { frameHeight, timber }: Pick<Design['rod'], 'frameHeight' | 'timber'>): Vec3 {
  const corners = cornersOf(part);
  if (Math.min(...corners.map(([, , z]) => z)) > frameHeight - 1) return [0, 0, 1];
  const out = Math.max(
    ...corners.map(([x, y]) => (x - run.origin[0]) * run.front[0] + (y - run.origin[1]) * run.front[1]),
  );
  const side = out < 1 - timber.depth ? -1 : 1;
  return [side * run.front[0], side * run.front[1], 0];
}
