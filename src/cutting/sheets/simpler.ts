import type { Cell, Cells } from './cell';
import { cellsOf } from './cells-of';
import type { Chance } from './chance';
import { fewerCuts } from './fewer-cuts';
import { forestOf } from './forest';
import { offcutIn } from './offcut';
import type { Kind, Scaled } from './scaled';
import { stagesOf, tidied } from './tidy';
import { walkOf } from './walk';

/** Steps of a walk for one sheet. */
const TRIES = 1500;

/**
 * One sheet of a way of cutting again in fewer stages: the same pieces, and where the largest offcut lies on it, that as if it were a piece. The
 * whole way with that sheet exchanged, or undefined where none was found.
 */
export function simplerSheet(scaled: Scaled, cells: Cells, which: number, chance: Chance): Cells | undefined {
  const tidy = fewerCuts(tidied(cells[which].cell, scaled), scaled);
  const stages = stagesOf(tidy, false);
  if (stages < 2) return undefined;
  const largest = offcutOf(scaled, cells);
  const numbers: number[] = [];
  const counts = new Map<number, number>();
  let kept: Cell | undefined;
  const look = (cell: Cell): void => {
    if (cell.kind === 'cut') cell.parts.forEach(look);
    else if (cell.kind === 'piece') {
      if (!counts.has(cell.piece)) numbers.push(cell.piece);
      counts.set(cell.piece, (counts.get(cell.piece) ?? 0) + 1);
    } else if (largest > 0 && offcutIn(scaled, cell.length, cell.width) === largest) kept ??= cell;
  };
  look(tidy);
  const kinds: Kind[] = numbers
    .sort((a, b) => a - b)
    .map((number) => ({ ...scaled.kinds[number], quantity: counts.get(number) ?? 0, set: -1 }));
  if (kept) kinds.push({ length: kept.length, width: kept.width, turns: true, quantity: 1, set: -1, members: [] });
  const sheet = scaled.sheets[cells[which].sheet];
  const alone: Scaled = {
    ...scaled,
    kinds,
    sheets: [{ ...sheet, count: 1 }],
    sets: [],
    stages: stages - 1,
    trimsFree: false,
  };
  const unit = sheet.length * sheet.width;
  const forest = forestOf(alone);
  const walk = walkOf(forest, chance);
  walk.begin({
    budget: Number.POSITIVE_INFINITY,
    value: () => forest.tally.missing / unit,
    mostMissing: (value) => value * unit,
  });
  for (let i = 0; i < TRIES && forest.tally.missing > 0; i++) walk.step();
  if (forest.tally.missing > 0) return undefined;
  const [{ cell }] = cellsOf(forest);
  return cells.map((one, i) => (i === which ? { sheet: one.sheet, cell: named(cell, numbers) } : one));
}

/** Area of the largest reusable offcut. */
function offcutOf(scaled: Scaled, cells: Cells): number {
  let most = 0;
  const look = (cell: Cell): void => {
    if (cell.kind === 'cut') cell.parts.forEach(look);
    else if (cell.kind === 'left') most = Math.max(most, offcutIn(scaled, cell.length, cell.width));
  };
  for (const { cell } of cells) look(fewerCuts(tidied(cell, scaled), scaled));
  return most;
}

/** The same cell with the kinds' own numbers; what has none is left over. */
function named(cell: Cell, numbers: readonly number[]): Cell {
  if (cell.kind === 'cut') return { ...cell, parts: cell.parts.map((part) => named(part, numbers)) };
  if (cell.kind !== 'piece') return cell;
  const { length, width } = cell;
  const piece = numbers.at(cell.piece);
  return cell.piece >= numbers.length || piece === undefined ? { kind: 'left', length, width } : { ...cell, piece };
}
