import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstBars } from '../../../src/cutting/bars/index';
import { changes, restOf, withLocked } from '../../../src/cutting/by-hand/index';
import { firstSheets } from '../../../src/cutting/sheets/index';
import type { CutTree, SheetPlan } from '../../../src/vocabulary/cut-plan';
import type { BarProblem, SheetProblem } from '../../../src/vocabulary/cut-problem';
import { SEED } from '../../base/seed';
import { anySheets, chance } from '../set-ups/random-plans';
import { verify } from '../verifier/index';

const bars: BarProblem = {
  kind: 'bars',
  kerf: 3,
  trim: 10,
  stock: [
    { length: 900, price: 0, count: 1, offcut: true },
    { length: 2400, price: 5, count: 4 },
  ],
  pieces: [
    { length: 800, quantity: 5 },
    { length: 500, quantity: 4 },
  ],
};
const plan = firstBars(bars);

describe('what is left when some is cut', () => {
  it('is the pieces and the stock that are not on what is locked', () => {
    expect(verify(bars, plan)).toEqual([]);
    const offcut = plan.bars.findIndex(({ stock }) => stock === 0);
    const { problem, pieces, stock } = restOf(bars, plan, [offcut]);
    // An 800 lies on the offcut, which is then used up.
    expect(problem.pieces.map(({ length, quantity }) => [length, quantity])).toEqual([
      [800, 4],
      [500, 4],
    ]);
    expect(problem.stock).toEqual([{ length: 2400, price: 5, count: 4 }]);
    expect([pieces, stock]).toEqual([[0, 1], [1]]);
  });

  it('is nothing when all is locked, and all when nothing is', () => {
    expect(
      restOf(
        bars,
        plan,
        plan.bars.map((_, i) => i),
      ).problem.pieces,
    ).toEqual([]);
    expect(restOf(bars, plan, []).problem).toEqual(bars);
  });

  it('planned anew and joined with what is locked is a plan of the whole; bound and proof are of the rest', () => {
    const locked = [0];
    const { problem } = restOf(bars, plan, locked);
    const rest = { ...firstBars(problem), bound: 5, proven: false };
    const whole = withLocked(bars, plan, locked, rest);
    expect(verify(bars, whole)).toEqual([]);
    expect(whole.bars[0]).toBe(plan.bars[0]);
    const held = bars.stock[plan.bars[0].stock].price;
    expect([whole.cost, whole.bound, whole.proven]).toEqual([held + rest.cost, held + 5, false]);
    const proven = withLocked(bars, plan, locked, { ...rest, bound: rest.cost, proven: true });
    expect([proven.bound, proven.proven]).toEqual([proven.cost, true]);
  });

  it('says that no stock is left for what only used up stock would hold, and of what is larger than any that it is', () => {
    const few: BarProblem = {
      ...bars,
      stock: bars.stock.slice(0, 1),
      pieces: [...bars.pieces, { length: 901, quantity: 1 }],
    };
    const sheets: SheetProblem = {
      kind: 'sheets',
      kerf: 3,
      trim: 5,
      stock: [{ length: 810, width: 410, price: 1, count: 1 }],
      pieces: [
        { length: 800, width: 400, quantity: 2 },
        { length: 400, width: 800, quantity: 2, turnable: true },
        { length: 400, width: 800, quantity: 1 },
      ],
    };
    const [cutBars, cutSheets] = [firstBars(few), firstSheets(sheets)];
    const rests = [
      withLocked(few, cutBars, [0], firstBars(restOf(few, cutBars, [0]).problem)),
      withLocked(sheets, cutSheets, [0], firstSheets(restOf(sheets, cutSheets, [0]).problem)),
    ];
    expect(rests.map(({ unplaced }) => unplaced.map(({ piece, why }) => [piece, why]))).toEqual([
      [
        [0, 'no stock left'],
        [1, 'no stock left'],
        [2, 'larger than any stock'],
      ],
      [
        [0, 'no stock left'],
        [1, 'no stock left'],
        [2, 'larger than any stock'],
      ],
    ]);
  });

  it(`of sheets keeps its own numbers, and comes back in those of the whole (SEED=${SEED})`, () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 31 - 1 }), (seed) => {
        const { problem, plan: all } = anySheets(seed, 3);
        const locked = [chance(seed)(3)];
        const rest = restOf(problem, all, locked);
        // The rest is cut as it was, in the numbers of its own problem.
        const own = (tree: CutTree): CutTree =>
          tree.kind === 'cut'
            ? { ...tree, parts: tree.parts.map(own) }
            : tree.kind === 'piece'
              ? { ...tree, piece: rest.pieces.indexOf(tree.piece) }
              : tree;
        const sheets = all.sheets
          .filter((_, i) => !locked.includes(i))
          .map((sheet) => ({
            ...sheet,
            tree: own(sheet.tree),
            pieces: sheet.pieces.map((one) => ({ ...one, piece: rest.pieces.indexOf(one.piece) })),
          }));
        const again: SheetPlan = { ...all, sheets, cost: 80, used: [{ stock: 0, count: 2 }] };
        expect(verify(rest.problem, again)).toEqual([]);
        const whole = withLocked(problem, all, locked, again);
        expect(verify(problem, whole)).toEqual([]);
        expect(whole.cost).toBe(all.cost);
        expect(whole.sheets[0]).toBe(all.sheets[locked[0]]);
        expect(changes(all, whole)).toEqual({ cost: 0, sheets: 0, stock: [], moved: 0, placed: 0, dropped: 0 });
      }),
      { numRuns: 30, seed: SEED },
    );
  });
});

describe('what has changed since the last plan', () => {
  const bar = (stock: number, ...pieces: readonly number[]) => ({
    stock,
    pieces: pieces.map((piece, i) => ({ piece, at: 100 * i, length: 50 })),
  });
  const of = (cost: number, ...own: readonly ReturnType<typeof bar>[]) => ({ ...plan, cost, bars: own });

  it('is told by cost, number of each stock, and pieces that lie elsewhere', () => {
    const before = of(15, bar(1, 0, 0, 1), bar(1, 2, 2), bar(1, 3));
    // The second bar comes first now, one 0 went to it, and 3 is on the offcut; a 4 is new.
    const after = of(10.5, bar(1, 2, 2, 0), bar(1, 0, 1, 4), bar(0, 3));
    expect(changes(before, after)).toEqual({
      cost: -4.5,
      sheets: 0,
      stock: [
        { stock: 0, more: 1 },
        { stock: 1, more: -1 },
      ],
      moved: 2,
      placed: 1,
      dropped: 0,
    });
    expect(changes(after, before)).toMatchObject({ cost: 4.5, placed: 0, dropped: 1 });
  });
});
