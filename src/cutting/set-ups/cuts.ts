import type { AnyCutPlan, BarPlan, SheetPlan } from '../../vocabulary/cut-plan';
import type { BarProblem, CutProblem, SheetProblem } from '../../vocabulary/cut-problem';
import type { BarCuts, SheetCuts } from '../../vocabulary/set-up';
import { cutsOfBar } from './bar-cuts';
import { cutsOfSheet } from './sheet-cuts';

/**
 * For each sheet or bar of a plan its cuts in the order of the work, with what stands against the fence.
 * @throws when the plan is of the other kind than the problem
 */
export function cutsOf(problem: SheetProblem, plan: SheetPlan): readonly SheetCuts[];
export function cutsOf(problem: BarProblem, plan: BarPlan): readonly BarCuts[];
export function cutsOf(problem: CutProblem, plan: AnyCutPlan): readonly (SheetCuts | BarCuts)[];
export function cutsOf(problem: CutProblem, plan: AnyCutPlan): readonly (SheetCuts | BarCuts)[] {
  if (problem.kind === 'sheets' && plan.kind === 'sheets')
    return plan.sheets.map((sheet) => cutsOfSheet(problem, sheet));
  if (problem.kind === 'bars' && plan.kind === 'bars') return plan.bars.map((bar) => cutsOfBar(problem, bar));
  throw new Error(`a plan of ${plan.kind} does not answer a problem of ${problem.kind}`);
}
