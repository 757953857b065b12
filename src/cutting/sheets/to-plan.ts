import type { CutSheet, CutTree, Leftover, PlacedOnSheet, Rect, SheetPlan, Unplaced } from '../../vocabulary/cut-plan';
import type { SheetProblem } from '../../vocabulary/cut-problem';
import { largeEnough } from '../least-offcut';
import type { Cell, Cells } from './cell';
import { fewerCuts } from './fewer-cuts';
import type { Member, Scaled } from './scaled';
import { sideParted, stagesOf, tidied } from './tidy';

/** Prices are added up to so many places: what is beyond is noise of the sum. */
const MONEY = 1e6;

/** What sheets cost together, in the problem's money. */
export const costOf = (cells: Cells, { sheets }: Scaled): number =>
  Math.round(cells.reduce((sum, { sheet }) => sum + sheets[sheet].price, 0) * MONEY) / MONEY;

/**
 * The plan, in mm, of a way to cut. `bound` is one that holds for the pieces that are placed; the plan's never lies above its cost. Sheets
 * come in the order of the problem's stock.
 */
export function toPlan(scaled: Scaled, cells: Cells, bound: number): SheetPlan {
  const { problem, sheets, kinds } = scaled;
  const pieces = kinds.map(({ members }) => dealer(members));
  const stock = sheets.map(({ members }) => dealer(members));
  const cut = cells
    .map(({ sheet, cell }) => ({ stock: stock[sheet]().index, cell: fewerCuts(tidied(cell, scaled), scaled) }))
    .sort((a, b) => a.stock - b.stock)
    .map(({ stock: index, cell }) => cutSheet(index, cell));
  const cost = costOf(cells, scaled);
  const counts = problem.stock.map((_, index) =>
    cut.reduce((sum, { stock: used }) => sum + (used === index ? 1 : 0), 0),
  );
  const proven = cost <= bound + 1 / MONEY;
  return {
    kind: 'sheets',
    cost,
    bound: proven ? cost : bound,
    proven,
    used: counts.flatMap((count, index) => (count > 0 ? [{ stock: index, count }] : [])),
    unplaced: unplacedOf(scaled, cut),
    sheets: cut,
  };

  function cutSheet(index: number, cell: Cell): CutSheet {
    const { length, width, trim = problem.trim } = problem.stock[index];
    const on: PlacedOnSheet[] = [];
    const tree = treeOf(cell, { x: trim, y: trim, length: length - 2 * trim, width: width - 2 * trim }, on);
    return { stock: index, tree, pieces: on, stages: stagesOf(cell, false) };
  }

  /** A cell, lying in a rectangle of the sheet (mm, clear of kerfs). */
  function treeOf(cell: Cell, rect: Rect, on: PlacedOnSheet[]): CutTree {
    if (cell.kind === 'left') return leftover(rect, cell);
    if (cell.kind === 'piece') {
      const { index, swapped } = pieces[cell.piece]();
      const { length: l, width: w } = problem.pieces[index];
      const turned = cell.turned !== swapped;
      const [length, width] = turned ? [w, l] : [l, w];
      const placed: PlacedOnSheet = { kind: 'piece', x: rect.x, y: rect.y, length, width, piece: index, turned };
      on.push(placed);
      return placed;
    }
    const across = cell.way === 'across';
    const end = across ? rect.x + rect.length : rect.y + rect.width;
    let units = 0;
    let used = 0;
    for (const part of cell.parts) used += sideParted(part, cell.way);
    const filled = used === sideParted(cell, cell.way);
    const parts = cell.parts.map((part, i) => {
      const side = sideParted(part, cell.way);
      const at = (across ? rect.x : rect.y) + units / scaled.scale;
      units += side;
      // The last part of what is filled reaches to the end, whatever was rounded.
      const size = filled && i === cell.parts.length - 1 ? end - at : (side - scaled.kerf) / scaled.scale;
      const { x, y, length, width } = rect;
      return treeOf(part, across ? { x: at, y, length: size, width } : { x, y: at, length, width: size }, on);
    });
    return { kind: 'cut', ...rect, way: cell.way, parts };
  }

  function leftover(rect: Rect, { length, width }: Cell): Leftover {
    return { kind: 'left', ...rect, reusable: largeEnough(length, width, scaled.leastOffcut) };
  }
}

/** Gives out members one by one, in the order of the problem's list; the last again and again if asked for more. */
function dealer<T extends Member>(members: readonly T[]): () => T {
  let at = 0;
  let given = 0;
  return () => {
    while (given >= members[at].count && at < members.length - 1) {
      at++;
      given = 0;
    }
    given++;
    return members[at];
  };
}

function unplacedOf({ problem, tooLarge, kinds, sheets }: Scaled, cut: readonly CutSheet[]): Unplaced[] {
  const missing = problem.pieces.map(({ quantity }) => quantity);
  for (const { pieces } of cut) for (const { piece } of pieces) missing[piece]--;
  const stockLeft = cut.length < sheets.reduce((sum, { count }) => sum + count, 0);
  const inSet = new Set(kinds.flatMap(({ set, members }) => (set < 0 ? [] : members.map(({ index }) => index))));
  return missing.flatMap((quantity, piece) => {
    if (quantity === 0) return [];
    const sets = stockLeft && inSet.has(piece);
    const why = tooLarge.includes(piece) ? misfit(problem, piece) : sets ? 'its set fits no stock' : 'no stock left';
    return [{ piece, quantity, why }];
  });
}

/** Why a piece lies on no sheet by itself: by its size, or by how it may be cut. */
function misfit({ pieces, stock, trim }: SheetProblem, index: number): Unplaced['why'] {
  const { length, width } = pieces[index];
  const largeEnough = stock.some((one) => {
    const off = 2 * (one.trim ?? trim);
    const holds = (along: number, up: number): boolean =>
      along <= one.length - off + NOISE && up <= one.width - off + NOISE;
    return one.count !== 0 && (holds(length, width) || holds(width, length));
  });
  return largeEnough ? 'fits no stock with the grain, stages and longest cut given' : 'larger than any stock';
}

/** Noise of sums, mm. */
const NOISE = 1e-6;
