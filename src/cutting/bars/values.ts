import { branchedKnapsack } from './branch';
import type { Fill } from './fill';
import { knapsackTable } from './knapsack';
import type { Ledger } from './ledger';
import { allOf, pack } from './pack';
import type { Task } from './task';

/** Nodes of the search for a bar of the greatest value, where bars are too long for a table; and the table's cells, for it is filled for each bar. */
const NODES = 4000;
const MOST_CELLS = 400_000;

/**
 * Sequential value correction (Mukhacheva, Belov, Kartak & Mukhacheva 2000; Belov & Scheithauer 2007): bars are filled by value, and what ended
 * on a badly filled bar is worth more the next time.
 */
export function* correctValues(task: Task, ledger: Ledger, rounds: number): Generator<void> {
  const sizes = task.kinds.map(({ size }) => size);
  const values = Float64Array.from(sizes);
  const table = knapsackTable(MOST_CELLS);
  const fill: Fill = (_, left, capacity) => {
    const filled = table(sizes, values, left, capacity);
    if (filled) return [...filled.trace(capacity)].sort((a, b) => a[0] - b[0]);
    const { found } = branchedKnapsack(sizes, values, left, capacity, 0, NODES);
    const best = found.reduce((most, one) => (most && most.value >= one.value ? most : one), found[0]);
    return [...(best?.times ?? [])].sort((a, b) => a[0] - b[0]);
  };
  for (let round = 0; round < rounds && !ledger.done(); round++) {
    const cutting = pack(task, allOf(task), fill, round % 2 === 0);
    ledger.offer(cutting);
    for (const { source, times } of cutting.bars) {
      let size = 0;
      for (const [kind, n] of times) size += n * sizes[kind];
      const waste = task.sources[source].capacity / Math.max(1, size);
      for (const [kind, n] of times) {
        const part = n / task.kinds[kind].copies.length / 2;
        values[kind] = (1 - part) * values[kind] + part * sizes[kind] ** 1.02 * waste;
      }
    }
    yield;
  }
}
