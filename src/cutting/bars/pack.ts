import { type Cutting, sizeOf } from './cutting';
import type { Fill } from './fill';
import type { Times } from './knapsack';
import type { Task } from './task';

/** What is still to be cut, and what there still is to cut from. */
export interface Rest {
  readonly left: number[];
  readonly stock: number[];
}

/** Everything is still to be cut. */
export const allOf = (task: Task): Rest => ({
  left: task.kinds.map(({ copies }) => copies.length),
  stock: task.sources.map(({ count }) => count),
});

/** Times that a fill is tried with less room, before pieces are taken out again. */
const TRIES = 6;

/** A fill that truly fits: where slanted ends don't nest as well as could be, it is tried with less room. */
export function fitted(
  task: Task,
  fill: Fill,
  sizes: readonly number[],
  left: readonly number[],
  source: number,
): Times {
  let room = task.sources[source].capacity;
  let times: Times = [];
  for (let n = 0; n < TRIES; n++) {
    times = fill(sizes, left, room);
    if (times.length === 0 || task.holds({ source, times })) return times;
    room = sizeOf(task, times) - 1;
  }
  while (times.length > 0 && !task.holds({ source, times })) {
    const [kind, n] = times[times.length - 1];
    times = [...times.slice(0, -1), ...(n > 1 ? [[kind, n - 1] as const] : [])];
  }
  return times;
}

/**
 * Packs bar after bar, each time from the source that gives most for its price.
 * @param leads each bar must hold the largest kind left, if any source that is left can.
 */
export function pack(task: Task, { left, stock }: Rest, fill: Fill, leads: boolean): Cutting {
  const sizes = task.kinds.map(({ size }) => size);
  const missing = [...left];
  const counts = [...stock];
  const bars: { readonly source: number; readonly times: Times }[] = [];
  // The cheapest for their length first: what can be no better than what is found needn't be tried.
  const ratio = (source: number): number => task.sources[source].price / task.sources[source].capacity;
  const order = task.sources.map((_, source) => source).sort((a, b) => ratio(a) - ratio(b) || a - b);
  for (;;) {
    const lead = missing.findIndex((n) => n > 0);
    if (lead < 0) break;
    let best:
      | { readonly source: number; readonly times: Times; readonly score: number; readonly full: number }
      | undefined;
    for (const source of order) {
      if (counts[source] < 1) continue;
      if (best && ratio(source) > best.score) break;
      const times = fitted(task, fill, sizes, missing, source);
      if (times.length === 0) continue;
      const { price, capacity } = task.sources[source];
      const size = sizeOf(task, times);
      const leadsNot = leads && times[0][0] !== lead ? 1e12 : 0;
      const score = price / size + leadsNot;
      const full = size / capacity;
      if (!best || score < best.score || (score === best.score && full > best.full))
        best = { source, times, score, full };
    }
    if (!best) break;
    const { source, times } = best;
    // The same again, as long as there is enough of everything.
    const again = times.reduce((n, [kind, k]) => Math.min(n, Math.floor(missing[kind] / k)), counts[source]);
    for (let n = 0; n < again; n++) bars.push({ source, times });
    counts[source] -= again;
    for (const [kind, n] of times) missing[kind] -= n * again;
  }
  return { bars, missing };
}
