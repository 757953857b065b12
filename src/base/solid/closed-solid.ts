/** A closed solid in a part's own axes (along, across, out; mm), in full precision. Triangles counter-clockwise from outside. */
export interface Solid {
  readonly points: Float64Array;
  readonly triangles: Uint32Array;
}
