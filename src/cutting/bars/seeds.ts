import { chanceOf } from './chance';
import type { Columns } from './columns';
import type { Rest } from './pack';
import type { Pricing } from './pricing';
import type { Task } from './task';

/** How much the worth of a millimetre is shaken, and how full a bar must be to be taken. */
const SHAKEN = 0.1;
const FULL = 0.97;

/** In how many new patterns of a round, of each one wanted, a kind may lie. */
const MOST_SHARED = 3;

const PARTS = 2 ** 26;

/** Full bars to begin with: patterns that are best when pieces are worth about as much as they are long. */
export function* seedPatterns(
  task: Task,
  columns: Columns,
  pricing: Pricing,
  rest: Rest,
  rounds: number,
  seed: number,
): Generator<void> {
  const chance = chanceOf(seed);
  const roomiest = task.sources.reduce((most, source) => Math.max(most, source.most), 1);
  for (let round = 0; round < rounds; round++) {
    const values = Float64Array.from(task.kinds, ({ least }) =>
      Math.floor((PARTS * least * (1 + SHAKEN * (chance() - 0.5))) / roomiest),
    );
    const costs = task.sources.map(({ most }) => (FULL * PARTS * most) / roomiest);
    const shared = new Float64Array(task.kinds.length);
    for (const { source, times } of pricing(values, rest.left, costs).found) {
      if (times.some(([kind]) => shared[kind] >= MOST_SHARED) || !columns.add({ source, times })) continue;
      for (const [kind, n] of times) shared[kind] += n / Math.max(1, rest.left[kind]);
    }
    yield;
  }
}
