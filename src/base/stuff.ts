import type { Outline, Place, Vec2, Vec3 } from '../vocabulary/geometry';
import type { Board, EndPlane, Stick } from '../vocabulary/shape';
import { type Face, level, onFace, placeLying, placeOf, placeStanding, UP } from './place';
import { polygonArea } from './polygon';
import { scale } from './vec';

/** A shape and where it lies. */
export interface Stuff<S = Stick | Board> {
  readonly shape: S;
  readonly place: Place;
}

/** A closed outline of straight lines through the points, turned counter-clockwise if it is not. */
export function straight(points: readonly Vec2[]): Outline {
  const round = polygonArea(points) >= 0 ? points : [...points].reverse();
  return { start: round[0], segments: [...round.slice(1), round[0]].map((to) => ({ to })) };
}

/** A square cut at `at`. */
export const squareCut = (at: number): EndPlane => ({ at, perAcross: 0, perOut: 0 });

/** Where most sticks start. */
export const SQUARE_START = squareCut(0);

/**
 * A stick lying level along a face, section u up and v out of the face. `from` and `to` are along the face at the section's back
 * (v = 0); the slopes say how much further along each end lies per mm out of the face.
 */
export function lying(
  face: Face,
  section: Outline,
  at: {
    readonly from: number;
    readonly to: number;
    readonly fromPerOut?: number;
    readonly toPerOut?: number;
    readonly d: number;
    readonly z: number;
  },
): Stuff<Stick> {
  return {
    shape: {
      kind: 'stick',
      section,
      start: at.fromPerOut ? { at: 0, perAcross: 0, perOut: at.fromPerOut } : SQUARE_START,
      end: { at: at.to - at.from, perAcross: 0, perOut: at.toPerOut ?? 0 },
    },
    place: placeLying(face, at.from, at.d, at.z),
  };
}

/** A stick standing on a face from height `low` to `high`. Section u runs to the *left* as seen from the front, starting at x; v out. */
export function standing(
  face: Face,
  section: Outline,
  at: { readonly x: number; readonly d: number; readonly low: number; readonly high: number },
): Stuff<Stick> {
  return {
    shape: { kind: 'stick', section, start: SQUARE_START, end: squareCut(at.high - at.low) },
    place: placeStanding(face, at.x, at.d, at.low),
  };
}

/** The four mitred pieces of a rectangular frame on a face, going round it: bottom, right, top, left. Section u inward, v out. */
export function mitredFrame(
  face: Face,
  section: Outline,
  at: { readonly from: number; readonly to: number; readonly low: number; readonly high: number; readonly d: number },
): readonly Stuff<Stick>[] {
  const along = level(face.along);
  const piece = (origin: Vec3, direction: Vec3, long: number): Stuff<Stick> => ({
    shape: {
      kind: 'stick',
      section,
      start: { at: 0, perAcross: 1, perOut: 0 },
      end: { at: long, perAcross: -1, perOut: 0 },
    },
    place: placeOf(origin, direction, level(face.front)),
  });
  const width = at.to - at.from;
  const height = at.high - at.low;
  return [
    piece(onFace(face, at.from, at.d, at.low), along, width),
    piece(onFace(face, at.to, at.d, at.low), UP, height),
    piece(onFace(face, at.to, at.d, at.high), scale(along, -1), width),
    piece(onFace(face, at.from, at.d, at.high), scale(UP, -1), height),
  ];
}
