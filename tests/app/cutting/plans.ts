import type { AnyCutPlan, CutBatch, CutTree, PlacedOnSheet, SheetPlan } from '../../../src/vocabulary/cut-plan';
import type { SheetProblem } from '../../../src/vocabulary/cut-problem';

/** Two sheets of 1000 × 500, no kerf and no trim; a: 400 × 500, three of them; b: 200 × 500, turnable, one. */
export const problem: SheetProblem = {
  kind: 'sheets',
  kerf: 0,
  trim: 0,
  stock: [{ length: 1000, width: 500, price: 10 }],
  pieces: [
    { name: 'a', length: 400, width: 500, quantity: 3 },
    { name: 'b', length: 200, width: 500, quantity: 1, turnable: true },
  ],
};

export const batch: CutBatch = {
  id: 'mdf',
  name: 'MDF',
  problem,
  marks: [[['A1'], ['A2'], ['A3']], [['B1']]],
  from: [{ item: 'mdf-12' }],
};

export const piece = (which: number, x: number, y: number, length: number, width: number): PlacedOnSheet => ({
  kind: 'piece',
  piece: which,
  turned: false,
  x,
  y,
  length,
  width,
});

/** A sheet of upright strips side by side, and what is left at its right end. */
export function strips(pieces: readonly PlacedOnSheet[], sheet = { length: 1000, width: 500 }) {
  const end = Math.max(0, ...pieces.map(({ x, length }) => x + length));
  const left: readonly CutTree[] =
    end < sheet.length
      ? [{ kind: 'left', x: end, y: 0, length: sheet.length - end, width: sheet.width, reusable: true }]
      : [];
  const tree: CutTree = { kind: 'cut', way: 'across', x: 0, y: 0, ...sheet, parts: [...pieces, ...left] };
  return { stock: 0, tree, pieces, stages: 1 };
}

/** a a b | a */
export const plan: SheetPlan = {
  kind: 'sheets',
  cost: 20,
  bound: 20,
  proven: true,
  used: [{ stock: 0, count: 2 }],
  unplaced: [],
  sheets: [
    strips([piece(0, 0, 0, 400, 500), piece(0, 400, 0, 400, 500), piece(1, 800, 0, 200, 500)]),
    strips([piece(0, 0, 0, 400, 500)]),
  ],
};

/** The same work on three sheets. */
export const dearer: SheetPlan = {
  ...plan,
  cost: 30,
  proven: false,
  bound: 10,
  sheets: [
    strips([piece(0, 0, 0, 400, 500)]),
    strips([piece(0, 0, 0, 400, 500), piece(1, 400, 0, 200, 500)]),
    strips([piece(0, 0, 0, 400, 500)]),
  ],
};

export const priced = (cost: number, bound: number): AnyCutPlan => ({ ...plan, cost, bound, proven: cost === bound });
