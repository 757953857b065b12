import type { Place, Vec2, Vec3 } from '../vocabulary/geometry';
import { cross } from './vec';

/** A place from its origin, length direction and face direction (unit vectors at right angles); the width direction follows. */
export const placeOf = (origin: Vec3, along: Vec3, out: Vec3): Place => ({
  origin,
  along,
  across: cross(out, along),
  out,
});

/** A point given in a part's own axes (along, across, out; mm), in unit coordinates. */
export function toUnit(place: Place, along: number, across: number, out: number): Vec3 {
  const { origin: o, along: a, across: b, out: c } = place;
  return [
    o[0] + a[0] * along + b[0] * across + c[0] * out,
    o[1] + a[1] * along + b[1] * across + c[1] * out,
    o[2] + a[2] * along + b[2] * across + c[2] * out,
  ];
}

/** An upright face in plan: where it starts, which way it runs, which way it looks. */
export interface Face {
  readonly origin: Vec2;
  readonly along: Vec2;
  readonly front: Vec2;
}

/** The point at `x` along a face, `d` mm in front of it (negative: behind) and `z` above the floor. */
export const onFace = (face: Face, x: number, d: number, z: number): Vec3 => [
  face.origin[0] + face.along[0] * x + face.front[0] * d,
  face.origin[1] + face.along[1] * x + face.front[1] * d,
  z,
];

/** The same point as seen from above. */
export const inPlan = (face: Face, x: number, d: number): Vec2 => {
  const [px, py] = onFace(face, x, d, 0);
  return [px, py];
};

/** A plan direction as a direction in the room. */
export const level = (v: Vec2): Vec3 => [v[0], v[1], 0];
export const UP: Vec3 = [0, 0, 1];

/** The directions of a face in the room, and those of a stick that lies along it or stands on it, its face to the front. */
interface Directions {
  readonly face: Face;
  readonly along: Vec3;
  readonly front: Vec3;
  /** Across a stick that lies along the face; across one that stands on it. */
  readonly acrossLying: Vec3;
  readonly acrossStanding: Vec3;
}

/** Of the face that was asked for last: the pieces of a run come one after another, and share its directions. */
let last: Directions | undefined;

function directionsOf(face: Face): Directions {
  if (last?.face === face) return last;
  const along = level(face.along);
  const front = level(face.front);
  last = { face, along, front, acrossLying: cross(front, along), acrossStanding: cross(front, UP) };
  return last;
}

/** The place of a stick that lies along a face from `x`, its face to the front. */
export function placeLying(face: Face, x: number, d: number, z: number): Place {
  const { along, front, acrossLying } = directionsOf(face);
  return { origin: onFace(face, x, d, z), along, across: acrossLying, out: front };
}

/** The place of a stick that stands on a face at `x`, its face to the front. */
export function placeStanding(face: Face, x: number, d: number, z: number): Place {
  const { front, acrossStanding } = directionsOf(face);
  return { origin: onFace(face, x, d, z), along: UP, across: acrossStanding, out: front };
}

/** How far along a face a point lies: the x of `onFace`. */
export const alongFace = (face: Face, point: Vec3): number =>
  (point[0] - face.origin[0]) * face.along[0] + (point[1] - face.origin[1]) * face.along[1];

/** What is known of a face between two corners: its length, and how much further it reaches at each end per mm outward (negative: less far). */
export interface BetweenCorners {
  readonly length: number;
  readonly left: { readonly grows: number };
  readonly right: { readonly grows: number };
}

/**
 * How far a piece with square ends would stand past the line on which its face meets a neighbour's, mm; not above 0 when it is clear. It
 * lies from x = `from` to `to`, and from `inner` to `outer` in front of the face.
 */
export const pastCorners = (
  { length, left, right }: BetweenCorners,
  piece: { readonly from: number; readonly to: number; readonly inner: number; readonly outer: number },
): number => {
  const { from, to, inner, outer } = piece;
  return Math.max(
    -Math.min(left.grows * inner, left.grows * outer) - from,
    to - length - Math.min(right.grows * inner, right.grows * outer),
  );
};
