import type { Shape } from '../vocabulary/shape';
import { measureBoard } from './measure-board';
import { measureStick } from './measure-stick';
import type { Measure } from './measured';

/** Measures a shape; `edgeNames` as in a part's draft. Throws, with the values, for a shape that can't be made. */
export const measure = (shape: Shape, edgeNames?: readonly [string, string]): Measure =>
  shape.kind === 'stick' ? measureStick(shape, edgeNames) : measureBoard(shape, edgeNames);
