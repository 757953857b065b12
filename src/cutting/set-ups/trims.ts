import type { CutTree, Rect } from '../../vocabulary/cut-plan';
import type { SheetProblem } from '../../vocabulary/cut-problem';
import type { Freed, SheetCut } from '../../vocabulary/set-up';
import { freedOf } from './freed';
import { heldBy, SAME } from './tree-cuts';

/** Taken off each edge of a sheet, mm. */
export const trimOf = (problem: SheetProblem, stock: number): number => problem.stock[stock].trim ?? problem.trim;

/** The four edges of a sheet: one long edge by eye, the other from it; then the ends, square to it. */
export function trimCuts(problem: SheetProblem, stock: number, tree: CutTree): Omit<SheetCut, 'number'>[] {
  const trim = trimOf(problem, stock);
  if (trim <= SAME) return [];
  const { length: l, width: w } = problem.stock[stock];
  const { kerf, longestCut = Number.POSITIVE_INFINITY } = problem;
  const waste = (rect: Rect): Freed[] => (Math.min(rect.length, rect.width) > SAME ? [{ kind: 'waste', rect }] : []);
  const off = Math.max(0, trim - kerf);
  const on = { what: 'trim', takes: trim, level: 0 } as const;
  const long = { ...on, way: 'along', length: l, tooLong: l > longestCut + SAME } as const;
  const [across, high] = [w - 2 * trim, w - trim];
  const ends = { ...on, way: 'across', length: across, tooLong: across > longestCut + SAME } as const;
  const end = l - trim;
  return [
    {
      ...long,
      panel: { x: 0, y: 0, length: l, width: w },
      against: { side: 'high', edge: 'bought' },
      line: { x1: 0, y1: trim, x2: l, y2: trim },
      kerf: { x: 0, y: trim - kerf, length: l, width: kerf },
      frees: waste({ x: 0, y: 0, length: l, width: off }),
    },
    {
      ...long,
      panel: { x: 0, y: trim, length: l, width: high },
      fence: across,
      against: { side: 'low', edge: 'trimmed' },
      line: { x1: 0, y1: high, x2: l, y2: high },
      kerf: { x: 0, y: high, length: l, width: kerf },
      frees: waste({ x: 0, y: w - off, length: l, width: off }),
    },
    {
      ...ends,
      panel: { x: 0, y: trim, length: l, width: across },
      against: { side: 'high', edge: 'bought' },
      line: { x1: trim, y1: trim, x2: trim, y2: high },
      kerf: { x: trim - kerf, y: trim, length: kerf, width: across },
      frees: waste({ x: 0, y: trim, length: off, width: across }),
    },
    {
      ...ends,
      panel: { x: trim, y: trim, length: end, width: across },
      fence: l - 2 * trim,
      against: { side: 'low', edge: 'trimmed' },
      line: { x1: end, y1: trim, x2: end, y2: high },
      kerf: { x: end, y: trim, length: kerf, width: across },
      frees: [...waste({ x: l - off, y: trim, length: off, width: across }), freedOf(heldBy(tree))],
    },
  ];
}
