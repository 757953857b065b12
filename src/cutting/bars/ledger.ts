import { attainable, priceStep } from './attainable';
import { type Cutting, cheapened, costOf, HAIR, isBetter, missingOf } from './cutting';
import type { Task } from './task';

/** Keeps the best way of cutting so far and the best bound. */
export interface Ledger {
  readonly best: Cutting;
  readonly bound: number;
  /** Cost of the best. */
  readonly cost: number;
  /** Keeps it if it is better. */
  offer(cutting: Cutting): void;
  prove(bound: number): void;
  /** The next cost that can be. */
  roundUp(bound: number): number;
  /** What a better one would cost at the most. */
  below(): number;
  /** Whether what costs at least so much is no better than what there is. */
  hopeless(bound: number): boolean;
  /** How far a cost may be off that the solver of linear programs says, with its tolerances of 1e-7 a row. */
  readonly fuzz: number;
  /** All is placed, and the cost meets the bound. */
  done(): boolean;
}

/** Of the dearest bar. */
const FUZZ = 1e-4;

/** A ledger that begins with a way of cutting, and the bound by length. */
export function ledgerOf(task: Task, first: Cutting): Ledger {
  let best = first;
  let cost = costOf(task, first.bars);
  let size = 0;
  task.kinds.forEach(({ least, copies }, kind) => {
    size += least * (copies.length - first.missing[kind]);
  });
  const step = priceStep(task);
  const roundUp = attainable(task, size, cost);
  let bound = roundUp(byLength(task, size));
  return {
    get best() {
      return best;
    },
    get bound() {
      return bound;
    },
    get cost() {
      return cost;
    },
    offer(offered) {
      const cutting = cheapened(task, offered);
      if (!isBetter(task, cutting, best)) return;
      best = cutting;
      cost = costOf(task, cutting.bars);
    },
    prove(proved) {
      bound = Math.max(bound, roundUp(proved));
    },
    roundUp,
    fuzz: FUZZ * task.sources.reduce((most, { price }) => Math.max(most, price), 0),
    below: () => cost - step,
    hopeless: (proved) => roundUp(proved) >= cost - HAIR,
    done: () => missingOf(task, best) === 0 && cost <= bound + HAIR,
  };
}

/** The least that bars cost that are long enough together, were they sold by length: what all sizes need, whatever the pieces. */
function byLength({ sources }: Task, size: number): number {
  const order = [...sources].sort((a, b) => a.price / a.most - b.price / b.most);
  let left = size;
  let cost = 0;
  for (const { price, most, count } of order) {
    const bars = Math.min(count, left / most);
    cost += bars * price;
    left -= bars * most;
    if (left <= 0) break;
  }
  return cost * (1 - 1e-10);
}
