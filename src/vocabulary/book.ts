import type { Outline, Segment, Vec2 } from './geometry';

/** A stock length and its price. A bar is bought whole. */
export interface StockLength {
  readonly length: number;
  readonly pricePence: number;
}

interface Item {
  readonly id: string;
  readonly name: string;
  readonly densityKgM3: number;
}

/** A sheet as bought. */
export interface Sheet extends Item {
  readonly kind: 'sheet';
  /** What it is a sheet of: sheets that say the same are one stuff in several sizes, and are cut together. Not said: its own id. */
  readonly stuff?: string;
  /** It has a grain, which runs along its length: pieces may not be turned. Not said: none. */
  readonly grain?: boolean;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly pricePence: number;
}

/** Rectangular timber; `thickness` is the lesser side of the section, `width` the greater. */
export interface Timber extends Item {
  readonly kind: 'timber';
  readonly width: number;
  readonly thickness: number;
  readonly lengths: readonly StockLength[];
}

/** A run moulding. Section: u = across the face from its lower or outer edge (0) up; v = out from the back (0). */
export interface Moulding extends Item {
  readonly kind: 'moulding';
  readonly section: Outline;
  readonly lengths: readonly StockLength[];
}

/** Hardwood for tops, planed to thickness, sold by length and made up to width. */
export interface Hardwood extends Item {
  readonly kind: 'hardwood';
  readonly thickness: number;
  readonly maxLength: number;
  readonly pricePencePerM2: number;
}

export type StockItem = Sheet | Timber | Moulding | Hardwood;

/** A screw, brad, bolt, adhesive as bought. Length and diameter in mm where they apply (0 where not). */
export interface Fixing {
  readonly id: string;
  readonly name: string;
  readonly kind: 'screw' | 'brad' | 'bolt' | 'dowel' | 'adhesive';
  readonly diameter: number;
  readonly length: number;
  readonly pack: number;
  readonly pricePence: number;
}

/**
 * A cutter that moulds an arris. The path is what stands after the cut, seen in section with the arris at (0, 0): from
 * `start` on the face, (0, −height), through the segments, to the edge, (−depth, 0). First coordinate: out of the face.
 * Radii as in an outline run counter-clockwise: positive round, negative hollow.
 */
export interface Cutter {
  readonly id: string;
  readonly name: string;
  readonly start: Vec2;
  readonly segments: readonly Segment[];
}
