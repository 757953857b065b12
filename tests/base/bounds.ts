import { extentOf } from '../../src/base/solid/extent';
import type { Place, Vec3 } from '../../src/vocabulary/geometry';
import type { Shape } from '../../src/vocabulary/shape';

/** The box a placed shape stands in, along x, y and z of the room, mm. */
export function boundsInRoom(placed: { readonly shape: Shape; readonly place: Place }): { min: Vec3; max: Vec3 } {
  const [x, y, z] = ROOM_AXES.map((axis) => extentOf(placed, axis));
  return { min: [x[0], y[0], z[0]], max: [x[1], y[1], z[1]] };
}

const ROOM_AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
