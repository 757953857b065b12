import { expect, it } from 'vitest';
import { endsAbove } from '../../../app/cutting/bar-ends';
import { cutsOf } from '../../../src/cut';
import type { BarPlan } from '../../../src/vocabulary/cut-plan';
import type { BarProblem, BarTurn, Slant } from '../../../src/vocabulary/cut-problem';

const ENDS: readonly (readonly [Slant, Slant])[] = [
  [
    [1, 0],
    [-1, 0],
  ],
  [
    [0.5, 0.2],
    [0, -0.3],
  ],
  [
    [0, 0.4],
    [1, 0],
  ],
];
const TURNS: readonly (BarTurn | undefined)[] = [undefined, 'rolled', 'swung', 'tumbled'];

it.each(ENDS.flatMap((ends) => TURNS.map((turn) => ({ ends, turn }))))(
  'the end of a piece is drawn where the saw cuts it: $turn $ends',
  ({ ends, turn }) => {
    const problem: BarProblem = {
      kind: 'bars',
      kerf: 3,
      trim: 10,
      section: { width: 60, thickness: 20, turns: ['rolled', 'swung', 'tumbled'] },
      stock: [{ length: 2000, price: 1 }],
      pieces: [{ length: 700, quantity: 1, ends }],
    };
    const placed = { piece: 0, at: 10, length: 700, ...(turn ? { turn } : {}) };
    const plan: BarPlan = {
      kind: 'bars',
      cost: 1,
      bound: 1,
      proven: true,
      used: [],
      unplaced: [],
      bars: [{ stock: 0, pieces: [placed] }],
    };
    const [left, right] = endsAbove(problem, placed);
    const cut = cutsOf(problem, plan)[0]!.cuts.find(({ frees }) => frees.some(({ kind }) => kind === 'piece'))!;
    expect(right.near).toBeCloseTo(cut.edge.above[0], 6);
    expect(right.far).toBeCloseTo(cut.edge.above[1], 6);
    // On the lower face or the upper, nothing reaches over the piece's own length.
    for (const x of [left.near, left.far, right.near, right.far]) {
      expect(x).toBeGreaterThanOrEqual(10 - 1e-6);
      expect(x).toBeLessThanOrEqual(710 + 1e-6);
    }
  },
);
