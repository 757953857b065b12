/*
 * Whether a plan is what it says it is. It shares nothing with the search but the words for problems and plans, and asks nothing of how the
 * plan came about.
 */

import type { AnyCutPlan } from '../../../src/vocabulary/cut-plan';
import type { CutProblem } from '../../../src/vocabulary/cut-problem';
import { barFaults, barHolds } from './bars';
import { accountFaults, numbersIn, strangers } from './shared';
import { sheetFaults, sheetHolds } from './sheets';

/** Everything wrong with a plan, in words; empty: it can be cut as it stands. */
export function verify(problem: CutProblem, plan: AnyCutPlan): readonly string[] {
  const cuts = plan.kind === 'bars' ? plan.bars : plan.sheets;
  const unsound = [...numbersIn(plan), ...strangers(problem, cuts, plan)];
  if (unsound.length > 0) return unsound;
  if (problem.kind === 'bars' && plan.kind === 'bars')
    return [...accountFaults(problem, cuts, plan, barHolds(problem)), ...barFaults(problem, plan)];
  if (problem.kind === 'sheets' && plan.kind === 'sheets')
    return [...accountFaults(problem, cuts, plan, sheetHolds(problem)), ...sheetFaults(problem, plan)];
  return [`a plan of ${plan.kind} for a problem of ${problem.kind}`];
}
