import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { firstBars, startBars } from '../../../src/cutting/bars';
import { type LpSolver, loadLp } from '../../../src/cutting/lp';
import type { BarPlan } from '../../../src/vocabulary/cut-plan';
import type { BarProblem } from '../../../src/vocabulary/cut-problem';
import { SEED } from '../../base/seed';
import { anyBars } from './any-bars';
import { leastCost } from './brute';
import { faultsOf } from './check';

let lp: LpSolver;
beforeAll(async () => {
  lp = await loadLp();
});

/** The plan after so many steps, or at the end. */
function searched(problem: BarProblem, steps = 3000, solver: LpSolver | undefined = lp): BarPlan {
  const search = startBars(problem, { seed: 1, lp: solver });
  for (let n = 0; n < steps && search.step(); n++);
  return search.best;
}

/** The problem without what a plan doesn't place, for these reasons. */
const without = (problem: BarProblem, { unplaced }: BarPlan, reasons: readonly string[]): BarProblem => ({
  ...problem,
  pieces: problem.pieces.map((piece, i) => {
    const lacking = unplaced.filter((u) => u.piece === i && reasons.includes(u.why));
    return { ...piece, quantity: piece.quantity - lacking.reduce((sum, u) => sum + u.quantity, 0) };
  }),
});

const MISFITS = ['larger than any stock', 'its set fits no stock'];

describe(`random bars (seed ${SEED})`, () => {
  for (const [ends, slanted, runs] of [
    ['square', false, 120],
    ['slanted', true, 80],
  ] as const)
    it(`of a handful of pieces with ${ends} ends: as cheap as the cheapest of all ways, and nothing wrong`, () => {
      fc.assert(
        fc.property(anyBars(4, 2, slanted), (problem) => {
          const plan = searched(problem);
          expect(faultsOf(problem, plan)).toEqual([]);
          const least = leastCost(without(problem, plan, [...MISFITS, 'no stock left']));
          expect(plan.cost).toBeCloseTo(least, 6);
          expect(plan.bound).toBeLessThanOrEqual(least + 1e-9);
          const fitting = without(problem, plan, MISFITS);
          if (plan.unplaced.some(({ why }) => why === 'no stock left')) expect(leastCost(fitting)).toBe(Infinity);
        }),
        { seed: SEED, numRuns: runs, endOnFailure: true },
      );
    });

  it('of many pieces, with anything on: nothing is wrong, at first, on the way and without a solver', () => {
    fc.assert(
      fc.property(anyBars(12, 9, true), (problem) => {
        const first = firstBars(problem);
        const later = searched(problem, 60);
        for (const plan of [first, later, searched(problem, 10, undefined)])
          expect(faultsOf(problem, plan)).toEqual([]);
        if (first.unplaced.length === 0) expect(later.cost).toBeLessThanOrEqual(first.cost + 1e-9);
      }),
      { seed: SEED, numRuns: 40, endOnFailure: true },
    );
  });

  it('in another order have the same bound; and the same problem has the same plan', () => {
    fc.assert(
      fc.property(anyBars(8, 6, false), (problem) => {
        const turned = { ...problem, pieces: [...problem.pieces].reverse(), stock: [...problem.stock].reverse() };
        const plan = searched(problem, 300);
        expect(searched(turned, 300).bound).toBe(plan.bound);
        expect(searched(problem, 300)).toEqual(plan);
      }),
      { seed: SEED, numRuns: 30, endOnFailure: true },
    );
  });
});
