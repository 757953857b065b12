import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type LpSolver, loadLp } from '../../../src/cutting/lp';
import { attainable } from '../../../src/cutting/patterns/attainable';
import { dualFeasible } from '../../../src/cutting/patterns/dual-feasible';
import { lpBound } from '../../../src/cutting/patterns/lp-bound';
import { areaBound, weightBound } from '../../../src/cutting/patterns/quick-bound';
import { type Scaled, scaled } from '../../../src/cutting/sheets/scaled';
import type { SheetProblem } from '../../../src/vocabulary/cut-problem';
import { SEED } from '../../base/seed';
import { anyCutUp } from './random-sheets';

let lp: LpSolver;
beforeAll(async () => {
  lp = await loadLp();
});

/** Each bound by itself, as far as it goes. */
function boundsOf(to: Scaled): Record<'area' | 'weights' | 'lp', number> {
  const weights = { bound: 0, cost: Number.POSITIVE_INFINITY };
  for (const _ of weightBound(to, weights));
  const relaxed = { bound: 0, cost: Number.POSITIVE_INFINITY, patterns: [] };
  for (const _ of lpBound(to, lp, relaxed));
  return { area: areaBound(to), weights: weights.bound, lp: relaxed.bound };
}

/** Pieces that are known to come from so many sheets, for that is how they were made: and what those cost. */
const anyKnown: fc.Arbitrary<{ problem: SheetProblem; cost: number }> = fc
  .array(
    fc.record({
      sides: fc.tuple(fc.integer({ min: 12, max: 60 }), fc.integer({ min: 12, max: 60 })),
      price: fc.integer({ min: 1, max: 30 }),
      used: fc.integer({ min: 0, max: 3 }),
      limited: fc.boolean(),
    }),
    { minLength: 1, maxLength: 3 },
  )
  .chain((stock) =>
    fc.record({
      stock: fc.constant(stock),
      cut: fc.tuple(
        ...stock.map(({ sides: [l, w], used }) => fc.array(anyCutUp(l, w), { minLength: used, maxLength: used })),
      ),
      turnable: fc.boolean(),
      shrunk: fc.boolean(),
    }),
  )
  .map(({ stock, cut, turnable, shrunk }) => ({
    problem: {
      kind: 'sheets',
      kerf: 0,
      trim: 0,
      stock: stock.map(({ sides: [length, width], price, used, limited }) => ({
        length,
        width,
        price,
        ...(limited ? { count: used } : {}),
      })),
      pieces: cut.flat(2).map(([l, w], i) => ({
        length: shrunk && i % 3 === 0 ? l - 1 : l,
        width: w,
        quantity: 1,
        ...(turnable && i % 2 === 0 ? { turnable } : {}),
      })),
    },
    cost: stock.reduce((sum, { price, used }) => sum + price * used, 0),
  }));

describe(`bounds (seed ${SEED})`, () => {
  it('never lie above what pieces cost that were cut from known sheets', () => {
    let met = 0;
    fc.assert(
      fc.property(anyKnown, ({ problem, cost }) => {
        const found = boundsOf(scaled(problem));
        for (const [name, bound] of Object.entries(found)) expect(bound, name).toBeLessThanOrEqual(cost + 1e-6);
        if (Math.max(...Object.values(found)) >= cost - 1e-6) met += 1;
      }),
      { seed: SEED, numRuns: 10 },
    );
    // And are not merely low: often they say exactly that.
    expect(met).toBeGreaterThan(0);
  });

  const of = (pieces: SheetProblem['pieces'], stock: SheetProblem['stock']): Scaled =>
    scaled({ kind: 'sheets', kerf: 0, trim: 0, stock, pieces });

  it('pieces of more than half both sides need a sheet each, whatever their area', () => {
    const bounds = boundsOf(of([{ length: 51, width: 61, quantity: 7 }], [{ length: 100, width: 120, price: 5 }]));
    // 7 × 51 × 61 = 21,777 of 12,000: two sheets by area.
    expect(bounds).toEqual({ area: 10, weights: 35, lp: 35 });
  });

  it('the relaxation knows what goes beside what', () => {
    // Beside one 60 × 60 lie three of 50 × 40 and nothing else of use: four sheets hold the first two rows with 400 to spare on each. The last
    // piece, 20 × 70, lies on none of them. By area, 39,800, four would do.
    const bounds = boundsOf(
      of(
        [
          { length: 60, width: 60, quantity: 4 },
          { length: 50, width: 40, quantity: 12, turnable: true },
          { length: 70, width: 20, quantity: 1, turnable: true },
        ],
        [{ length: 100, width: 100, price: 1 }],
      ),
    );
    expect(bounds.area).toBe(4);
    expect(bounds.lp).toBe(5);
  });

  it('limited stock: a cheap offcut helps once', () => {
    const bounds = boundsOf(
      of(
        [{ length: 60, width: 60, quantity: 3 }],
        [
          { length: 60, width: 60, price: 1, count: 1 },
          { length: 100, width: 100, price: 10 },
        ],
      ),
    );
    expect(bounds.lp).toBe(21);
  });
});

describe(`dual feasible functions (seed ${SEED})`, () => {
  it('what fits side by side weighs no more than 1', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 200 }),
        fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 1, maxLength: 8 }),
        (capacity, drawn) => {
          const sides: number[] = [];
          let room = capacity;
          for (const side of drawn) if (side <= room) { sides.push(side); room -= side; } // biome-ignore format: one line
          for (const [n, f] of dualFeasible(capacity, drawn, 12).entries())
            expect(
              sides.reduce((sum, s) => sum + f(s), 0),
              `function ${n}`,
            ).toBeLessThanOrEqual(1 + 1e-9);
        },
      ),
      { seed: SEED, numRuns: 300 },
    );
  });
});

describe('sums of prices', () => {
  const sheet = (price: number, count: number) => ({ length: 1, width: 1, price, count, members: [] });

  it('the least that is not below', () => {
    const sheets = [sheet(40.17, 9), sheet(50.66, 9)];
    expect(attainable({ sheets }, 0)).toBe(0);
    expect(attainable({ sheets }, 1)).toBe(40.17);
    expect(attainable({ sheets }, 6 * 40.17)).toBeCloseTo(241.02, 9);
    // 242.81 = 40.17 + 4 × 50.66; the next is 251.51 = 5 × 40.17 + 50.66.
    expect(attainable({ sheets }, 241.1)).toBeCloseTo(242.81, 9);
    expect(attainable({ sheets }, 242.9)).toBeCloseTo(251.51, 9);
  });

  it('as many as there are', () => {
    const sheets = [sheet(3, 1), sheet(10, 2)];
    expect(attainable({ sheets }, 4)).toBe(10);
    expect(attainable({ sheets }, 11)).toBe(13);
    expect(attainable({ sheets }, 23.5)).toBe(Number.POSITIVE_INFINITY);
  });
});
