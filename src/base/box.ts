import type { Outline, Vec3 } from '../vocabulary/geometry';
import type { Board, Stick } from '../vocabulary/shape';
import { type Face, level, onFace, placeOf, UP } from './place';
import { SQUARE_EDGE } from './profiles';
import { SQUARE_START, type Stuff, squareCut } from './stuff';
import { scale } from './vec';

/** A box along a face: `from`–`to` along it, `back`–`front` in front of it (negative: behind), `low`–`high` above the floor. mm. */
export interface Box {
  readonly from: number;
  readonly to: number;
  readonly back: number;
  readonly front: number;
  readonly low: number;
  readonly high: number;
}

/** A rectangular board, all edges sawn square. mm. */
const squareBoard = (length: number, width: number, thickness: number): Board => ({
  kind: 'board',
  outline: [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ],
  holes: [],
  thickness,
  edges: [SQUARE_EDGE, SQUARE_EDGE, SQUARE_EDGE, SQUARE_EDGE],
});

/** A board that fills the box and lies level, its face up: length along the face, width from front to back. */
export const flatBoard = (face: Face, box: Box): Stuff<Board> => ({
  shape: squareBoard(box.to - box.from, box.front - box.back, box.high - box.low),
  place: placeOf(onFace(face, box.from, box.front, box.low), level(face.along), UP),
});

/** A board that fills the box and stands from front to back; its visible face looks along the face (`towards` 1) or against it (−1). Length up. */
export const sideBoard = (face: Face, box: Box, towards: 1 | -1): Stuff<Board> => ({
  shape: squareBoard(box.high - box.low, box.front - box.back, box.to - box.from),
  place: placeOf(
    towards === 1 ? onFace(face, box.from, box.back, box.low) : onFace(face, box.to, box.front, box.low),
    UP,
    scale(level(face.along), towards),
  ),
});

/** A board that fills the box and stands behind the face, looking away from it. Its length goes up, or along (`lengthways`). */
export const rearBoard = (face: Face, box: Box, lengthways: 'up' | 'along'): Stuff<Board> => {
  const out: Vec3 = scale(level(face.front), -1);
  const [wide, high, thick] = [box.to - box.from, box.high - box.low, box.front - box.back];
  return lengthways === 'up'
    ? { shape: squareBoard(high, wide, thick), place: placeOf(onFace(face, box.from, box.front, box.low), UP, out) }
    : {
        shape: squareBoard(wide, high, thick),
        place: placeOf(onFace(face, box.to, box.front, box.low), scale(level(face.along), -1), out),
      };
};

/** A stick that fills the box and lies from front to back, its section upright: u up, v along the face (`towards` 1) or against it (−1). */
export const crossStick = (face: Face, box: Box, section: Outline, towards: 1 | -1): Stuff<Stick> => ({
  shape: { kind: 'stick', section, start: SQUARE_START, end: squareCut(box.front - box.back) },
  place: placeOf(
    towards === 1 ? onFace(face, box.from, box.front, box.low) : onFace(face, box.to, box.back, box.low),
    scale(level(face.front), -towards),
    scale(level(face.along), towards),
  ),
});
