import { treeOf } from '../../../src/cutting/by-hand/index';
import type { CutSheet, PlacedOnSheet, SheetPlan } from '../../../src/vocabulary/cut-plan';
import type { SheetProblem } from '../../../src/vocabulary/cut-problem';
import { leavesOf, stagesOf } from '../verifier/tree';

/** A plan of sheets of the first stock with these pieces on each. */
export function planned(problem: SheetProblem, sheets: readonly (readonly PlacedOnSheet[])[]): SheetPlan {
  const { kerf, trim, stock, trimsFree = false, leastOffcut: least = { length: 300, width: 100 } } = problem;
  const leastOffcut = [Math.max(least.length, least.width), Math.min(least.length, least.width)] as const;
  const [{ length, width, price }] = stock;
  const whole = { x: trim, y: trim, length: length - 2 * trim, width: width - 2 * trim };
  const cut = sheets.map((pieces): CutSheet => {
    const tree = treeOf(pieces, whole, { kerf, trimsFree, leastOffcut });
    if (!tree) throw new Error('can not be cut');
    return { stock: 0, tree, pieces: leavesOf(tree), stages: stagesOf(tree, false) };
  });
  return {
    kind: 'sheets',
    cost: price * cut.length,
    bound: 0,
    proven: false,
    used: [{ stock: 0, count: cut.length }],
    unplaced: [],
    sheets: cut,
  };
}
