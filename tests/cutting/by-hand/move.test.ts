import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { movePiece } from '../../../src/cutting/by-hand/index';
import type { BarPlan, PlacedOnSheet, SheetPlan } from '../../../src/vocabulary/cut-plan';
import type { BarProblem, SheetProblem } from '../../../src/vocabulary/cut-problem';
import { SEED } from '../../base/seed';
import { anySheets, chance } from '../set-ups/random-plans';
import { verify } from '../verifier/index';
import { planned } from './planned';

/** Sheets of 1000 × 500, no trim, kerf 4. */
const problem: SheetProblem = {
  kind: 'sheets',
  kerf: 4,
  trim: 0,
  stages: 2,
  stock: [{ length: 1000, width: 500, price: 10, count: 2 }],
  pieces: [
    { name: 'side', length: 400, width: 248, quantity: 2 },
    { name: 'shelf', length: 300, width: 200, quantity: 2, turnable: true },
  ],
};
const on = (piece: number, x: number, y: number, length: number, width: number, turned = false): PlacedOnSheet => ({
  kind: 'piece',
  x,
  y,
  length,
  width,
  piece,
  turned,
});
/** Two sides one above the other (248 + 4 + 248 = 500) with a shelf beside the lower one; the other shelf on a sheet of its own. */
const plan: SheetPlan = planned(problem, [
  [on(0, 0, 0, 400, 248), on(0, 0, 252, 400, 248), on(1, 404, 0, 300, 200)],
  [on(1, 0, 0, 300, 200)],
]);
const SHELF = { sheet: 1, index: 0 };

describe('a piece moved by hand on sheets', () => {
  it('snaps to its neighbours by a kerf, and an empty sheet is put back', () => {
    expect(verify(problem, plan)).toEqual([]);
    const { plan: after } = movePiece(problem, plan, SHELF, { sheet: 0, x: 399, y: 255, turned: false });
    expect(after && verify(problem, after)).toEqual([]);
    expect(after?.sheets).toHaveLength(1);
    expect(after?.sheets[0].pieces).toContainEqual(on(1, 404, 252, 300, 200));
    expect([after?.cost, after?.used]).toEqual([10, [{ stock: 0, count: 1 }]]);
  });

  it('lies just where it is put where nothing is near', () => {
    const { plan: after } = movePiece(problem, plan, SHELF, { sheet: 1, x: 350, y: 0, turned: true });
    expect(after?.sheets[1].pieces).toEqual([on(1, 350, 0, 200, 300, true)]);
    expect(after && verify(problem, after)).toEqual([]);
  });

  it.each([
    ['overlap', { sheet: 0, x: 300, y: 260, turned: false }, /overlaps side/],
    ['off the stock', { sheet: 0, x: 800, y: 260, turned: false }, /shelf reaches beyond/],
    ['too many stages', { sheet: 0, x: 690, y: 296, turned: false }, /3 stages, 2 allowed/],
    ['no stock left', { sheet: 2, x: 0, y: 0, turned: false, stock: 0 }, /no such sheet/],
  ] as const)('is refused: %s', (why, to, words) => {
    const { refused } = movePiece(problem, plan, SHELF, to);
    expect(refused?.why).toBe(why);
    expect(refused?.words).toMatch(words);
  });

  it('is refused where it would lie across the grain, on a sheet that is cut, or away from its set', () => {
    const side = { sheet: 0, index: 0 };
    const to = { sheet: 1, x: 304, y: 0, turned: false };
    expect(movePiece(problem, plan, side, { ...to, turned: true }).refused?.why).toBe('grain');
    expect(movePiece(problem, plan, side, to, { locked: [1] }).refused?.why).toBe('cut already');
    const set = { ...problem, pieces: problem.pieces.map((piece) => ({ ...piece, together: 'one' })) };
    expect(movePiece(set, plan, side, to).refused?.why).toBe('set');
    expect(movePiece(problem, plan, side, to).plan).toBeDefined();
  });

  it('is refused where no cut goes through, and where one would be too long', () => {
    // Four about a fifth: 196 + 4 + 100 = 300.
    const wheel: SheetProblem = {
      ...problem,
      stages: undefined,
      stock: [{ length: 300, width: 200, price: 1 }],
      pieces: [
        { name: 'long', length: 196, width: 60, quantity: 2, turnable: true },
        { name: 'tall', length: 100, width: 136, quantity: 2, turnable: true },
      ],
    };
    const three = [on(0, 0, 0, 196, 60), on(1, 200, 0, 100, 136), on(0, 104, 140, 196, 60)];
    const last = planned(wheel, [three, [on(1, 0, 0, 100, 136)]]);
    const place = { sheet: 0, x: 0, y: 64, turned: false };
    expect(movePiece(wheel, last, SHELF, place).refused).toMatchObject({ why: 'no cut through' });
    const long = movePiece({ ...problem, longestCut: 450 }, plan, SHELF, { sheet: 0, x: 404, y: 252, turned: false });
    expect(long.refused).toMatchObject({ why: 'too long a cut' });
  });

  it(`gives a plan that can be cut, or says why not (SEED=${SEED})`, () => {
    let moved = 0;
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 31 - 1 }), (seed) => {
        const some = anySheets(seed, 2);
        const pick = chance(seed);
        const sheet = pick(2);
        const from = { sheet, index: pick(some.plan.sheets[sheet].pieces.length) };
        const to = { sheet: pick(2), x: 5 * pick(480), y: 5 * pick(240), turned: pick(2) === 1 };
        const answer = movePiece(some.problem, some.plan, from, to, { reach: 60 });
        if (answer.refused) expect(answer.refused.words).not.toBe('');
        else {
          moved++;
          expect(verify(some.problem, answer.plan)).toEqual([]);
        }
      }),
      { numRuns: 60, seed: SEED },
    );
    expect(moved).toBeGreaterThan(0);
  });
});

