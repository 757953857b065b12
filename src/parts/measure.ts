import type { Part } from '../vocabulary/part';
import type { Shape } from '../vocabulary/shape';
import { measureBoard } from './measure-board';
import { measureStick } from './measure-stick';

/**
 * What a rule and a bevel find on a piece, mm and degrees. `size.length` is from long point to long point; `shortPoint` the
 * least length along any line of a stick, or along the long edges of a board. Ends: at the start, then at the end.
 */
export type Measure = Pick<Part, 'size' | 'shortPoint' | 'ends'>;

/** Measures a shape. Throws, with the values, for a shape that can't be made. */
export const measure = (shape: Shape): Measure => (shape.kind === 'stick' ? measureStick(shape) : measureBoard(shape));
