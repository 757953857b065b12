/*
 * How a sheet is cut, inside the solvers: rectangles with a kerf included on both sides, in scaled units, as in `scaled.ts`.
 */

interface Sides {
  /** Along the sheet's length (x). */
  readonly length: number;
  /** Along the sheet's width (y). */
  readonly width: number;
}

/** A piece of a kind; the cell may be larger than the piece, which is then trimmed out of it. */
export interface PieceCell extends Sides {
  readonly kind: 'piece';
  /** Number of the kind. */
  readonly piece: number;
  /** The kind's length lies along the width of the sheet. */
  readonly turned: boolean;
}

export interface LeftCell extends Sides {
  readonly kind: 'left';
}

/** Parts as in the plan: `across` side by side along the length, `along` one above the other. What they don't fill is left over. */
export interface CutCell extends Sides {
  readonly kind: 'cut';
  readonly way: 'along' | 'across';
  readonly parts: readonly Cell[];
}

export type Cell = PieceCell | LeftCell | CutCell;

export interface SheetCells {
  /** Number of the sheet in the scaled problem. */
  readonly sheet: number;
  readonly cell: Cell;
}

/** A way to cut pieces of the problem; need not hold them all. */
export type Cells = readonly SheetCells[];