describe('a piece moved by hand on bars', () => {
  const bars: BarProblem = {
    kind: 'bars',
    kerf: 3,
    trim: 10,
    section: { width: 30, thickness: 15, turns: ['rolled'] },
    stock: [{ length: 1000, price: 5 }],
    pieces: [
      {
        name: 'rail',
        length: 600,
        quantity: 1,
        ends: [
          [1, 0],
          [-1, 0],
        ],
      },
      {
        name: 'post',
        length: 400,
        quantity: 2,
        ends: [
          [1, 0],
          [-1, 0],
        ],
      },
    ],
  };
  /** A kerf of 3 at 45°, along the bar. */
  const K = 3 * Math.SQRT2;
  /** The rail alone, 10 to 610, a kerf, and 375.76 kept to 990; the posts one behind the other, none of them turned. */
  const start: BarPlan = {
    kind: 'bars',
    cost: 10,
    bound: 5,
    proven: false,
    used: [{ stock: 0, count: 2 }],
    unplaced: [],
    bars: [
      { stock: 0, pieces: [{ piece: 0, at: 10, length: 600 }], offcut: { at: 610 + K, length: 380 - K } },
      { stock: 0, pieces: [0, 1].map((i) => ({ piece: 1, at: 10 + i * (400 + K), length: 400 })) },
    ],
  };
  const [rail, posts] = [0, 1];

  it('goes to another bar, as near as the ends allow, and the rest closes up', () => {
    expect(verify(bars, start)).toEqual([]);
    // Of 980 they take 600 + 400 − 30 + 3·√2 = 974.24 when they nest.
    const nested = movePiece(bars, start, { bar: posts, index: 0 }, { bar: rail, index: 1, turn: 'rolled' });
    expect(nested.plan && verify(bars, nested.plan)).toEqual([]);
    expect(nested.plan?.bars[rail].pieces[1].at).toBeCloseTo(610 - 30 + K, 6);
    expect(nested.plan?.bars[posts].pieces.map(({ at }) => at)).toEqual([10]);
    const straight = movePiece(bars, start, { bar: posts, index: 0 }, { bar: rail, index: 1, turn: null });
    // Straight they take 1000 + 3·√2 = 1004.24 of 980.
    expect(straight.refused).toEqual({ why: 'off the stock', words: 'the bar is 24.3 mm too short for post as well' });
  });

  it('goes to a new bar, but turns only as its section allows', () => {
    const from = { bar: posts, index: 0 };
    const fresh = movePiece(bars, start, from, { bar: 2, index: 0, stock: 0, turn: null });
    expect(fresh.plan && verify(bars, fresh.plan)).toEqual([]);
    expect([fresh.plan?.bars.length, fresh.plan?.cost]).toEqual([3, 15]);
    expect(movePiece(bars, start, from, { bar: 2, index: 0, stock: 0, turn: 'swung' }).refused?.why).toBe('turn');
  });
});
