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
