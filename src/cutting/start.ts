import type { AnyCutPlan, CutSearch } from '../vocabulary/cut-plan';
import type { CutProblem } from '../vocabulary/cut-problem';
import { firstBars, startBars } from './bars/index';
import type { LpSolver } from './lp';
import { firstSheets, startSheets } from './sheets/index';

export interface CutMeans {
  /** Another seed goes another way; the same goes the same. */
  readonly seed: number;
  /** Without it only quick ways and bounds are used. */
  readonly lp?: LpSolver;
}

/** A whole plan at once, by quick ways. Of a problem that was checked by the reader; throws on none. */
export const firstPlan = (problem: CutProblem): AnyCutPlan =>
  problem.kind === 'bars' ? firstBars(problem) : firstSheets(problem);

/** A search for the best plan of a problem that was checked by the reader. */
export const startCutting = (problem: CutProblem, means: CutMeans): CutSearch =>
  problem.kind === 'bars' ? startBars(problem, means) : startSheets(problem, means);
