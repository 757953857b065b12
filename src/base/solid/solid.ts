import type { Shape } from '../../vocabulary/shape';
import { boardSolid } from './board';
import type { Solid } from './closed-solid';
import { stickPoints, stickTriangles } from './stick';

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
