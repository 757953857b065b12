import type { Cell, PieceCell, SheetCells } from '../sheets/cell';
import type { Scaled } from '../sheets/scaled';
import type { FilledSheet } from './fill-sheet';
import type { FilledStrip } from './fill-strip';
import type { Lengthwise } from './lengthwise';

/** A way to cut one sheet. */
export interface Pattern extends SheetCells {
  readonly price: number;
  /** How many of each kind it holds. */
  readonly counts: Int32Array;
}

export function patternOf(scaled: Scaled, sheet: number, cell: Cell): Pattern {
  const counts = new Int32Array(scaled.kinds.length);
  count(cell, counts);
  return { sheet, cell, price: scaled.sheets[sheet].price, counts };
}

function count(cell: Cell, counts: Int32Array): void {
  if (cell.kind === 'piece') counts[cell.piece] += 1;
  else if (cell.kind === 'cut') for (const part of cell.parts) count(part, counts);
}

/** Strips of one height together, the highest first: fewer settings, and what is left over lies in one piece. */
export function cellOf(filled: FilledSheet): Cell {
  const { side, strips } = filled;
  const cells = [...strips]
    .sort((a, b) => heightOf(side, b) - heightOf(side, a))
    .map((strip) => stripCell(side, strip));
  return cut(side, side.long, side.high, side.way, cells);
}

const heightOf = ({ variants }: Lengthwise, { blocks }: FilledStrip): number =>
  Math.max(...blocks.map(({ stack }) => stack.reduce((sum, n) => sum + variants[n].high, 0)));

function stripCell(side: Lengthwise, strip: FilledStrip): Cell {
  const high = heightOf(side, strip);
  const blocks = [...strip.blocks].sort((a, b) => b.stack.length - a.stack.length || b.along - a.along);
  const cells = blocks.map(({ along, stack }) => {
    const pieces = stack.map((n) => pieceCell(side, n, along, stack.length === 1 ? high : side.variants[n].high));
    return pieces.length === 1 ? pieces[0] : cut(side, along, high, side.way, pieces);
  });
  const [only] = cells;
  const other = side.way === 'along' ? 'across' : 'along';
  return cells.length === 1 && strip.blocks[0].along === side.long ? only : cut(side, side.long, high, other, cells);
}

function pieceCell(side: Lengthwise, n: number, along: number, high: number): PieceCell {
  const { kind, turned } = side.variants[n];
  return { kind: 'piece', piece: kind, turned, ...sides(side, along, high) };
}

function cut(side: Lengthwise, along: number, high: number, way: 'along' | 'across', parts: readonly Cell[]): Cell {
  return { kind: 'cut', way, parts, ...sides(side, along, high) };
}

const sides = ({ way }: Lengthwise, along: number, high: number): { length: number; width: number } =>
  way === 'along' ? { length: along, width: high } : { length: high, width: along };
