import type { Scaled } from '../sheets/scaled';

/** Sums looked at, at most. */
const SUMS = 20_000;
/** Sums of prices that differ by less are the same. */
const NOISE = 1e-9;

/**
 * The least sum of prices of sheets, as many of each as there are, that is not below a cost; the cost itself where there are too many sums.
 * Infinity: all sheets together cost less.
 */
export function attainable({ sheets }: Pick<Scaled, 'sheets'>, cost: number): number {
  const dear = [...sheets].filter(({ price }) => price > 0).sort((a, b) => b.price - a.price);
  const below = cost - NOISE * (1 + Math.abs(cost));
  if (below <= 0) return 0;
  const all = dear.map(({ price, count }) => price * count);
  for (let i = dear.length - 2; i >= 0; i -= 1) all[i] += all[i + 1];
  if (all.length === 0 || all[0] < below) return Number.POSITIVE_INFINITY;
  let best = Number.POSITIVE_INFINITY;
  let looked = 0;
  const go = (i: number, sum: number): void => {
    looked += 1;
    if (looked > SUMS || sum >= best) return;
    if (sum >= below) {
      best = sum;
      return;
    }
    if (i === dear.length || sum + all[i] < below) return;
    const { price, count } = dear[i];
    const most = Math.min(count, Math.ceil((below - sum) / price));
    // The last price settles how many of it.
    for (let n = most; n >= (i === dear.length - 1 ? most : 0); n -= 1) go(i + 1, sum + n * price);
  };
  go(0, 0);
  return looked > SUMS ? Math.min(best, Math.max(cost, 0)) : best;
}
