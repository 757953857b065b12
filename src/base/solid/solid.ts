import type { Place, Vec3 } from '../../vocabulary/geometry';
import type { Shape } from '../../vocabulary/shape';
import { boardSolid } from './board';
import { stickPoints, stickTriangles } from './stick';

/** A closed solid in a part's own axes (along, across, out; mm), in full precision. Triangles counter-clockwise from outside. */
export interface Solid {
  readonly points: Float64Array;
  readonly triangles: Uint32Array;
}

const known = new WeakMap<Shape, Solid>();

/** The solid of a shape; the same shape gives the same solid. Throws, with the values, for a shape that encloses nothing. */
export function solidOf(shape: Shape): Solid {
  let solid = known.get(shape);
  if (!solid) {
    solid =
      shape.kind === 'stick' ? { points: stickPoints(shape), triangles: stickTriangles(shape) } : boardSolid(shape);
    known.set(shape, solid);
  }
  return solid;
}

/** Smallest and greatest unit coordinates of a placed shape, along three directions of the room (by default x, y, z), mm. */
export function boundsInRoom(
  part: { readonly shape: Shape; readonly place: Place },
  directions: readonly [Vec3, Vec3, Vec3] = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
): { min: Vec3; max: Vec3 } {
  const { points } = solidOf(part.shape);
  const { origin, along, across, out } = part.place;
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  directions.forEach((d, k) => {
    const project = (v: Vec3): number => v[0] * d[0] + v[1] * d[1] + v[2] * d[2];
    const [o, a, b, c] = [project(origin), project(along), project(across), project(out)];
    for (let i = 0; i < points.length; i += 3) {
      const value = o + a * (points[i] as number) + b * (points[i + 1] as number) + c * (points[i + 2] as number);
      if (value < (min[k] as number)) min[k] = value;
      if (value > (max[k] as number)) max[k] = value;
    }
  });
  return { min, max };
}
