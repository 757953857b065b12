import type { Scaled, Sheet } from '../sheets/scaled';
import { guillotineTable, sumsUpTo, workOf } from './guillotine-table';
import type { Lying } from './valued';

/** The most that one sheet can hold, as an upper limit: no way of cutting edge to edge holds more. */
export interface SheetLimit {
  /** What one reckoning costs, in cuts looked at. */
  readonly work: number;
  /** By the true sizes. */
  readonly exact: boolean;
  /** The limit for these worths of kinds, with pauses. */
  limit(worths: ArrayLike<number>): Generator<undefined, number>;
  /** How many of each kind the last limit stands for. */
  counts(): Int32Array;
}

/** How many sums of sides there are is only found out for sides up to this. */
const COUNTED = 4000;

/**
 * The limit of a sheet for no more work than this. Where the true sizes would cost more, in coarser steps: a side of the sheet is parted into
 * so many steps, and every side of a piece goes down to whole ones. What could be cut from edge to edge before can be after, for whole steps
 * that fit in the parts of a length fit in the length. The numbers wanted are not minded, but for pieces that become nothing: those are held
 * by every sheet.
 */
export function sheetLimit({ kinds }: Scaled, sheet: Sheet, work: number): SheetLimit {
  const lying: readonly Lying[] = kinds.flatMap(({ length, width, turns }, piece) => [
    ...(length <= sheet.length && width <= sheet.width ? [{ piece, turned: false, x: length, y: width }] : []),
    ...(turns && width <= sheet.length && length <= sheet.width ? [{ piece, turned: true, x: width, y: length }] : []),
  ]);
  const sidesX = lying.map(({ x }) => x);
  const sidesY = lying.map(({ y }) => y);
  const exact = workOf(sums(sheet.length, sidesX), sums(sheet.width, sidesY)) <= work;
  // As many steps to the length as to the width, in proportion.
  const ratio = sheet.width / sheet.length;
  const steps = ((4 * work) / (ratio + ratio * ratio)) ** (1 / 3);
  const nx = exact ? sheet.length : closest(Math.floor(Math.min(steps, sheet.length)), sheet.length, sidesX);
  const ny = exact ? sheet.width : closest(Math.floor(Math.min(steps * ratio, sheet.width)), sheet.width, sidesY);
  const coarse = lying.map((l) => ({
    ...l,
    x: Math.floor((l.x * nx) / sheet.length),
    y: Math.floor((l.y * ny) / sheet.width),
  }));
  const nothing = new Set(coarse.filter(({ x, y }) => x === 0 || y === 0).map(({ piece }) => piece));
  const table = guillotineTable(
    { length: nx, width: ny },
    coarse.filter(({ piece }) => !nothing.has(piece)),
    kinds.length,
  );
  return {
    work: table.work,
    exact,
    *limit(worths) {
      let sum = yield* table.filling(worths);
      for (const k of nothing) sum += kinds[k].quantity * worths[k];
      return sum;
    },
    counts() {
      const counts = table.counts();
      for (const k of nothing) counts[k] += kinds[k].quantity;
      return counts;
    },
  };
}

const sums = (side: number, sides: readonly number[]): number =>
  side > COUNTED ? Number.POSITIVE_INFINITY : sumsUpTo(side, sides).length;

/** Of some numbers of steps below the most, the one by which pieces lose least. */
function closest(most: number, side: number, sides: readonly number[]): number {
  let best = Math.max(1, most);
  let least = Number.POSITIVE_INFINITY;
  for (let n = best; n >= Math.max(1, 0.85 * most); n -= 1) {
    let lost = 0;
    for (const s of sides) {
      const steps = (s * n) / side;
      lost += 1 - Math.floor(steps) / steps;
    }
    if (lost < least) {
      least = lost;
      best = n;
    }
  }
  return best;
}
