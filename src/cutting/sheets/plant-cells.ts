import type { Cells } from './cell';
import type { Forest } from './forest';
import { tidied } from './tidy';

/** Makes a forest, whatever stands in it, one of these cells. Of each kind they hold no more pieces than there are. */
export function plantCells(forest: Forest, cells: Cells): void {
  const { memory: M, at, scaled } = forest;
  forest.unmarked();
  while (M[at.roots] > 0) forest.clear(M[at.roots + 1]);
  for (const { sheet, cell } of cells) {
    const tidy = tidied(cell, scaled);
    if (tidy.kind !== 'left') forest.plant(sheet, tidy);
  }
}
