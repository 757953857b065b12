import { alongFace, onFace, toUnit } from '../base/place';
import { solidOf } from '../base/solid/solid';
import { SAME_LENGTH } from '../base/tolerance';
import { dot, sub } from '../base/vec';
import type { Vec3 } from '../vocabulary/geometry';
import type { Part } from '../vocabulary/part';
import type { RodRun } from '../vocabulary/rod';

/** Corners this near to the lowest of a part stand on the floor with it, mm. */
const LOW = 1;

/**
 * From where to where, along a run, the edge of a part that is nearest to the viewer runs: a mitred piece is measured on its face,
 * whatever of it a neighbour hides. `low`: of its foot only. mm from the left end of the frame line.
 */
export function nearEdge(part: Part, run: RodRun, low = false): readonly [number, number] {
  const { points } = solidOf(part.shape);
  const front: Vec3 = [run.front[0], run.front[1], 0];
  const datum = onFace(run, 0, 0, 0);
  const corners = Array.from({ length: points.length / 3 }, (_, i) => {
    const p = toUnit(part.place, points[3 * i], points[3 * i + 1], points[3 * i + 2]);
    return { x: alongFace(run, p), near: dot(sub(p, datum), front), z: p[2] };
  });
  const lowest = Math.min(...corners.map((c) => c.z));
  const foot = low ? corners.filter((c) => c.z < lowest + LOW) : corners;
  const nearest = Math.max(...foot.map((c) => c.near));
  const xs = foot.filter((c) => c.near > nearest - SAME_LENGTH).map((c) => c.x);
  return [Math.min(...xs), Math.max(...xs)];
}
