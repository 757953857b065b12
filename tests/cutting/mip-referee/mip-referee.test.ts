import fc from 'fast-check';
import type { Highs } from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type LpSolver, loadLp } from '../../../src/cut';
import type { BarPiece, BarTurn, CutProblem } from '../../../src/vocabulary/cut-problem';
import { SEED } from '../../base/seed';
import { anyBars, anySheets } from '../random-problem';
import { cheapest } from '../searched';
import { verify } from '../verifier';
import { barWays } from './bars';
import { type Asked, leastCost, loadReferee } from './cover';
import { sheetWays } from './sheets';

/** Sums of prices come out this far off, at the most. */
const NOISE = 1e-6;

let lp: LpSolver;
let highs: Highs;
beforeAll(async () => {
  [lp, highs] = await Promise.all([loadLp(), loadReferee()]);
});

/**
 * Judges plans of small random problems by integer programming over every way of cutting a bar or sheet. None may cost less than the optimum, nor
 * a bound exceed it; what is called proven is the optimum. Gives how many of a hundred were the optimum.
 */
function judged<P extends CutProblem>(
  problems: fc.Arbitrary<P>,
  ways: (problem: P) => Asked,
  count: number,
  steps: number,
): number {
  let best = 0;
  const judge = (problem: P): void => {
    const plan = cheapest(problem, lp, steps);
    const optimum = leastCost(highs, ways(problem)) ?? Number.NaN;
    expect(verify(problem, plan)).toEqual([]);
    expect(plan.unplaced).toEqual([]);
    expect(plan.cost).toBeGreaterThanOrEqual(optimum - NOISE);
    expect(plan.bound).toBeLessThanOrEqual(optimum + NOISE);
    if (plan.proven) expect(plan.cost).toBeCloseTo(optimum, 6);
    if (plan.cost <= optimum + NOISE) best += 1;
  };
  fc.assert(fc.property(problems, judge), { seed: SEED, numRuns: count });
  return (100 * best) / count;
}

describe(`small problems have their optimum (seed ${SEED})`, () => {
  it('of bars', () => {
    const reached = judged(anyBars({ kinds: 4, stocks: 3, copies: 2 }), barWays, 80, 60);
    expect(reached).toBeGreaterThanOrEqual(95);
  });

  it('of bars with slanted ends', () => {
    const reached = judged(anyBars({ kinds: 3, stocks: 2, copies: 2, slants: true }), barWays, 40, 60);
    expect(reached).toBeGreaterThanOrEqual(85);
  });

  it('of sheets, in two or three stages or any', () => {
    const reached = judged(anySheets({ kinds: 3, stocks: 3, copies: 2 }), sheetWays, 90, 4);
    expect(reached).toBeGreaterThanOrEqual(85);
  });
});

describe('the referee itself', () => {
  it('knows what a bar holds', () => {
    // 700 and 3 and 297 are a bar of 1000 at 4; a millimetre more takes the one of 1500 at 5.
    const cost = (other: number) => {
      const stock = [
        { length: 1000, price: 4, count: 1 },
        { length: 1500, price: 5 },
      ];
      const pieces = [700, other].map((length) => ({ length, quantity: 1 }));
      return leastCost(highs, barWays({ kind: 'bars', kerf: 3, trim: 0, stock, pieces }));
    };
    expect([cost(297), cost(298)]).toEqual([4, 5]);
  });

  it('knows how far mitres reach into one another', () => {
    // Two frames' rails, 400 long and 40 wide with a mitre at each end, lie head to tail in 400 + 360; with 360 + 400 + 360 a third one does.
    const cost = (length: number, turns: readonly BarTurn[]) => {
      const pieces: BarPiece[] = [
        {
          length: 400,
          quantity: 3,
          ends: [
            [1, 0],
            [-1, 0],
          ],
        },
      ];
      const section = { width: 40, thickness: 20, turns };
      const stock = [{ length, price: 1 }];
      return leastCost(highs, barWays({ kind: 'bars', kerf: 0, trim: 0, section, stock, pieces }));
    };
    expect([cost(1120, ['swung']), cost(1119, ['swung']), cost(1199, []), cost(1200, [])]).toEqual([1, 2, 2, 1]);
  });

  it.each([
    // Four of 3 × 2 round a hole fill 5 × 5, but nothing can be cut off them from edge to edge.
    ['a pinwheel', '3×2 3×2 2×3 2×3 1×1', undefined, false, 2],
    ['a row of one height', '3×2 2×2 5×3', 2, false, 1],
    ['a row of two heights', '3×2 2×1 5×3', 2, false, 2],
    ['a row of two heights, cuts to size free', '3×2 2×1 5×3', 2, true, 1],
    ['a row of two heights in three stages', '3×2 2×1 5×3', 3, false, 1],
    ['two on one another in a row', '3×2 2×1 2×1 5×3', 2, true, 2],
    ['two on one another in a row, in three stages', '3×2 2×1 2×1 5×3', 3, false, 1],
  ])('knows how many sheets of 5 × 5 it takes: %s', (_, sizes, stages, trimsFree, sheets) => {
    const pieces = sizes.split(' ').map((size) => {
      const [length, width] = size.split('×').map(Number);
      return { length, width, quantity: 1 };
    });
    const stock = [{ length: 5, width: 5, price: 1 }];
    const asked = sheetWays({ kind: 'sheets', kerf: 0, trim: 0, stages, trimsFree, stock, pieces });
    expect(leastCost(highs, asked)).toBeCloseTo(sheets);
  });
});
