import type { LpSolver } from '../lp';
import type { Cutting } from './cutting';
import { quickest } from './first';
import { ledgerOf } from './ledger';
import { search } from './search';
import type { Task } from './task';

/** What a bar's worth of pieces left out costs, as often as the dearest bar. */
const LEFT_OUT = 50;

/**
 * Where there isn't stock enough for all: places as much as can be found. What is left out lies on bars that don't exist, as long as the
 * largest kind and very dear; the search makes do with as few of them as it can.
 */
export function* placeMost(
  task: Task,
  lp: LpSolver | undefined,
  seed: number,
  show: (cutting: Cutting) => void,
): Generator<void> {
  const longest = task.kinds.reduce((most, { size }) => Math.max(most, size), 0);
  const dearest = task.sources.reduce((most, { price }) => Math.max(most, price), 1);
  const absent = {
    capacity: longest,
    most: longest,
    price: LEFT_OUT * dearest,
    count: Number.POSITIVE_INFINITY,
    from: [],
  };
  const wider: Task = {
    ...task,
    sources: [...task.sources, absent],
    holds: (pattern) =>
      pattern.source < task.sources.length ? task.holds(pattern) : sizeIn(task, pattern.times) <= longest,
  };
  const ledger = ledgerOf(wider, quickest(wider));
  let told = ledger.best;
  show(withoutAbsent(task, told));
  for (const _ of search(wider, ledger, lp, seed)) {
    if (told !== ledger.best) {
      told = ledger.best;
      show(withoutAbsent(task, told));
    }
    yield;
  }
  show(withoutAbsent(task, ledger.best));
}

function sizeIn({ kinds }: Task, times: Cutting['bars'][number]['times']): number {
  let size = 0;
  for (const [kind, n] of times) size += n * kinds[kind].size;
  return size;
}

/** Only bars that there are; what lay on the others is missing. */
function withoutAbsent(task: Task, { bars, missing }: Cutting): Cutting {
  const short = [...missing];
  for (const { source, times } of bars)
    if (source >= task.sources.length) for (const [kind, n] of times) short[kind] += n;
  return { bars: bars.filter(({ source }) => source < task.sources.length), missing: short };
}

/** The task without what is missing in a way of cutting. */
export const withoutMissing = (task: Task, { missing }: Cutting): Task => ({
  ...task,
  kinds: task.kinds.map((kind, i) => ({ ...kind, copies: kind.copies.slice(0, kind.copies.length - missing[i]) })),
});
