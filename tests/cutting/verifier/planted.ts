import type { BarPlan, CutTree, PlacedOnSheet, SheetPlan } from '../../../src/vocabulary/cut-plan';
import type { BarProblem, SheetProblem } from '../../../src/vocabulary/cut-problem';

/** Plain data whose every field may be written, to plant a fault in it. */
export type Writable<T> = T extends object ? { -readonly [K in keyof T]: Writable<T[K]> } : T;

/** A good plan, worked by hand, to plant faults in. */
export const SHEETS: SheetProblem = {
  kind: 'sheets',
  kerf: 3,
  trim: 5,
  stages: 3,
  longestCut: 990,
  stock: [
    { length: 1000, width: 600, price: 20 },
    { length: 700, width: 400, price: 9.5, count: 1, trim: 0 },
  ],
  pieces: [
    { length: 400, width: 300, quantity: 2, together: 'doors' },
    { length: 300, width: 100, quantity: 1, turnable: true },
    { length: 250, width: 80, quantity: 1, turnable: true },
    { length: 2000, width: 80, quantity: 1 },
  ],
};

/*
 * 1000 × 600 trimmed by 5: 990 × 590. Two strips, 300 + 3 + 287. In the first 400 + 3 + 400 + 3 + 184; in the second 300 + 3 + 80 + 3 + 604,
 * the pieces in it cut to their widths: 100 + 3 + 184 and 250 + 3 + 34.
 */
const piece = (index: number, x: number, y: number, length: number, width: number, turned = false): PlacedOnSheet => ({
  kind: 'piece',
  piece: index,
  turned,
  x,
  y,
  length,
  width,
});
const left = (x: number, y: number, length: number, width: number, reusable: boolean): CutTree => ({
  kind: 'left',
  x,
  y,
  length,
  width,
  reusable,
});
const PLACED = [
  piece(0, 5, 5, 400, 300),
  piece(0, 408, 5, 400, 300),
  piece(1, 5, 308, 300, 100),
  piece(2, 308, 308, 80, 250, true),
] as const;
const strip = (y: number, width: number, parts: readonly CutTree[]): CutTree => ({
  kind: 'cut',
  way: 'across',
  x: 5,
  y,
  length: 990,
  width,
  parts,
});
const cell = (x: number, length: number, parts: readonly CutTree[]): CutTree => ({
  kind: 'cut',
  way: 'along',
  x,
  y: 308,
  length,
  width: 287,
  parts,
});
const TREE: CutTree = {
  kind: 'cut',
  way: 'along',
  x: 5,
  y: 5,
  length: 990,
  width: 590,
  parts: [
    strip(5, 300, [PLACED[0], PLACED[1], left(811, 5, 184, 300, true)]),
    strip(308, 287, [
      cell(5, 300, [PLACED[2], left(5, 411, 300, 184, true)]),
      cell(308, 80, [PLACED[3], left(308, 561, 80, 34, false)]),
      left(391, 308, 604, 287, true),
    ]),
  ],
};
export const SHEET_PLAN: SheetPlan = {
  kind: 'sheets',
  cost: 20,
  bound: 9.5,
  proven: false,
  used: [{ stock: 0, count: 1 }],
  unplaced: [{ piece: 3, quantity: 1, why: 'larger than any stock' }],
  sheets: [{ stock: 0, tree: TREE, pieces: PLACED, stages: 3 }],
};

/**
 * A frame of 40 × 20, mitred at 45° across its width, and two square pieces. Two trapezoids lie head to tail, the second swung: its right plane
 * becomes its left one. Kerf 3 on 45° is 3·√2 = 4.2426 along the bar.
 */
export const BARS: BarProblem = {
  kind: 'bars',
  kerf: 3,
  trim: 10,
  section: { width: 40, thickness: 20, turns: ['swung'] },
  stock: [
    { length: 2400, price: 6 },
    { length: 900, price: 0, count: 1, trim: 0, offcut: true },
  ],
  pieces: [
    {
      length: 500,
      quantity: 2,
      ends: [
        [1, 0],
        [-1, 0],
      ],
    },
    { length: 700, quantity: 1 },
    { length: 400, quantity: 1, together: 'pair' },
    { length: 450, quantity: 1, together: 'pair' },
    { length: 3000, quantity: 1 },
  ],
};

/*
 * The first trapezoid from 10 to 510, long on its back edge (u = 0): there it ends at 510, at u = 40 at 470. Swung, the second is long at u = 40 and
 * begins there 40 before it does at u = 0. Parallel planes 4.2426 apart: at u = 40 it begins at 470 + 4.2426 = 474.2426, and ends at 974.2426.
 */
const NEXT = 470 + 3 * Math.SQRT2;
export const BAR_PLAN: BarPlan = {
  kind: 'bars',
  cost: 6,
  bound: 6,
  proven: true,
  used: [
    { stock: 0, count: 1 },
    { stock: 1, count: 1 },
  ],
  unplaced: [{ piece: 4, quantity: 1, why: 'larger than any stock' }],
  bars: [
    {
      stock: 0,
      pieces: [
        { piece: 0, at: 10, length: 500 },
        { piece: 0, at: NEXT, length: 500, turn: 'swung' },
        { piece: 1, at: 1000, length: 700 },
      ],
      // 1700 and a kerf, to the trim.
      offcut: { at: 1703, length: 2390 - 1703 },
    },
    {
      stock: 1,
      pieces: [
        { piece: 2, at: 0, length: 400 },
        { piece: 3, at: 403, length: 450 },
      ],
    },
  ],
};
