import type { CutTree, Leftover, PlacedOnSheet, SheetPlan } from '../../../src/vocabulary/cut-plan';
import type { SheetProblem } from '../../../src/vocabulary/cut-problem';
import { leavesOf, stagesOf } from '../verifier/tree';

/*
 * A sheet of 2440 × 1220, 10 trimmed off each edge, kerf 4: 2420 × 1200 to cut. Three strips, 400 + 4 + 400 + 4 + 300 = 1108, a kerf, and 88 left.
 * First strip: 3 × 800 and two kerfs, 2408, a kerf, 8 left. Second: 1200 + 4 + 600 = 1804, 612 left. Third: 1000 + 4 + 700 = 1704, 712 left;
 * the 700 is 280 wide, and 300 − 280 − 4 = 16 comes off it.
 */
export const problem: SheetProblem = {
  kind: 'sheets',
  kerf: 4,
  trim: 10,
  longestCut: 2500,
  stock: [{ length: 2440, width: 1220, price: 40 }],
  pieces: [
    { length: 800, width: 400, quantity: 3 },
    { length: 1200, width: 400, quantity: 1 },
    { length: 600, width: 400, quantity: 1 },
    { length: 1000, width: 300, quantity: 1 },
    { length: 700, width: 280, quantity: 1 },
  ],
};
export const on = (piece: number, x: number, y: number, length: number, width: number): PlacedOnSheet => ({
  kind: 'piece',
  x,
  y,
  length,
  width,
  piece,
  turned: false,
});
export const left = (x: number, y: number, length: number, width: number): Leftover => ({
  kind: 'left',
  x,
  y,
  length,
  width,
  reusable: Math.max(length, width) >= 300 && Math.min(length, width) >= 100,
});
const strip = (y: number, width: number, parts: readonly CutTree[]): CutTree => ({
  kind: 'cut',
  x: 10,
  y,
  length: 2420,
  width,
  way: 'across',
  parts,
});
const tree: CutTree = {
  kind: 'cut',
  x: 10,
  y: 10,
  length: 2420,
  width: 1200,
  way: 'along',
  parts: [
    strip(10, 400, [
      on(0, 10, 10, 800, 400),
      on(0, 814, 10, 800, 400),
      on(0, 1618, 10, 800, 400),
      left(2422, 10, 8, 400),
    ]),
    strip(414, 400, [on(1, 10, 414, 1200, 400), on(2, 1214, 414, 600, 400), left(1818, 414, 612, 400)]),
    strip(818, 300, [
      on(3, 10, 818, 1000, 300),
      {
        kind: 'cut',
        x: 1014,
        y: 818,
        length: 700,
        width: 300,
        way: 'along',
        parts: [on(4, 1014, 818, 700, 280), left(1014, 1102, 700, 16)],
      },
      left(1718, 818, 712, 300),
    ]),
    left(10, 1122, 2420, 88),
  ],
};
export const plan: SheetPlan = {
  kind: 'sheets',
  cost: 40,
  bound: 40,
  proven: true,
  used: [{ stock: 0, count: 1 }],
  unplaced: [],
  sheets: [{ stock: 0, tree, pieces: leavesOf(tree), stages: stagesOf(tree, false) }],
};
