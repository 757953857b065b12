import { type LpSolver, startCutting } from '../../src/cut';
import type { AnyCutPlan } from '../../src/vocabulary/cut-plan';
import type { CutProblem } from '../../src/vocabulary/cut-problem';

/** The plans that a search has at first and after each step, until nothing is left to better or so many steps are done. */
export function plansOf(problem: CutProblem, lp: LpSolver, steps: number, seed = 1): readonly AnyCutPlan[] {
  const search = startCutting(problem, { seed, lp });
  const plans = [search.best];
  for (let more = true; more && plans.length <= steps; ) {
    more = search.step();
    plans.push(search.best);
  }
  return plans;
}

/** The plan after so many steps, or as soon as its cost is proven. */
export function cheapest(problem: CutProblem, lp: LpSolver, steps: number): AnyCutPlan {
  const search = startCutting(problem, { seed: 1, lp });
  let left = steps;
  while (left > 0 && !search.best.proven && search.step()) left -= 1;
  return search.best;
}
