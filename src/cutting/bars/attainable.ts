import type { Task } from './task';

/** Sums of prices looked at one by one; beyond, only what all prices are multiples of is used. */
const MOST_SUMS = 400_000;

/**
 * Rounds a bound up to the next cost that can be: a sum of prices of bars that together are long enough for all the size that is to be cut.
 * Costs as prices are counted in the task. `size` by the least that kinds take, `upTo` a cost that is known to do.
 */
export function attainable(task: Task, size: number, upTo: number): (bound: number) => number {
  if (!task.wholePrices) return (bound) => bound;
  const step = priceStep(task);
  if (step === 0) return () => 0;
  const sums = Math.round(upTo / step);
  const up = (bound: number): number => Math.max(0, Math.ceil(bound / step));
  if (sums > MOST_SUMS) return (bound) => up(bound) * step;
  const reach = reaches(task, step, sums);
  return (bound) => {
    let at = up(bound);
    while (at < sums && reach[at] < size) at++;
    return at * step;
  };
}

/** What all prices are multiples of; 0 where they aren't whole numbers or all nothing. */
export const priceStep = ({ wholePrices, sources }: Task): number =>
  wholePrices ? sources.reduce((all, { price }) => commonDivisor(all, price), 0) : 0;

/** For each sum of prices the greatest length that it buys; −∞ where no bars come to it. */
function reaches({ sources }: Task, step: number, sums: number): Float64Array {
  const reach = new Float64Array(sums + 1).fill(Number.NEGATIVE_INFINITY);
  reach[0] = 0;
  for (const { price, most, count } of sources) {
    const cost = Math.round(price / step);
    if (cost === 0) {
      for (let c = 0; c <= sums; c++) reach[c] += most * count;
      continue;
    }
    if (count >= sums / cost) {
      for (let c = cost; c <= sums; c++) reach[c] = Math.max(reach[c], reach[c - cost] + most);
      continue;
    }
    for (let bundle = 1, left = count; left > 0; bundle *= 2) {
      const n = Math.min(bundle, left);
      left -= n;
      for (let c = sums; c >= n * cost; c--) reach[c] = Math.max(reach[c], reach[c - n * cost] + n * most);
    }
  }
  return reach;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
