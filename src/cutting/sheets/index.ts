/*
 * Sheets: quick heuristics, and a search by ruin and recreate over guillotine cut trees.
 */
import type { SheetPlan } from '../../vocabulary/cut-plan';
import type { SheetProblem } from '../../vocabulary/cut-problem';
import { boundOf } from './bound';
import { firstCells } from './first';
import { scaled } from './scaled';
import { planOf } from './search';

export { boundOf, leastCost } from './bound';
export type { Cell, Cells, SheetCells } from './cell';
export { firstCells } from './first';
export { isBetter, type Merits, meritsOf } from './merits';
export { type RuinMeans, type RuinSearch, startRuin } from './ruin';
export { type Scaled, scaled } from './scaled';
export { type SheetMeans, startSheets } from './search';
export { toPlan } from './to-plan';

/** A plan at once: the best of several constructive heuristics. */
export function firstSheets(problem: SheetProblem): SheetPlan {
  const to = scaled(problem);
  return planOf(to, firstCells(to), boundOf(to));
}
