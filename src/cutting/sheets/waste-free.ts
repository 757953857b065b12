import { type BlockBook, blockBook } from './block-book';
import { demandOf, leastCost } from './bound';
import type { Cell, Cells } from './cell';
import { isFree, type Scaled } from './scaled';

/*
 * Sheets without waste. Where a sheet is cut from edge to edge and nothing is left over, each cut parts two rectangles that are themselves filled
 * and share the side along the cut. So all that can be filled is found by joining, from the pieces upwards, rectangles with an equal side that
 * hold no piece twice; equal sides are rare, and mostly all is soon joined. Either a whole sheet comes out, or it is known that none can.
 * (Joining by equal sides as in Wang, "Two algorithms for constrained two-dimensional cutting stock problems", Operations Research 31, 1983,
 * with no waste allowed.)
 */

/** Pairs of blocks tried in a step: some 10 ms (measured). */
const TRIED = 1e6;
/** A part of the cost below which it isn't worth knowing: where there are too many mixes to look at, the bound grows with every bit of area. */
const WORTH_IT = 1e-4;

export interface WasteFree {
  /** All pieces from one sheet, once they are found to fill it. */
  readonly found: Cells | undefined;
  /** No way of cutting all pieces costs less. */
  readonly bound: number;
  /** False when nothing is left to join, or there is too much to join. */
  step(): boolean;
}

/** Undefined where it makes no difference to the cost whether a little is wasted. `bound`: by the area of the pieces. */
export function startWasteFree(to: Scaled, bound: number): WasteFree | undefined {
  const demand = demandOf(to);
  const wasting = leastCost(to, { ...demand, area: demand.area + 1 });
  if (to.kinds.length === 0 || wasting <= bound * (1 + WORTH_IT)) return undefined;

  const sheets = to.sheets.filter(({ count }) => count > 0);
  const longest = Math.max(...sheets.map(({ length }) => length));
  const widest = Math.max(...sheets.map(({ width }) => width));
  const book = blockBook(to.kinds, { length: longest, width: widest });
  to.kinds.forEach(({ length, width, turns }, kind) => {
    book.add(kind, length, width);
    if (turns) book.add(kind, width, length);
  });
  /** Blocks that are to be joined: those as long or as wide as a sheet before the others, for they end soonest in a sheet (by trial). */
  const waiting: readonly [number[], number[]] = [[], []];
  const next: [number, number] = [0, 0];
  let seen = 0;
  /** Some sheet can be filled, with whatever pieces. */
  let filled = false;
  let found: Cells | undefined;

  function look(): void {
    for (; seen < book.size && !found; seen++) {
      const [length, width] = [book.length(seen), book.width(seen)];
      const spans = sheets.some((one) => one.length === length || one.width === width);
      waiting[spans ? 0 : 1].push(seen);
      const sheet = sheets.find((one) => one.length === length && one.width === width);
      if (!sheet) continue;
      filled = true;
      if (isFree(to) && length * width === demand.area)
        found = [{ sheet: to.sheets.indexOf(sheet), cell: cellOf(book, seen, to) }];
    }
  }
  const allJoined = (): boolean => next.every((n, which) => n === waiting[which].length);
  const over = (): boolean => found !== undefined || book.full || allJoined();

  look();
  return {
    get found() {
      return found;
    },
    get bound() {
      return allJoined() && !book.full && !filled ? wasting : bound;
    },
    step() {
      for (let tried = 0; tried < TRIED && !over(); ) {
        const which = next[0] < waiting[0].length ? 0 : 1;
        tried += book.joinWithEarlier(waiting[which][next[which]++]);
        look();
      }
      return !over();
    },
  };
}

function cellOf(book: BlockBook, block: number, to: Scaled): Cell {
  const sides = { length: book.length(block), width: book.width(block) };
  const from = book.parents(block);
  if ('kind' in from) {
    return { kind: 'piece', piece: from.kind, turned: sides.length !== to.kinds[from.kind].length, ...sides };
  }
  const way = book.length(from[0]) === sides.length ? 'along' : 'across';
  return { kind: 'cut', way, parts: from.map((part) => cellOf(book, part, to)), ...sides };
}
