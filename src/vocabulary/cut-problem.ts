/*
 * What is to be cut, and from what. Plain data, as it may stand in a file: lengths in mm, prices in any money. `name` is for people only.
 * An absent `count` is as many as one likes.
 */

/** How far an end's plane leans: mm along the bar for each mm across the section, and for each mm out from its back. Both 0: square. */
export type Slant = readonly [perAcross: number, perOut: number];

/**
 * How a bar can be turned on the saw and still be the same section: rolled over on its length (face down, edges changed), swung end for end
 * lying on its back (edges changed), or tumbled end for end (face down, edges kept). A rectangle allows all; a moulding seldom any.
 */
export type BarTurn = 'rolled' | 'swung' | 'tumbled';

export interface BarStock {
  readonly name?: string;
  readonly length: number;
  readonly price: number;
  readonly count?: number;
  /** Taken off each end of this one instead of the problem's trim: a rough end, or none of an offcut that is clean. */
  readonly trim?: number;
  /** It lies in the rack. */
  readonly offcut?: true;
}

export interface BarPiece {
  readonly name?: string;
  /** Overall, long point to long point. */
  readonly length: number;
  readonly quantity: number;
  /** Planes of the left and right end of the piece as it lies unturned; absent: square. */
  readonly ends?: readonly [Slant, Slant];
  /** All pieces that carry the same word come from one bar. */
  readonly together?: string;
}

/** One dimension: bars of one section. */
export interface BarProblem {
  readonly kind: 'bars';
  readonly kerf: number;
  /** Taken off both ends of every bar, at least. */
  readonly trim: number;
  /** Needed where pieces have slanted ends: sides of the section, and how it may be turned. */
  readonly section?: { readonly width: number; readonly thickness: number; readonly turns: readonly BarTurn[] };
  readonly stock: readonly BarStock[];
  readonly pieces: readonly BarPiece[];
  /** What is left over counts as a reusable offcut from this length on; default 300 (common practice, no source). */
  readonly leastOffcut?: number;
}

/** The grain, where there is one, runs along the length. */
export interface SheetStock {
  readonly name?: string;
  readonly length: number;
  readonly width: number;
  readonly price: number;
  readonly count?: number;
  /** Taken off each edge of this one instead of the problem's trim. */
  readonly trim?: number;
  readonly offcut?: true;
}

export interface SheetPiece {
  readonly name?: string;
  readonly length: number;
  readonly width: number;
  readonly quantity: number;
  /** May lie with its length across the sheet. Absent: it may not, for the sake of the grain. */
  readonly turnable?: boolean;
  /** All pieces that carry the same word come from one sheet. */
  readonly together?: string;
}

/** Two dimensions: sheets of one stuff, cut edge to edge (guillotine). */
export interface SheetProblem {
  readonly kind: 'sheets';
  readonly kerf: number;
  /** Taken off every edge of every sheet. */
  readonly trim: number;
  /** How many times the direction of cutting may change, counting the first; absent: as often as one likes. Every cut counts. */
  readonly stages?: number;
  /** A last cut that only trims a piece to its size does not count as a stage. */
  readonly trimsFree?: boolean;
  /** Longest cut the saw can make, mm; absent: any. */
  readonly longestCut?: number;
  readonly stock: readonly SheetStock[];
  readonly pieces: readonly SheetPiece[];
  /** A leftover rectangle counts as reusable from these sides on; default 300 × 100 (common practice, no source). */
  readonly leastOffcut?: { readonly length: number; readonly width: number };
}

export type CutProblem = BarProblem | SheetProblem;
