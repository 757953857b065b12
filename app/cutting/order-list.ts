import { type Total, totalOf } from '../../src/cut';
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

/** What all stuffs of a job cost together, and how many have no plan yet: what those cost is not in it. */
export function jobTotal(batches: readonly Pick<Held, 'shown'>[]): Total & { readonly open: number } {
  const plans = batches.flatMap(({ shown }) => (shown ? [shown.plan] : []));
  return { ...totalOf(plans), open: batches.length - plans.length };
}
