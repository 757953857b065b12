import type { Cell, Cells } from './cell';
import { ACROSS, FIRST, LEFT, LENGTH, NEXT, NONE, SHEET, SHIFT, TURNED, WHAT, WIDTH } from './fields';
import type { Forest } from './forest';

/** The trees of a forest, by the number of their sheets. */
export function cellsOf({ memory: M, at }: Forest): Cells {
  const roots = Array.from(M.subarray(at.roots + 1, at.roots + 1 + M[at.roots]));
  return roots
    .map((root) => ({ sheet: M[(root << SHIFT) + SHEET], cell: cellOf(M, root) }))
    .sort((a, b) => a.sheet - b.sheet);
}

function cellOf(M: Int32Array, node: number): Cell {
  const p = node << SHIFT;
  const length = M[p + LENGTH];
  const width = M[p + WIDTH];
  const what = M[p + WHAT];
  if (what === LEFT) return { kind: 'left', length, width };
  if (what >= 0) return { kind: 'piece', length, width, piece: what, turned: M[p + TURNED] === 1 };
  const parts: Cell[] = [];
  for (let part = M[p + FIRST]; part !== NONE; part = M[(part << SHIFT) + NEXT]) parts.push(cellOf(M, part));
  return { kind: 'cut', way: what === ACROSS ? 'across' : 'along', length, width, parts };
}
