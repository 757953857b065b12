import type { Shape, Stick } from '../../vocabulary/shape';
import { boardSolid } from './board';
import type { Solid } from './closed-solid';
import { stickPoints, stickTriangles } from './stick';
import { isStopped, stoppedSolid } from './stopped';

const known = new WeakMap<Shape, Solid>();

/** The solid of a shape; the same shape gives the same solid. Throws, with the values, for a shape that encloses nothing. */
export function solidOf(shape: Shape): Solid {
  let solid = known.get(shape);
  if (!solid) {
    solid = shape.kind === 'stick' ? stickSolid(shape) : boardSolid(shape);
    known.set(shape, solid);
  }
  return solid;
}

const stickSolid = (stick: Stick): Solid =>
  isStopped(stick) ? stoppedSolid(stick) : { points: stickPoints(stick), triangles: stickTriangles(stick) };
