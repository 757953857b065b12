import { toUnit } from '../../src/base/place';
import { solidOf } from '../../src/base/solid/solid';
import type { Vec3 } from '../../src/vocabulary/geometry';
import type { Part } from '../../src/vocabulary/part';
import type { RodRun } from '../../src/vocabulary/rod';

/** Two measurements this near are the same, mm: far above the noise of the last digits, far below anything cut. */
export const SAME = 1e-6;

/** A corner of a part in a run's own coordinates: along its frame line, out of its frame's face, up. */
export interface InRun {
  readonly x: number;
  readonly d: number;
  readonly z: number;
}

const known = new WeakMap<Part, readonly Vec3[]>();

/** Corners of a part, unit coordinates. */
export function cornersOf(part: Part): readonly Vec3[] {
  let corners = known.get(part);
  if (!corners) {
    const { points } = solidOf(part.shape);
    corners = Array.from({ length: points.length / 3 }, (_, i) =>
      toUnit(part.place, points[3 * i], points[3 * i + 1], points[3 * i + 2]),
    );
    known.set(part, corners);
  }
  return corners;
}

export const seenFrom = (run: RodRun, [px, py, z]: Vec3): InRun => {
  const [x, y] = [px - run.origin[0], py - run.origin[1]];
  return { x: x * run.along[0] + y * run.along[1], d: x * run.front[0] + y * run.front[1], z };
};

/** Corners of a part in its run's coordinates. */
export const cornersIn = (run: RodRun, part: Part): readonly InRun[] => cornersOf(part).map((p) => seenFrom(run, p));

export interface Extent {
  readonly from: number;
  readonly to: number;
}

/** From where to where a part reaches along its run on the line at offset d, measured at its corners there; undefined when it has none there. */
export function extentAt(run: RodRun, part: Part, d: number): Extent | undefined {
  const xs = cornersIn(run, part).flatMap((p) => (Math.abs(p.d - d) < SAME ? [p.x] : []));
  return xs.length === 0 ? undefined : { from: Math.min(...xs), to: Math.max(...xs) };
}

/** As `extentAt`, on a line between or beyond the part's back and face, its ends run on straight. */
export function producedTo(run: RodRun, part: Part, back: number, face: number, d: number): Extent | undefined {
  const [b, f] = [extentAt(run, part, back), extentAt(run, part, face)];
  if (!b || !f) return undefined;
  const k = (d - back) / (face - back);
  return { from: b.from + (f.from - b.from) * k, to: b.to + (f.to - b.to) * k };
}

/** From where to where a part reaches along its run, whatever the offset. */
export function reachOf(run: RodRun, part: Part): Extent {
  const xs = cornersIn(run, part).map((p) => p.x);
  return { from: Math.min(...xs), to: Math.max(...xs) };
}

export const same = (a: number, b: number, within = SAME): boolean => Math.abs(a - b) <= within;
