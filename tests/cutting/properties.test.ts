import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type LpSolver, loadLp } from '../../src/cut';
import type { CutProblem } from '../../src/vocabulary/cut-problem';
import { SEED } from '../base/seed';
import { anyBars, anySheets, type Wanted } from './random-problem';
import { cheapest, plansOf } from './searched';
import { verify } from './verifier';

/** Sums of prices come out this far off, at the most. */
const NOISE = 1e-6;

const either = (wanted: Wanted): fc.Arbitrary<CutProblem> => fc.oneof(anyBars(wanted), anySheets(wanted));
const PLAIN: Wanted = { kinds: 4, stocks: 3, copies: 3 };

let lp: LpSolver;
beforeAll(async () => {
  lp = await loadLp();
});

const holds = <T>(what: fc.Arbitrary<T>, numRuns: number, check: (value: T) => void): void =>
  fc.assert(fc.property(what, check), { seed: SEED, numRuns });

describe(`random cutting problems (seed ${SEED})`, () => {
  it('have plans that can be cut, from the first one on, with everything on', () => {
    holds(either({ kinds: 6, stocks: 4, copies: 3, everything: true }), 24, (problem) => {
      const plans = [...new Set(plansOf(problem, lp, 2))];
      for (const plan of plans) expect(verify(problem, plan)).toEqual([]);
      // What is once placed in full stays so.
      const whole = plans.findIndex(({ unplaced }) => unplaced.length === 0);
      if (whole >= 0) expect(plans.slice(whole).flatMap(({ unplaced }) => unplaced)).toEqual([]);
    });
  });

  it('get no dearer for being searched longer, nor do their bounds fall', () => {
    holds(either(PLAIN), 10, (problem) => {
      plansOf(problem, lp, 4).reduce((before, after) => {
        expect(after.cost).toBeLessThanOrEqual(before.cost + NOISE);
        expect(after.bound).toBeGreaterThanOrEqual(before.bound - NOISE);
        return after;
      });
    });
  });

  it('have the same plans for the same seed', () => {
    holds(fc.tuple(either(PLAIN), fc.integer({ min: 0, max: 1000 })), 6, ([problem, seed]) => {
      const [one, other] = [problem, structuredClone(problem)].map((same) => plansOf(same, lp, 2, seed));
      expect(other).toEqual(one);
    });
  });

  it('have the same bounds in whatever order pieces and stock are listed', () => {
    const shuffled = either(PLAIN).chain((problem) =>
      fc.record({
        problem: fc.constant(problem),
        pieces: fc.shuffledSubarray([...problem.pieces], { minLength: problem.pieces.length }),
        stock: fc.shuffledSubarray([...problem.stock], { minLength: problem.stock.length }),
      }),
    );
    holds(shuffled, 12, ({ problem, ...order }) => {
      const other = { ...problem, ...order } as CutProblem;
      const [a, b] = [problem, other].map((one) => cheapest(one, lp, 2));
      expect(b.bound).toBeCloseTo(a.bound, 6);
    });
  });

  /*
   * More stock can't make the best plan dearer; a search that isn't over may still find a dearer one. So this is what holds: no bound with more
   * stock exceeds the cost of any plan with less, and a proven plan with more stock costs no more than any plan with less.
   */
  it('cost no more when there is more stock', () => {
    const more = either(PLAIN).chain((problem) =>
      fc.record({
        problem: fc.constant(problem),
        price: fc.integer({ min: 0, max: 20 }),
        times: fc.constantFrom(0.5, 0.9, 1.3),
      }),
    );
    holds(more, 12, ({ problem, price, times }) => {
      const [first] = problem.stock;
      const wider = 'width' in first ? { width: first.width * times } : {};
      const extra = { ...first, length: first.length * times, ...wider, price };
      const richer = { ...problem, stock: [...problem.stock, extra] } as CutProblem;
      const [less, plan] = [problem, richer].map((one) => cheapest(one, lp, 2));
      expect(less.unplaced).toEqual([]);
      expect(plan.bound).toBeLessThanOrEqual(less.cost + NOISE);
      if (plan.proven) expect(plan.cost).toBeLessThanOrEqual(less.cost + NOISE);
    });
  });
});
