import type { Scaled, Sheet } from '../sheets/scaled';
import { attainable } from './attainable';
import { type DualFeasible, dualFeasible } from './dual-feasible';

/** Functions with a parameter from the sides, at each axis. */
const MOST = 12;
/** From so many sheets on few functions are tried. */
const MANY_SHEETS = 12;

/** Weights are reckoned for so many pieces and sheets together, at most, between two pauses. */
const PAUSE_AFTER = 30_000;

/** What the pieces cost at least by their area alone, rounded up to a sum of prices. */
export function areaBound(scaled: Scaled): number {
  const area = scaled.kinds.reduce((sum, { length, width, quantity }) => sum + length * width * quantity, 0);
  return attainable(scaled, covering(scaled.sheets, area));
}

/**
 * Raises the bound by weights from dual feasible functions at both axes: no solver, and no minding how it is cut. Each pair of functions is
 * the same choice for every sheet, each with its own capacity.
 */
export function* weightBound(scaled: Scaled, so: { bound: number; readonly cost: number }): Generator<undefined, void> {
  const { kinds, sheets } = scaled;
  if (kinds.length === 0) return;
  const sides = kinds.flatMap((k) => [k.length, k.width]);
  const most = sheets.length > MANY_SHEETS ? 2 : MOST;
  const tables = sheets.map((sheet) => ({
    x: dualFeasible(sheet.length, within(sides, sheet.length), most),
    y: dualFeasible(sheet.width, within(sides, sheet.width), most),
  }));
  const turning = kinds.some(({ turns }) => turns);
  const functions = Math.max(...tables.map(({ x, y }) => Math.max(x.length, y.length)));
  const pick = (from: readonly DualFeasible[], n: number): DualFeasible => from[n] ?? from[0];
  let work = 0;
  for (let i = 0; i < functions; i += 1)
    for (let j = 0; j < functions; j += 1) {
      if (so.bound >= so.cost - 1e-9) return;
      const weights = sheets.map((sheet, s) => {
        const { x, y } = tables[s];
        // On a square sheet both ways round hold at once, and their mean does not mind how a piece is turned.
        const both = turning && sheet.length === sheet.width;
        return weigher(sheet, both, [pick(x, i), pick(x, j)], [pick(y, i), pick(y, j)]);
      });
      // Of a sheet's area each piece takes at least so much; the least of all sheets on which it lies holds for any.
      let wanted = 0;
      for (const { length, width, turns, quantity } of kinds) {
        let least = Number.POSITIVE_INFINITY;
        for (const weigh of weights) {
          least = Math.min(least, weigh(length, width));
          if (turns) least = Math.min(least, weigh(width, length));
        }
        wanted += quantity * least;
      }
      const least = covering(sheets, wanted);
      // The bound is a sum of prices already: what is below it is rounded up to no more.
      if (least > so.bound) so.bound = attainable(scaled, least);
      work += kinds.length * sheets.length;
      if (work < PAUSE_AFTER) continue;
      work = 0;
      yield;
    }
}

const within = (sides: readonly number[], capacity: number): number[] => sides.filter((s) => s <= capacity);

/** The weight of a piece lying so, as an area of the sheet; infinite where it doesn't lie on it. */
function weigher(
  { length, width }: Sheet,
  both: boolean,
  [fx, gx]: readonly DualFeasible[],
  [fy, gy]: readonly DualFeasible[],
): (a: number, b: number) => number {
  const area = length * width;
  return (a, b) => {
    if (a > length || b > width) return Number.POSITIVE_INFINITY;
    const one = fx(a) * gy(b);
    return area * (both ? (one + gx(a) * fy(b)) / 2 : one);
  };
}

/** What sheets with so much area together cost at least, could the last be taken in part. */
function covering(sheets: readonly Sheet[], area: number): number {
  let left = area;
  let cost = 0;
  for (const { length, width, price, count } of [...sheets].sort(
    (a, b) => a.price / (a.length * a.width) - b.price / (b.length * b.width),
  )) {
    const part = Math.min(count, left / (length * width));
    cost += part * price;
    left -= part * length * width;
    if (left <= 0) break;
  }
  return cost;
}
