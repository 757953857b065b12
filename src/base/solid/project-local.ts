import type { Vec2, Vec3 } from '../../vocabulary/geometry';

/** A view in a part's own axes. */
export interface LocalView {
  /** Components along, across, out of the directions to the right, up and towards the viewer. */
  readonly right: Vec3;
  readonly up: Vec3;
  readonly toward: Vec3;
  /** A point of the part's own axes on the paper. */
  onPaper(along: number, across: number, out: number): Vec2;
}

/** Cosine beyond which a direction counts as straight towards the viewer: a thousandth of a millimetre in a metre. */
export const SQUARE_ON = 1 - 5e-13;
