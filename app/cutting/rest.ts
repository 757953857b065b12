import { restOf, withLocked } from '../../src/cut';
import type { AnyCutPlan } from '../../src/vocabulary/cut-plan';
import type { CutProblem } from '../../src/vocabulary/cut-problem';
import { copiesOf } from './copies';
import { type Held, type Shown, shownOf } from './held';

/** What the worker is asked about: the whole problem, or what of it is not cut yet. */
export function restProblem({ batch, shown, locked }: Pick<Held, 'batch' | 'shown' | 'locked'>): CutProblem {
  if (!shown || locked.length === 0) return batch.problem;
  return restOf(shown.batch.problem, shown.plan, locked).problem;
}

/** The worker's plan, joined with what is cut already: that comes first, and every piece of it stays the part that it is. */
export function joined(
  { batch, shown, locked }: Pick<Held, 'batch' | 'shown' | 'locked'>,
  found: AnyCutPlan,
): { readonly shown: Shown; readonly locked: readonly number[] } {
  if (!shown || locked.length === 0) return { shown: shownOf(batch, found), locked: [] };
  const plan = withLocked(shown.batch.problem, shown.plan, locked, found);
  const copies = copiesOf(plan, (sheet, place) => shown.copies[locked[sheet] ?? -1]?.[place]);
  return { shown: { batch: shown.batch, plan, copies }, locked: locked.map((_, i) => i) };
}
