import type { BarProblem } from '../../vocabulary/cut-problem';
import { type Ends, endsOf } from './ends';
import { orderer, type Row } from './order';

/** Rounding of doubles, mm: far below what can be sawn. */
export const FUZZ = 1e-7;

/** How pieces lie on bars, in mm. */
export interface Layout {
  readonly ends: Ends;
  /** Every end is square: pieces take their length and a kerf, in whatever order. */
  readonly square: boolean;
  /** Between the trimmed ends of a stock. */
  room(stock: number): number;
  /** Taken off each end of a stock. */
  trim(stock: number): number;
  /** The row of pieces, given by their places in the problem, that takes least. */
  row(pieces: readonly number[]): Row;
  /** What they take in it. */
  needed(pieces: readonly number[]): number;
}

/** How the pieces of a problem lie on its bars. */
export function layoutOf(problem: BarProblem): Layout {
  const { pieces, stock, kerf } = problem;
  const ends = endsOf(problem);
  const square = pieces.every((piece) => piece.ends?.flat().every((lean) => lean === 0) ?? true);
  const order = orderer(ends);
  const trim = (i: number): number => stock[i].trim ?? problem.trim;
  const row = (own: readonly number[]): Row => {
    const counts = ends.classes.map(() => 0);
    for (const piece of own) counts[ends.classOf[piece]]++;
    return order(counts);
  };
  const gaps = (own: readonly number[]): number => (square ? (own.length - 1) * kerf : row(own).gaps);
  return {
    ends,
    square,
    trim,
    room: (i) => stock[i].length - 2 * trim(i),
    row,
    needed: (own) => own.reduce((sum, piece) => sum + pieces[piece].length, gaps(own)),
  };
}
