import { beforeAll, describe, expect, it } from 'vitest';
import { firstBars, startBars } from '../../../src/cutting/bars';
import { type LpSolver, loadLp } from '../../../src/cutting/lp';
import type { BarPlan } from '../../../src/vocabulary/cut-plan';
import type { BarProblem } from '../../../src/vocabulary/cut-problem';
import { faultsOf } from './check';

let lp: LpSolver;
beforeAll(async () => {
  lp = await loadLp();
});

function cut(problem: BarProblem): BarPlan {
  const search = startBars(problem, { seed: 1, lp });
  while (search.step());
  expect(faultsOf(problem, search.best)).toEqual([]);
  return search.best;
}

const bars = (rest: Partial<BarProblem>): BarProblem => ({
  kind: 'bars',
  kerf: 0,
  trim: 0,
  stock: [{ length: 1000, price: 1 }],
  pieces: [],
  ...rest,
});

describe('bars worked by hand', () => {
  it('kerf lies between pieces only: four times 247.75 and three kerfs of 3 are a metre, a hair more are not', () => {
    expect(cut(bars({ kerf: 3, pieces: [{ length: 247.75, quantity: 4 }] })).cost).toBe(1);
    expect(cut(bars({ kerf: 3, pieces: [{ length: 247.76, quantity: 4 }] })).cost).toBe(2);
  });

  it('both ends are trimmed, by the stock’s own trim where it has one', () => {
    const pieces = [{ length: 990, quantity: 1 }];
    expect(cut(bars({ trim: 5, pieces })).bars[0].pieces[0].at).toBe(5);
    expect(cut(bars({ trim: 6, pieces })).unplaced).toEqual([{ piece: 0, quantity: 1, why: 'larger than any stock' }]);
    expect(cut(bars({ trim: 6, stock: [{ length: 1000, price: 1, trim: 0 }], pieces })).unplaced).toEqual([]);
  });

  it('two halves and three thirds: as many bars as the sum of lengths needs, and that is proven', () => {
    const plan = firstBars(
      bars({
        pieces: [
          { length: 500, quantity: 2 },
          { length: 333, quantity: 3 },
        ],
      }),
    );
    expect([plan.cost, plan.bound, plan.proven]).toEqual([2, 2, true]);
  });

  it('first fit decreasing wastes a bar where a better choice fills them (six each of 41, 34 and 25)', () => {
    // 41 + 34 + 25 = 100; first fit lays 41 + 41 and has no use for the 18 left.
    const plan = cut(
      bars({ stock: [{ length: 100, price: 1 }], pieces: [41, 34, 25].map((length) => ({ length, quantity: 6 })) }),
    );
    expect([plan.cost, plan.proven]).toEqual([6, true]);
  });

  it('takes the cheaper of two lengths, and an offcut that costs nothing first', () => {
    const stock = [
      { length: 2400, price: 5 },
      { length: 3600, price: 7 },
      { length: 1150, price: 0, count: 1, offcut: true as const },
    ];
    const plan = cut(bars({ stock, pieces: [{ length: 1150, quantity: 4 }] }));
    expect(plan.used).toEqual([
      { stock: 1, count: 1 },
      { stock: 2, count: 1 },
    ]);
    expect([plan.cost, plan.proven]).toEqual([7, true]);
  });

  it('costs are rounded up to what bars can cost together: 5 and 7 make 10, 12, 14, never 11', () => {
    const stock = [
      { length: 1000, price: 5 },
      { length: 1500, price: 7 },
    ];
    // 2.2 m: one bar of 1 m and one of 1.5 m; by length alone 7 · 2.2 / 1.5 = 10.27, and 10 buys 2 m only.
    const plan = firstBars(
      bars({
        stock,
        pieces: [
          { length: 1400, quantity: 1 },
          { length: 800, quantity: 1 },
        ],
      }),
    );
    expect([plan.cost, plan.bound]).toEqual([12, 12]);
  });

  it('what limited stock cannot hold is said; what is placed is as long as can be', () => {
    const plan = cut(
      bars({
        stock: [{ length: 1000, price: 1, count: 1 }],
        pieces: [
          { length: 600, quantity: 1 },
          { length: 500, quantity: 2 },
        ],
      }),
    );
    expect(plan.unplaced).toEqual([{ piece: 0, quantity: 1, why: 'no stock left' }]);
    expect([plan.cost, plan.bound]).toEqual([1, 1]);
  });

  it('a set comes from one bar; one that fits none is said', () => {
    const pieces = [
      { length: 400, quantity: 2, together: 'door' },
      { length: 600, quantity: 2 },
    ];
    expect(cut(bars({ pieces })).cost).toBe(3);
    const large = cut(bars({ pieces: [{ length: 400, quantity: 3, together: 'door' }] }));
    expect(large.unplaced).toEqual([{ piece: 0, quantity: 3, why: 'its set fits no stock' }]);
  });

  it('gathers what is left over into one bar', () => {
    // Three bars at least (2.05 m). 1000 of 400 + 350 + 250 and of 300 + 300 + 400 leave 950 of the third.
    const pieces = [400, 350, 250, 300, 300, 400, 50].map((length) => ({ length, quantity: 1 }));
    const plan = cut(bars({ pieces }));
    expect(plan.cost).toBe(3);
    expect(Math.max(...plan.bars.map(({ offcut }) => offcut?.length ?? 0))).toBe(950);
  });

  it('nothing to cut, and nothing to cut from', () => {
    expect(cut(bars({}))).toMatchObject({ cost: 0, bound: 0, proven: true, bars: [], unplaced: [] });
    expect(cut(bars({ stock: [], pieces: [{ length: 1, quantity: 2 }] })).unplaced).toHaveLength(1);
  });
});

