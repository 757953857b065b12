import type { Cell, Cells } from '../sheets/cell';
import type { Scaled } from '../sheets/scaled';
import type { Pattern } from './pattern';

/** Whether these patterns hold every piece, on no more sheets than there are. */
export function holdsAll({ kinds, sheets }: Scaled, patterns: readonly Pattern[]): boolean {
  const missing = kinds.map(({ quantity }) => quantity);
  const left = sheets.map(({ count }) => count);
  for (const { sheet, counts } of patterns) {
    left[sheet] -= 1;
    for (let k = 0; k < counts.length; k += 1) missing[k] -= counts[k];
  }
  return missing.every((n) => n <= 0) && left.every((n) => n >= 0);
}

/** The sheets, with what they hold beyond what is wanted left over: from the last sheets, which have the least on them. */
export function cellsOf({ kinds }: Scaled, patterns: readonly Pattern[]): Cells {
  const still = kinds.map(({ quantity }) => quantity);
  const kept = (cell: Cell): Cell => {
    if (cell.kind === 'left') return cell;
    if (cell.kind === 'cut') return { ...cell, parts: cell.parts.map(kept) };
    still[cell.piece] -= 1;
    return still[cell.piece] >= 0 ? cell : { kind: 'left', length: cell.length, width: cell.width };
  };
  const load = ({ counts }: Pattern): number =>
    counts.reduce((sum, n, k) => sum + n * kinds[k].length * kinds[k].width, 0);
  return [...patterns]
    .map((pattern) => ({ pattern, load: load(pattern) }))
    .sort((a, b) => b.load - a.load)
    .map(({ pattern: { sheet, cell } }) => ({ sheet, cell: kept(cell) }));
}
