/** A point or direction in a plane. Millimetres unless a field says otherwise. */
export type Vec2 = readonly [number, number];

/** A point or direction in the room: x and y in plan, z up from the floor. Millimetres. */
export type Vec3 = readonly [number, number, number];

/**
 * One step of an outline: a straight line to `to`, or a circular arc when `radius` is given.
 * Outlines run counter-clockwise, so a positive radius is a *round* (bulges out of the stuff) and a negative one a
 * *hollow* (cut into it). Arcs are the shorter of the two possible ones, at most a semicircle.
 */
export interface Segment {
  readonly to: Vec2;
  readonly radius?: number;
}

/** A closed outline, counter-clockwise. The last segment ends on `start`. */
export interface Outline {
  readonly start: Vec2;
  readonly segments: readonly Segment[];
}

/**
 * Where a part lies: a right-handed frame, `along` × `across` = `out`, all unit vectors.
 * `along` is the length of the part, `across` its width, `out` its thickness, from its back to its face.
 */
export interface Place {
  readonly origin: Vec3;
  readonly along: Vec3;
  readonly across: Vec3;
  readonly out: Vec3;
}
