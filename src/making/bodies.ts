import type { Place, Vec3 } from '../vocabulary/geometry';
import type { Part } from '../vocabulary/part';
import type { Points } from './gap';
import { piecesOf } from './pieces';

/** A convex piece in the room: its corners, its box, and itself drawn in a little towards its middle. */
export interface Piece {
  readonly points: Points;
  readonly box: Box;
  drawnIn(): Points;
}

/** Least x, y, z and greatest x, y, z. */
export type Box = readonly [number, number, number, number, number, number];

/** A part as it is looked at for what it touches. */
export interface Body {
  readonly part: Part;
  readonly box: Box;
  /** From where to where it reaches along its own three axes, in the room. */
  readonly reach: readonly (readonly [number, number])[];
  /** Square all round: as long, wide and thick as its reach. */
  readonly isBox: boolean;
  readonly pieces: readonly Piece[];
}

/** How far a piece is drawn in from each side to see which way it is touched, mm. */
const DRAWN_IN = 0.2;

const known = new WeakMap<Part, Body>();

/** A part as a body in the room; the same part gives the same body. */
export function bodyOf(part: Part): Body {
  let body = known.get(part);
  if (!body) {
    body = makeBody(part);
    known.set(part, body);
  }
  return body;
}

function makeBody(part: Part): Body {
  const own = piecesOf(part.shape);
  const pieces = own.map((points) => pieceOf(points, part.place));
  const local = boxOf(own);
  const { origin, along, across, out } = part.place;
  const reach = [along, across, out].map((axis, k): readonly [number, number] => {
    const at = origin[0] * axis[0] + origin[1] * axis[1] + origin[2] * axis[2];
    return [at + local[k], at + local[k + 3]];
  });
  const isBox = own.length === 1 && own[0].length === 24 && fillsBox(own[0], local);
  return { part, box: boxOf(pieces.map((p) => p.points)), reach, isBox, pieces };
}

function pieceOf(own: Points, place: Place): Piece {
  const points = new Float64Array(own.length);
  for (let i = 0; i < own.length; i += 3) put(points, i, place, own[i], own[i + 1], own[i + 2]);
  let drawn: Points | undefined;
  return {
    points,
    box: boxOf([points]),
    drawnIn() {
      drawn ??= drawIn(own, place);
      return drawn;
    },
  };
}

/** Each corner moved towards the middle, so that every side comes in by about as much; thin pieces by a third of themselves at most. */
function drawIn(own: Points, place: Place): Points {
  const box = boxOf([own]);
  const points = new Float64Array(own.length);
  const at = [0, 0, 0];
  for (let i = 0; i < own.length; i += 3) {
    for (let k = 0; k < 3; k++) {
      const size = Math.max(box[k + 3] - box[k], 1e-9);
      const middle = (box[k] + box[k + 3]) / 2;
      at[k] = middle + (own[i + k] - middle) * (1 - Math.min(1 / 3, (2 * DRAWN_IN) / size));
    }
    put(points, i, place, at[0], at[1], at[2]);
  }
  return points;
}

/** Puts a point given in a part's own axes into a list, in the room: `toUnit` without a new point for each corner. */
function put(
  points: Points,
  i: number,
  { origin: o, along: a, across: b, out: c }: Place,
  x: number,
  y: number,
  z: number,
): void {
  points[i] = o[0] + a[0] * x + b[0] * y + c[0] * z;
  points[i + 1] = o[1] + a[1] * x + b[1] * y + c[1] * z;
  points[i + 2] = o[2] + a[2] * x + b[2] * y + c[2] * z;
}

function boxOf(all: readonly Points[]): Box {
  const box = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
  for (const points of all)
    for (let i = 0; i < points.length; i += 3)
      for (let k = 0; k < 3; k++) {
        const value = points[i + k];
        if (value < box[k]) box[k] = value;
        if (value > box[k + 3]) box[k + 3] = value;
      }
  return box as unknown as Box;
}

/** Whether every corner of eight is a corner of the box. */
const fillsBox = (points: Points, box: Box): boolean =>
  points.every((value, i) => Math.min(Math.abs(value - box[i % 3]), Math.abs(value - box[(i % 3) + 3])) < 1e-9);

/** Whether two boxes are further apart than `gap` along x, y or z. */
export const boxesApart = (a: Box, b: Box, gap: number): boolean =>
  a[0] > b[3] + gap ||
  b[0] > a[3] + gap ||
  a[1] > b[4] + gap ||
  b[1] > a[4] + gap ||
  a[2] > b[5] + gap ||
  b[2] > a[5] + gap;

/** The three axes of a part. */
export const axesOf = ({ along, across, out }: Place): readonly Vec3[] => [along, across, out];

/** From where to where the box round a part, along its own axes, reaches in a direction. */
export function shadow({ part: { place }, reach }: Body, [x, y, z]: Vec3): readonly [number, number] {
  let [from, to] = [0, 0];
  for (let k = 0; k < 3; k++) {
    const own = k === 0 ? place.along : k === 1 ? place.across : place.out;
    const d = own[0] * x + own[1] * y + own[2] * z;
    from += d * reach[k][d > 0 ? 0 : 1];
    to += d * reach[k][d > 0 ? 1 : 0];
  }
  return [from, to];
}
