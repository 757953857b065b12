import type { AnyCutPlan, BarPlan, SheetPlan } from '../../vocabulary/cut-plan';
import type { BarProblem, CutProblem, SheetProblem } from '../../vocabulary/cut-problem';
import type { Answer } from './answer';
import { moveOnBars, type OnBar, type ToBar } from './move-bar';
import { type MoveOptions, moveOnSheets, type OnSheet, type ToSheet } from './move-sheet';

/**
 * A new plan in which one piece lies elsewhere, or why it can't lie there. On a sheet it snaps to edges and neighbours near to where it is put.
 * @throws when plan, problem and places are not of one kind
 */
export function movePiece(
  problem: SheetProblem,
  plan: SheetPlan,
  from: OnSheet,
  to: ToSheet,
  options?: MoveOptions,
): Answer<SheetPlan>;
export function movePiece(
  problem: BarProblem,
  plan: BarPlan,
  from: OnBar,
  to: ToBar,
  options?: MoveOptions,
): Answer<BarPlan>;
export function movePiece(
  problem: CutProblem,
  plan: AnyCutPlan,
  from: OnSheet | OnBar,
  to: ToSheet | ToBar,
  options?: MoveOptions,
): Answer<AnyCutPlan> {
  if (problem.kind === 'sheets' && plan.kind === 'sheets' && 'sheet' in from && 'sheet' in to)
    return moveOnSheets(problem, plan, from, to, options);
  if (problem.kind === 'bars' && plan.kind === 'bars' && 'bar' in from && 'bar' in to)
    return moveOnBars(problem, plan, from, to, options);
  throw new Error(`a plan of ${plan.kind} does not answer a problem of ${problem.kind}`);
}
