import { cutsOf } from '../../src/cut';
import type { AnyCutPlan } from '../../src/vocabulary/cut-plan';
import type { BarCuts, SheetCuts } from '../../src/vocabulary/set-up';
import type { Shown } from './held';

/** The cuts of one sheet or bar: only of the one that is looked at, for there may be hundreds. */
export function cutsAt(
  { batch, plan }: { readonly batch: Pick<Shown['batch'], 'problem'>; readonly plan: AnyCutPlan },
  index: number,
): SheetCuts | BarCuts | undefined {
  const alone = (one: AnyCutPlan): SheetCuts | BarCuts | undefined => cutsOf(batch.problem, one)[0];
  if (plan.kind === 'sheets') return alone({ ...plan, sheets: plan.sheets.slice(index, index + 1) });
  return alone({ ...plan, bars: plan.bars.slice(index, index + 1) });
}
