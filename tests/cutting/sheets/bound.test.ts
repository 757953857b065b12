import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundOf, leastCost } from '../../../src/cutting/sheets/bound';
import { mixesOf } from '../../../src/cutting/sheets/mixes';
import { scaled } from '../../../src/cutting/sheets/scaled';
import { SEED } from '../../base/seed';
import { piece, sheetProblem } from './problems';

const bound = (...of: Parameters<typeof sheetProblem>): number => boundOf(scaled(sheetProblem(...of)));

describe('the bound by area and by number', () => {
  it('is a sum of prices', () => {
    // 7200 of 6000 each.
    expect(bound([piece(50, 48, 3)])).toBe(20);
    // Two small ones of 4000 for 6 hold them as well.
    const stock = [
      { length: 100, width: 60, price: 10 },
      { length: 80, width: 50, price: 6 },
    ];
    expect(bound([piece(50, 48, 3)], { stock })).toBe(12);
    expect(bound([piece(50, 48, 3)], { stock: [stock[0], { ...stock[1], count: 1 }] })).toBe(16);
  });

  it('knows pieces of which no two share a sheet', () => {
    expect(bound([piece(51, 31, 3)])).toBe(30);
    expect(bound([piece(50, 31, 3)])).toBe(10);
    // Turned, two lie beside one another.
    expect(bound([piece(51, 31, 3, { turnable: true })])).toBe(10);
    expect(bound([piece(58, 51, 3, { turnable: true })])).toBe(30);
  });

  it('is infinite where there is not stock enough, and less for less', () => {
    const to = scaled(sheetProblem([piece(100, 60, 3)], { stock: [{ length: 100, width: 60, price: 10, count: 2 }] }));
    expect(boundOf(to)).toBe(Number.POSITIVE_INFINITY);
    expect(boundOf(to, [1])).toBe(20);
    expect(boundOf(to, [3])).toBe(0);
  });

  const anySheets = fc.array(
    fc.record({
      length: fc.integer({ min: 1, max: 9 }),
      width: fc.integer({ min: 1, max: 9 }),
      price: fc.integer({ min: 0, max: 12 }),
      count: fc.integer({ min: 0, max: 3 }),
      members: fc.constant([]),
    }),
    { minLength: 1, maxLength: 4 },
  );
  type Sheets = Parameters<typeof leastCost>[0]['sheets'];
  /** Every mix there is. */
  const every = (sheets: Sheets): number[][] =>
    sheets.reduce<number[][]>(
      (mixes, { count }) => mixes.flatMap((mix) => Array.from({ length: count + 1 }, (_, n) => [...mix, n])),
      [[]],
    );
  const sums = (sheets: Sheets, mix: ArrayLike<number>): { cost: number; area: number; number: number } => ({
    cost: sheets.reduce((sum, { price }, i) => sum + mix[i] * price, 0),
    area: sheets.reduce((sum, { length, width }, i) => sum + mix[i] * length * width, 0),
    number: sheets.reduce((sum, _, i) => sum + mix[i], 0),
  });

  it(`is the least of all mixes that do (seed ${SEED})`, () => {
    const demand = fc.record({
      area: fc.integer({ min: 0, max: 200 }),
      number: fc.integer({ min: 0, max: 6 }),
      cost: fc.integer({ min: 0, max: 30 }),
    });
    fc.assert(
      fc.property(anySheets, demand, (sheets, wanted) => {
        const least = every(sheets)
          .map((mix) => sums(sheets, mix))
          .filter(({ area, number, cost }) => area >= wanted.area && number >= wanted.number && cost >= wanted.cost)
          .reduce((min, { cost }) => Math.min(min, cost), Number.POSITIVE_INFINITY);
        expect(leastCost({ sheets }, wanted)).toBe(least);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it(`mixes within a budget can't be added to, and are all there are (seed ${SEED})`, () => {
    fc.assert(
      fc.property(
        anySheets,
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 100 }),
        (sheets, budget, area) => {
          const to = { ...scaled(sheetProblem([piece(10, 10)])), sheets };
          const full = every(sheets).filter((mix) => {
            const { cost, area: covered } = sums(sheets, mix);
            const more = sheets.some(({ price, count }, i) => mix[i] < count && cost + price <= budget);
            return cost <= budget && covered >= area && !more;
          });
          const found = mixesOf(to, budget, area).map((caps) => [...caps]);
          expect(found.length).toBe(Math.min(12, full.length));
          for (const mix of found) expect(full).toContainEqual(mix);
        },
      ),
      { seed: SEED, numRuns: 100 },
    );
  });
});
