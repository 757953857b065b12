import { type Cutting, isBetter, roomIn, sizeOf } from './cutting';
import { fullestFill } from './fill';
import type { Times } from './knapsack';
import { fitted } from './pack';
import type { Pattern, Task } from './task';

/** Bars tried as the one in which to gather what is left, and nodes of the search for each exchange. */
const MOST_TRIED = 12;
const NODES = 2000;

/**
 * Gathers what is left over into one bar: from it and each other in turn, the other is filled as full as can be. The same bars, or one less.
 * Yields between bars.
 */
export function* gather(task: Task, cutting: Cutting): Generator<void, Cutting> {
  let best = cutting;
  const order = cutting.bars
    .map((_, i) => i)
    .sort((a, b) => roomIn(task, cutting.bars[b]) - roomIn(task, cutting.bars[a]) || a - b);
  for (const target of order.slice(0, MOST_TRIED)) {
    const found = { bars: gathered(task, cutting.bars, target), missing: cutting.missing };
    if (isBetter(task, found, best)) best = found;
    yield;
  }
  return best;
}

function gathered(task: Task, bars: readonly Pattern[], target: number): readonly Pattern[] {
  const now = [...bars];
  const fill = fullestFill(NODES);
  const sizes = task.kinds.map(({ size }) => size);
  for (let i = 0; i < now.length; i++) {
    if (i === target || roomIn(task, now[i]) <= 0) continue;
    const pool = sizes.map(() => 0);
    for (const { times } of [now[i], now[target]]) for (const [kind, n] of times) pool[kind] += n;
    const times = fitted(task, fill, sizes, pool, now[i].source);
    if (sizeOf(task, times) <= sizeOf(task, now[i].times)) continue;
    for (const [kind, n] of times) pool[kind] -= n;
    const rest: Times = pool.flatMap((n, kind) => (n > 0 ? [[kind, n] as const] : []));
    if (!task.holds({ source: now[target].source, times: rest })) continue;
    now[i] = { source: now[i].source, times };
    now[target] = { source: now[target].source, times: rest };
  }
  return now.filter(({ times }) => times.length > 0);
}
