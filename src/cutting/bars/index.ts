import type { BarPlan, CutSearch } from '../../vocabulary/cut-plan';
import type { BarProblem } from '../../vocabulary/cut-problem';
import type { LpSolver } from '../lp';
import { type Cutting, isBetter } from './cutting';
import { quickest } from './first';
import { gather } from './gather';
import { type Ledger, ledgerOf } from './ledger';
import { placeMost, withoutMissing } from './place';
import { planOf } from './plan';
import { search } from './search';
import { type Task, taskOf } from './task';

/** A whole plan at once, by quick ways of packing. */
export function firstBars(problem: BarProblem): BarPlan {
  const task = taskOf(problem);
  const { best, bound } = ledgerOfPlaced(task, quickest(task));
  return planOf(task, best, bound);
}

export interface BarSearchOptions {
  /** Of chance, where the search takes some. */
  readonly seed: number;
  /** Without it there are quick ways of packing and the bound by length only. */
  readonly lp?: LpSolver;
}

/** Searches for the cheapest way to cut bars; among equal ones, for the one with the longest offcut. */
export function startBars(problem: BarProblem, { seed, lp }: BarSearchOptions): CutSearch<BarPlan> {
  const task = taskOf(problem);
  let ledger = ledgerOfPlaced(task, quickest(task));
  let told = ledger.best;
  let bound = ledger.bound;
  let best = planOf(task, told, bound);
  const way = (function* (): Generator<void> {
    if (lacks(ledger.best, task))
      yield* placeMost(task, lp, seed, (cutting) => {
        if (isBetter(task, cutting, inTask(task, ledger.best))) ledger = ledgerOfPlaced(task, cutting);
      });
    yield* search(withoutMissing(task, inTask(task, ledger.best)), ledger, lp, seed);
    ledger.offer(yield* gather(task, ledger.best));
  })();
  return {
    get best() {
      if (told !== ledger.best || bound !== ledger.bound) {
        told = ledger.best;
        bound = ledger.bound;
        best = planOf(task, told, bound);
      }
      return best;
    },
    step: () => !way.next().done,
    dispose() {
      way.return(undefined);
    },
  };
}

/** What is missing of all kinds, of the whole task. */
function inTask(task: Task, { bars }: Cutting): Cutting {
  const missing = task.kinds.map(({ copies }) => copies.length);
  for (const { times } of bars) for (const [kind, n] of times) missing[kind] -= n;
  return { bars, missing };
}

const lacks = (cutting: Cutting, task: Task): boolean => inTask(task, cutting).missing.some((n) => n > 0);

/** A ledger of what a way of cutting places. */
function ledgerOfPlaced(task: Task, cutting: Cutting): Ledger {
  return ledgerOf(withoutMissing(task, cutting), { bars: cutting.bars, missing: cutting.missing.map(() => 0) });
}
