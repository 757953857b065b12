import type { Times } from './knapsack';

/** The best found for a knapsack, and what none can exceed. */
export interface Branched {
  /** For each kind that can be the first in order of worth, the best pattern found that begins with it, if it is worth more than asked. */
  readonly found: readonly { readonly value: number; readonly times: Times }[];
  readonly most: number;
}

/**
 * The bounded knapsack by depth-first search in the order of value for size, for bars too long for a table and pieces so long that few lie on
 * one. Within `nodes`; then `most` is the highest bound of what was left out (Dantzig's bound).
 * @param worth patterns of no more value than this aren't looked for.
 */
export function branchedKnapsack(
  sizes: ArrayLike<number>,
  values: ArrayLike<number>,
  limits: ArrayLike<number>,
  capacity: number,
  worth: number,
  nodes: number,
): Branched {
  const kinds: number[] = [];
  for (let kind = 0; kind < sizes.length; kind++)
    if (values[kind] > 0 && limits[kind] > 0 && sizes[kind] <= capacity) kinds.push(kind);
  kinds.sort((a, b) => values[b] / sizes[b] - values[a] / sizes[a] || a - b);
  const n = kinds.length;
  const size = Float64Array.from(kinds, (kind) => sizes[kind]);
  const value = Float64Array.from(kinds, (kind) => values[kind]);
  const least = new Float64Array(n + 1).fill(Number.POSITIVE_INFINITY);
  for (let i = n - 1; i >= 0; i--) least[i] = Math.min(least[i + 1], size[i]);
  const now = new Int32Array(n);
  const found: { readonly value: number; readonly times: Times }[] = [];
  let best = worth;
  let own = worth;
  let most = 0;
  let budget = 0;
  let times: Int32Array | undefined;
  const search = (from: number, room: number, sum: number): void => {
    most = Math.max(most, sum);
    if (sum > own) {
      own = sum;
      times = now.slice(0, from);
    }
    for (let i = from; i < n && room >= least[i]; i++) {
      const reach = sum + (room / size[i]) * value[i];
      if (reach <= own) return;
      if (budget <= 0) {
        most = Math.max(most, reach);
        return;
      }
      for (let k = Math.min(limits[kinds[i]], Math.floor(room / size[i])); k > 0; k--) {
        budget--;
        now[i] = k;
        search(i + 1, room - k * size[i], sum + k * value[i]);
      }
      now[i] = 0;
    }
  };
  for (let first = 0; first < n; first++) {
    const reach = (capacity / size[first]) * value[first];
    if (reach <= worth) break;
    own = worth;
    times = undefined;
    budget = Math.max(50, Math.floor(nodes / n));
    for (let k = Math.min(limits[kinds[first]], Math.floor(capacity / size[first])); k > 0; k--) {
      now[first] = k;
      search(first + 1, capacity - k * size[first], k * value[first]);
    }
    now[first] = 0;
    if (times) {
      const kept = times as Int32Array;
      found.push({
        value: own,
        times: kinds.flatMap((kind, i) => ((kept[i] ?? 0) > 0 ? [[kind, kept[i]] as const] : [])),
      });
      best = Math.max(best, own);
    }
  }
  // What was not looked at is worth no more than `worth`, at the least.
  return { found, most: Math.max(most, worth, best) };
}
