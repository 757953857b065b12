import type { Master } from '../../lp';
import { NEARLY } from './nearly';

/** What leaving out a piece costs: too much to be worth it, where a fill gains 1 at the most. */
const NEVER_OUT = 100;

/** Rounds; it ends when one raises the sum of squares by less and nothing new would gain. */
const MOST_ROUNDS = 30;
const LEAST_SHARPER = 0.1;

/**
 * There are many relaxed choices that leave nothing out, and one with large amounts is wanted. The sum of their squares is greatest where all
 * are whole; it is driven up by linear steps (Frank & Wolfe 1956; of a convex function that is to be made large, every step goes to a corner
 * and none falls), to where no step helps: not always the greatest there is.
 * @param extra how many columns, the first ones, leave a piece out.
 * @param first amounts of all columns, none left out.
 * @param more told the prices of rows, may add columns that would gain by them, and says how many.
 * @returns the amounts of all columns but the first ones.
 */
export function* sharpened(
  master: Master,
  extra: number,
  first: Float64Array,
  more: (duals: Float64Array) => number,
): Generator<void, Float64Array> {
  let amounts = first;
  let squares = sumOfSquares(amounts);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    master.setCosts(amounts.map((amount, i) => (i < extra ? NEVER_OUT : -amount)));
    const relaxed = master.relax();
    yield;
    if (!relaxed || relaxed.amounts.subarray(0, extra).some((part) => part > NEARLY)) break;
    const sum = sumOfSquares(relaxed.amounts);
    const isSharper = sum >= squares + LEAST_SHARPER;
    const added = more(relaxed.duals);
    if (!isSharper && added === 0) break;
    const longer = new Float64Array(amounts.length + added);
    longer.set(sum > squares ? relaxed.amounts : amounts);
    squares = Math.max(squares, sum);
    amounts = longer;
  }
  return amounts.subarray(extra);
}

function sumOfSquares(amounts: Float64Array): number {
  let sum = 0;
  for (const x of amounts) sum += x * x;
  return sum;
}
