import type { Place, Vec3 } from '../../vocabulary/geometry';
import type { Shape } from '../../vocabulary/shape';
import { flatten } from '../outline';
import { dot } from '../vec';
import { ringsOf } from './rings';
import { planeAt } from './stick';

interface Placed {
  readonly shape: Shape;
  readonly place: Place;
}

/** How far a placed shape reaches along a direction of the room: the least and the greatest of p · direction, mm. Needs no mesh. */
export function extentOf({ shape, place }: Placed, direction: Vec3): readonly [number, number] {
  const o = dot(place.origin, direction);
  const [a, b, c] = [dot(place.along, direction), dot(place.across, direction), dot(place.out, direction)];
  let least = Infinity;
  let greatest = -Infinity;
  const reach = (along: number, across: number, out: number): void => {
    const value = o + a * along + b * across + c * out;
    if (value < least) least = value;
    if (value > greatest) greatest = value;
  };
  if (shape.kind === 'stick') {
    for (const [u, v] of flatten(shape.section)) {
      reach(planeAt(shape.start, u, v), u, v);
      reach(planeAt(shape.end, u, v), u, v);
    }
  } else {
    for (const ring of ringsOf(shape)) for (const [x, y] of ring.points) reach(x, y, ring.out);
  }
  return [least, greatest];
}

const ROOM: readonly [Vec3, Vec3, Vec3] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** The box a placed shape stands in, along three directions of the room: x, y and z unless told otherwise. */
export function boundsInRoom(part: Placed, directions: readonly [Vec3, Vec3, Vec3] = ROOM): { min: Vec3; max: Vec3 } {
  const [x, y, z] = directions.map((direction) => extentOf(part, direction));
  return { min: [x[0], y[0], z[0]], max: [x[1], y[1], z[1]] };
}
