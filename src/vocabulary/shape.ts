import type { Outline, Vec2 } from './geometry';

/**
 * The plane that cuts an end of a stick: position along the axis = `at` + `perAcross`·u + `perOut`·v, where (u, v) is a
 * point of the section. Both slopes zero: a square cut. Slopes are tangents, not angles.
 */
export interface EndPlane {
  readonly at: number;
  readonly perAcross: number;
  readonly perOut: number;
}

/**
 * A constant section (u = across, v = out) along the axis, each end cut by a plane. Grooves are hollows of the section and run through;
 * where they are `stopped`, all of them exist only from `from` to `to` (mm along the axis, both within the stuff) and end square there:
 * elsewhere the chord of each stands.
 */
export interface Stick {
  readonly kind: 'stick';
  readonly section: Outline;
  readonly start: EndPlane;
  readonly end: EndPlane;
  readonly stopped?: { readonly from: number; readonly to: number };
}

/**
 * How an edge of a board departs from the outline as one goes from its back (out = 0) to its face (out = thickness).
 * `steps` are pairs [out, growth], `out` never falling from 0 to the thickness; growth is outward positive. Square edge: no steps.
 */
export interface BoardEdge {
  readonly kind: 'square' | 'bevel' | 'moulded';
  readonly steps: readonly Vec2[];
  /** For a bevel: angle from square, degrees, positive when the face is longer than the back. */
  readonly angleDeg?: number;
  /** For a moulded edge: the cutter that runs along it. */
  readonly cutter?: string;
}

/**
 * A flat piece: a convex or concave simple polygon (counter-clockwise seen from the face, at out = 0) with holes, a thickness,
 * and one edge for each side of the polygon (edge i runs from corner i to corner i+1).
 */
export interface Board {
  readonly kind: 'board';
  readonly outline: readonly Vec2[];
  readonly holes: readonly Outline[];
  readonly thickness: number;
  readonly edges: readonly BoardEdge[];
  /** Of sawn timber, which is named by its section: the greater side is the width, whichever way it lies. */
  readonly sawn?: true;
}

/** Plain data of few kinds from which meshes, drawings, sizes and weights all come. Local axes: along, across, out. */
export type Shape = Stick | Board;

/** A closed triangle mesh in unit coordinates. Normals point out of the stuff. `faces` indexes triangles into `positions`. */
export interface Mesh {
  readonly positions: Float32Array;
  readonly indices: Uint32Array;
}
