import { branchedKnapsack } from './branch';
import { sizeOf } from './cutting';
import { type Knapsack, knapsackTable, type Times } from './knapsack';
import type { Pattern, Task } from './task';

/** A pattern, and what it is worth by the prices of the kinds in it. */
export interface Worth extends Pattern {
  readonly value: number;
}

/** What prices of kinds are worth on the bars. */
export interface Priced {
  /** Of each source, the greatest value of a bar; never less than it truly is. */
  readonly most: readonly number[];
  /** Patterns worth more than their bars cost, the most gainful first. */
  readonly found: readonly Worth[];
}

/**
 * Prices kinds on all sources.
 * @param values of one piece of each kind, whole numbers.
 * @param limits how many of each kind can be wanted.
 * @param costs of a bar of each source; what is worth no more is not looked for.
 */
export type Pricing = (values: Float64Array, limits: readonly number[], costs: readonly number[]) => Priced;

/** Nodes of the search where bars are too long for a table. */
const NODES = 60_000;

/** Times that a pattern which doesn't truly fit is tried with less room. */
const TRIES = 5;

/** A pricing with tables of its own. */
export function pricingOf(task: Task): Pricing {
  const table = knapsackTable();
  const sizes = task.kinds.map(({ least }) => least);
  const longest = task.sources.reduce((most, source) => Math.max(most, source.most), 0);
  return (values, limits, costs) => {
    const { most, found } =
      byTable(task, table, values, limits, costs, longest) ?? byBranching(task, sizes, values, limits, costs);
    return { most, found: found.sort((a, b) => b.value - costs[b.source] - (a.value - costs[a.source])) };
  };
}

interface Found {
  readonly most: readonly number[];
  readonly found: Worth[];
}

function byTable(
  task: Task,
  table: Knapsack,
  values: Float64Array,
  limits: readonly number[],
  costs: readonly number[],
  longest: number,
): Found | undefined {
  // Of kinds longer than half a bar one lies on each at the most: they needn't be in the table.
  const isLong = task.kinds.map(({ least }) => 2 * least > longest);
  const short = limits.map((n, kind) => (isLong[kind] ? 0 : n));
  const filled = table(
    task.kinds.map(({ least }) => least),
    values,
    short,
    longest,
  );
  if (!filled) return undefined;
  const { best, trace } = filled;
  const found: Worth[] = [];
  const most = task.sources.map(({ most: room }, source) => {
    const cost = costs[source];
    const add = (first: number, from: number): void => {
      const given = first < 0 ? 0 : values[first];
      for (let c = from, n = 0; c >= 0 && n < TRIES && given + best[c] > cost; n++) {
        const times = withOne(trace(c), first, limits);
        if (!times) return;
        if (task.holds({ source, times })) {
          found.push({ source, times, value: given + best[c] });
          return;
        }
        c = sizeOf(task, times) - (first < 0 ? 0 : task.kinds[first].least) - 1;
      }
    };
    let top = best[room];
    add(-1, room);
    // For variety, the best with each kind: one that is in the rest already as often as it is wanted is left out.
    for (let kind = 0; kind < values.length; kind++) {
      const beside = room - task.kinds[kind].least;
      if (values[kind] <= 0 || limits[kind] < 1 || beside < 0) continue;
      if (isLong[kind]) top = Math.max(top, values[kind] + best[beside]);
      add(kind, beside);
    }
    return top;
  });
  return { most, found };
}

/** One more of a kind, if that many are wanted. */
function withOne(times: Times, kind: number, limits: readonly number[]): Times | undefined {
  if (kind < 0) return times;
  const there = times.find(([k]) => k === kind)?.[1] ?? 0;
  if (there >= limits[kind]) return undefined;
  return there === 0 ? [...times, [kind, 1]] : times.map(([k, n]) => (k === kind ? [k, n + 1] : [k, n]));
}

function byBranching(
  task: Task,
  sizes: readonly number[],
  values: Float64Array,
  limits: readonly number[],
  costs: readonly number[],
): Found {
  const found: Worth[] = [];
  const most = task.sources.map(({ most: room }, source) => {
    const best = branchedKnapsack(sizes, values, limits, room, costs[source], NODES);
    for (const { value, times } of best.found) if (task.holds({ source, times })) found.push({ source, times, value });
    return best.most;
  });
  return { most, found };
}