describe('slanted ends, worked by hand', () => {
  const section = { width: 50, thickness: 20, turns: ['swung'] as const };
  /** Rails of a frame mitred at both ends, the long side at u = 0: 45° planes. */
  const rail = (length: number, quantity: number) => ({
    length,
    quantity,
    ends: [
      [1, 0],
      [-1, 0],
    ] as const,
  });

  it('rails of a mitred frame nest head to tail, each one section’s width less a slanted kerf further', () => {
    // Four of 500: 2000, three gaps of 3·√2 − 50 each: 1862.73.
    const problem = bars({ kerf: 3, section, stock: [{ length: 1862.8, price: 1 }], pieces: [rail(500, 4)] });
    const plan = cut(problem);
    expect([plan.cost, plan.proven]).toEqual([1, true]);
    const [a, b, c, d] = plan.bars[0].pieces;
    expect(b.at - a.at).toBeCloseTo(450 + 3 * Math.SQRT2, 9);
    expect(d.at + d.length).toBeCloseTo(2000 + 3 * (3 * Math.SQRT2 - 50), 9);
    expect([a.turn, b.turn, c.turn, d.turn].filter((turn) => turn === 'swung')).toHaveLength(2);
  });

  it('without being turned they lie point to point; parallel ends share a cut even so', () => {
    const unturned = { ...section, turns: [] };
    const lying = bars({ kerf: 3, section: unturned, stock: [{ length: 1900, price: 1 }], pieces: [rail(500, 4)] });
    expect(cut(lying).cost).toBe(2);
    // A skirting: outside bevel on the left serves the next one's inside bevel on the right.
    const skirting = {
      length: 500,
      quantity: 4,
      ends: [
        [0, 1],
        [0, 1],
      ] as const,
    };
    const plan = cut(bars({ kerf: 3, section: unturned, stock: [{ length: 1952.8, price: 1 }], pieces: [skirting] }));
    expect(plan.cost).toBe(1);
    expect(plan.bars[0].pieces[1].at - plan.bars[0].pieces[0].at).toBeCloseTo(480 + 3 * Math.SQRT2, 9);
  });
});
