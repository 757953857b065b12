import type { AnyCutPlan } from '../../src/vocabulary/cut-plan';
import { laidOf } from './copies';
import type { Held, Shown } from './held';
import { type Cost, number, type Say } from './words';

/** What is to be fetched for a plan, one kind of stock each. `costs`: how a price is told; absent where there is none. */
export function fetchLines(
  { batch, plan }: Shown,
  locked: readonly number[],
  say: Say,
  costs?: Cost,
): readonly string[] {
  const { problem, from } = batch;
  return plan.used.map(({ stock, count }) => {
    const cut = locked.filter((index) => laidOf(plan)[index]?.stock === stock).length;
    const already = cut === 0 ? '' : cut === count ? ' (cut already)' : ` (${cut} cut already)`;
    const offcut = from[stock]?.offcut;
    if (offcut !== undefined) return `offcut ${offcut} from the rack${already}`;
    const price = costs ? ` at ${costs(problem.stock[stock]?.price ?? 0)}` : '';
    const size =
      problem.kind === 'sheets'
        ? `${number(count, 'sheet')} ${say(problem.stock[stock]?.length ?? 0)} × ${say(problem.stock[stock]?.width ?? 0)}`
        : `${count} × ${say(problem.stock[stock]?.length ?? 0)}`;
    return `${size}${price}${already}`;
  });
}

/** Added up in hundredths of a penny, so that no noise of the sum is told. */
const sumOf = (amounts: readonly number[]): number =>
  amounts.reduce((sum, amount) => sum + Math.round(amount * 100), 0) / 100;

export interface Total extends Pick<AnyCutPlan, 'cost' | 'bound' | 'proven' | 'unplaced'> {
  /** Stuffs that have no plan yet: what they cost is not in it. */
  readonly open: number;
}

/** What all stuffs of a job cost together, and how good that is known to be. */
export function totalOf(batches: readonly Pick<Held, 'shown'>[]): Total {
  const plans = batches.flatMap(({ shown }) => (shown ? [shown.plan] : []));
  return {
    cost: sumOf(plans.map(({ cost }) => cost)),
    bound: sumOf(plans.map(({ bound }) => bound)),
    proven: plans.every(({ proven }) => proven),
    unplaced: plans.flatMap(({ unplaced }) => unplaced),
    open: batches.length - plans.length,
  };
}
