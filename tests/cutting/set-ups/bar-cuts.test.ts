import { describe, expect, it } from 'vitest';
import { cutsOf } from '../../../src/cutting/set-ups/index';
import type { BarPlan, CutBar } from '../../../src/vocabulary/cut-plan';
import type { BarProblem, Slant } from '../../../src/vocabulary/cut-problem';
import { verify } from '../verifier/index';

const planOf = (bars: readonly CutBar[]): BarPlan => ({
  kind: 'bars',
  cost: 10 * bars.length,
  bound: 0,
  proven: false,
  used: [{ stock: 0, count: bars.length }],
  unplaced: [],
  bars,
});
const told = (problem: BarProblem, bar: CutBar) => {
  expect(verify(problem, planOf([bar]))).toEqual([]);
  const [{ cuts }] = cutsOf(problem, planOf([bar]));
  return cuts.map(({ what, stop, mitreDeg, tiltDeg, over }) => [
    what,
    stop,
    Math.round(mitreDeg * 100) / 100,
    Math.round(tiltDeg * 100) / 100,
    over,
  ]);
};

/** A member of a frame, long at its outer edge (u = 0): its left end runs to the right across it, its right end to the left. */
const FRAME: readonly [Slant, Slant] = [
  [1, 0],
  [-1, 0],
];
const frame = (turns: NonNullable<BarProblem['section']>['turns']): BarProblem => ({
  kind: 'bars',
  kerf: 3,
  trim: 10,
  section: { width: 30, thickness: 15, turns },
  stock: [{ length: 2400, price: 10 }],
  pieces: [
    { length: 500, quantity: 2, ends: FRAME },
    { length: 300, quantity: 2, ends: FRAME },
  ],
});
/** A kerf of 3 at 45°, along the bar. */
const K = 3 * Math.SQRT2;

