import { type Cutting, isBetter, missingOf } from './cutting';
import { closestFill, greedyFill } from './fill';
import { allOf, pack, type Rest } from './pack';
import type { Task } from './task';

/** Nodes of the search for each bar, at the most and at the least, and in all. */
const NODES = 300;
const FEWEST_NODES = 10;
const ALL_NODES = 150_000;

/** Kinds looked at for all bars, from which on only the quickest ways are tried. */
const MUCH = 1_500_000;

/** The best of some quick ways of packing what is left. */
export function quickest(task: Task, rest: Rest = allOf(task)): Cutting {
  const roomiest = task.sources.reduce((most, { capacity }) => Math.max(most, capacity), 1);
  const bars = 1 + rest.left.reduce((sum, n, kind) => sum + n * task.kinds[kind].size, 0) / roomiest;
  const isMuch = bars * task.kinds.length * Math.min(4, task.sources.length) > MUCH;
  const nodes = Math.max(FEWEST_NODES, Math.min(NODES, Math.floor(ALL_NODES / bars)));
  let best: Cutting | undefined;
  for (const leads of task.sources.length > 1 ? [false, true] : [true])
    for (const fill of [greedyFill, closestFill(nodes)]) {
      if (isMuch && best && missingOf(task, best) === 0 && leads) continue;
      const found = pack(task, rest, fill, leads);
      if (!best || isBetter(task, found, best)) best = found;
    }
  return best ?? { bars: [], missing: rest.left };
}
