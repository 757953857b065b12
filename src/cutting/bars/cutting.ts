import type { Times } from './knapsack';
import type { Pattern, Task } from './task';

/** Bars cut, and what of each kind is not. */
export interface Cutting {
  readonly bars: readonly Pattern[];
  readonly missing: readonly number[];
}

/** What lies in a pattern, in whole units. */
export function sizeOf(task: Task, times: Times): number {
  let size = 0;
  for (const [kind, n] of times) size += task.kinds[kind].size * n;
  return size;
}

/** Of all bars, as prices are counted in the task. */
export const costOf = (task: Task, bars: readonly Pattern[]): number =>
  bars.reduce((sum, { source }) => sum + task.sources[source].price, 0);

/** How much of the pieces' size could not be placed. */
export const missingOf = (task: Task, { missing }: Cutting): number =>
  missing.reduce((sum, n, kind) => sum + n * task.kinds[kind].size, 0);

/** The longest reusable offcut of one bar, in whole units; 0 where there is none. */
function longestLeft(task: Task, bars: readonly Pattern[]): number {
  const longest = bars.reduce((most, bar) => Math.max(most, roomIn(task, bar)), 0);
  return longest >= task.leastOffcut ? longest : 0;
}

/** What is left of a bar, a kerf taken off, in whole units. */
export const roomIn = (task: Task, { source, times }: Pattern): number =>
  task.sources[source].capacity - sizeOf(task, times);

/** A hair's breadth of money, where prices are no whole pence. */
export const HAIR = 1e-7;

/** Whether one way of cutting is better: more placed, cheaper, a longer offcut, fewer bars. */
export function isBetter(task: Task, a: Cutting, b: Cutting): boolean {
  const placed = missingOf(task, b) - missingOf(task, a);
  if (placed !== 0) return placed > 0;
  const saved = costOf(task, b.bars) - costOf(task, a.bars);
  if (Math.abs(saved) > HAIR) return saved > 0;
  const longer = longestLeft(task, a.bars) - longestLeft(task, b.bars);
  return longer !== 0 ? longer > 0 : a.bars.length < b.bars.length;
}

/** Each bar from the cheapest source that is left and holds it. */
export function cheapened(task: Task, { bars, missing }: Cutting): Cutting {
  const { sources } = task;
  if (sources.length < 2) return { bars, missing };
  const stock = sources.map(({ count }) => count);
  for (const { source } of bars) stock[source]--;
  const better = bars.map((bar) => {
    let best = bar;
    for (let source = 0; source < sources.length; source++)
      if (stock[source] >= 1 && sources[source].price < sources[best.source].price && task.holds({ ...bar, source }))
        best = { ...bar, source };
    stock[bar.source]++;
    stock[best.source]--;
    return best;
  });
  return { bars: better, missing };
}