describe('the cuts of a bar', () => {
  it('square: the rough end, each piece to its stop, and the rough end of what is kept', () => {
    const problem: BarProblem = {
      kind: 'bars',
      kerf: 3,
      trim: 20,
      stock: [{ length: 2400, price: 10 }],
      pieces: [
        { length: 900, quantity: 2 },
        { length: 150, quantity: 1 },
      ],
    };
    // 20 + 900 + 3 + 900 + 3 + 150 = 1976; a kerf; 2400 − 20 − 1979 = 401 are kept.
    const bar: CutBar = {
      stock: 0,
      pieces: [
        { piece: 0, at: 20, length: 900 },
        { piece: 0, at: 923, length: 900 },
        { piece: 1, at: 1826, length: 150 },
      ],
      offcut: { at: 1979, length: 401 },
    };
    expect(told(problem, bar)).toEqual([
      ['trim', undefined, 0, 0, false],
      ['piece', 900, 0, 0, false],
      ['piece', 900, 0, 0, false],
      ['piece', 150, 0, 0, false],
      ['end', undefined, 0, 0, false],
    ]);
    const [{ cuts }] = cutsOf(problem, planOf([bar]));
    expect(cuts.map(({ edge, waste }) => [edge.below[0], waste])).toEqual([
      [20, 'left'],
      [920, 'right'],
      [1823, 'right'],
      [1976, 'right'],
      [2380, 'right'],
    ]);
    expect(cuts.map(({ frees }) => frees.map(({ kind }) => kind))).toEqual([
      [],
      ['piece'],
      ['piece'],
      ['piece'],
      ['left'],
    ]);
  });

  it('as long as the bar: none', () => {
    const problem: BarProblem = {
      kind: 'bars',
      kerf: 3,
      trim: 0,
      stock: [{ length: 2400, price: 10 }],
      pieces: [{ length: 2400, quantity: 1 }],
    };
    const piece = { piece: 0, at: 0, length: 2400 };
    expect(cutsOf(problem, planOf([{ stock: 0, pieces: [piece] }]))).toEqual([
      { kind: 'bar', stock: 0, cuts: [], whole: piece },
    ]);
  });

  it('a mitred frame of a moulding that can only lie one way: both ends of each piece, to the long point', () => {
    // Outer edges a kerf of 3·√2 apart: 10, 514.24, 1018.49, 1322.73; the last ends at 1622.73, and 1626.97 to 2390 is kept.
    const at = [10, 510 + K, 1010 + 2 * K, 1310 + 3 * K];
    const bar: CutBar = {
      stock: 0,
      pieces: at.map((from, i) => ({ piece: i < 2 ? 0 : 1, at: from, length: i < 2 ? 500 : 300 })),
      offcut: { at: 1610 + 4 * K, length: 2390 - 1610 - 4 * K },
    };
    expect(told(frame([]), bar)).toEqual([
      ['trim', undefined, 45, 0, false],
      ['piece', 500, -45, 0, false],
      ['clean', undefined, 45, 0, false],
      ['piece', 500, -45, 0, false],
      ['clean', undefined, 45, 0, false],
      ['piece', 300, -45, 0, false],
      ['clean', undefined, 45, 0, false],
      ['piece', 300, -45, 0, false],
      ['end', undefined, 0, 0, false],
    ]);
  });

  it('the same of a strip that may be rolled over: one cut ends a piece and begins the next, and the saw stands still', () => {
    // Every other piece lies face down, its long edge at u = 30; the ends nest, and outer points overlap by 30 less the kerf.
    const step = (length: number): number => length + K - 30;
    const at = [10, 10 + step(500), 10 + 2 * step(500), 10 + 2 * step(500) + step(300)];
    const end = at[3] + 300;
    const bar: CutBar = {
      stock: 0,
      pieces: at.map((from, i) => ({
        piece: i < 2 ? 0 : 1,
        at: from,
        length: i < 2 ? 500 : 300,
        ...(i % 2 ? { turn: 'rolled' as const } : {}),
      })),
      offcut: { at: end + K, length: 2390 - end - K },
    };
    expect(told(frame(['rolled']), bar)).toEqual([
      ['trim', undefined, 45, 0, false],
      ['piece', 500, -45, 0, false],
      ['piece', 500, -45, 0, true],
      ['piece', 300, -45, 0, false],
      ['piece', 300, -45, 0, true],
      ['end', undefined, 0, 0, false],
    ]);
    const [{ cuts }] = cutsOf(frame(['rolled']), planOf([bar]));
    // The first piece's right end: 510 at its outer edge, 480 at its inner; the second's 30 before and at its outer edge.
    expect(cuts[1].edge).toEqual({ below: [510, 480], above: [510, 480] });
    expect(cuts[2].edge.below.map((mm) => Math.round(mm * 1000) / 1000)).toEqual([954.243, 984.243]);
  });

  it('a compound end says how far the saw is turned and how far tilted', () => {
    // Boards that lean 30° from upright on a square corner, mitred: tan M = sin S / tan(θ/2) = 0.5, sin B = cos S · cos(θ/2) = 0.6124
    // (Snyder & Gottesman 2015): 26.57° and 37.76°. The plane: a = 0.5, o = tan B · √(1 + a²) = 0.7746 · 1.1180 = 0.8660.
    const ends: readonly [Slant, Slant] = [
      [0, 0],
      [0.5, Math.sqrt(3) / 2],
    ];
    const problem: BarProblem = { ...frame([]), pieces: [{ length: 600, quantity: 1, ends }] };
    const bar: CutBar = { stock: 0, pieces: [{ piece: 0, at: 10, length: 600 }] };
    const [{ cuts }] = cutsOf(problem, planOf([bar]));
    expect(cuts.map(({ mitreDeg, tiltDeg }) => [mitreDeg.toFixed(2), tiltDeg.toFixed(2)])).toEqual([
      ['0.00', '0.00'],
      ['26.57', '37.76'],
    ]);
  });
});
