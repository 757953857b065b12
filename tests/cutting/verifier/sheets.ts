import type { CutSheet, PlacedOnSheet, Rect, SheetPlan } from '../../../src/vocabulary/cut-plan';
import type { SheetProblem } from '../../../src/vocabulary/cut-problem';
import { atLeast, same } from './shared';
import { leavesOf, stagesOf, treeFaults } from './tree';

/** The sheet within its trimmed edges. */
function usable({ stock, trim: all }: SheetProblem, index: number): Rect {
  const { length, width, trim = all } = stock[index];
  return { x: trim, y: trim, length: length - 2 * trim, width: width - 2 * trim };
}

const sameRect = (a: Rect, b: Rect): boolean =>
  same(a.x, b.x) && same(a.y, b.y) && same(a.length, b.length) && same(a.width, b.width);

export function sheetFaults(problem: SheetProblem, { sheets }: SheetPlan): string[] {
  return sheets.flatMap((sheet, i) => oneSheet(problem, sheet).map((fault) => `sheet ${i}: ${fault}`));
}

function oneSheet(problem: SheetProblem, sheet: CutSheet): string[] {
  const directions = stagesOf(sheet.tree, false);
  const stages = stagesOf(sheet.tree, problem.trimsFree ?? false);
  const whole = usable(problem, sheet.stock);
  return [
    ...(sameRect(sheet.tree, whole) ? [] : ['the tree is not the sheet within its trimmed edges']),
    ...treeFaults(problem, sheet.tree),
    ...(sheet.stages === directions ? [] : [`${directions} stages, ${sheet.stages} said`]),
    ...(stages > (problem.stages ?? Number.POSITIVE_INFINITY) ? [`${stages} stages, ${problem.stages} allowed`] : []),
    ...listFaults(leavesOf(sheet.tree), sheet.pieces),
    ...sheet.pieces.flatMap((piece) => pieceFaults(problem, piece, whole)),
    ...overlaps(problem.kerf, sheet.pieces),
  ];
}

const words = ({ piece, turned, x, y, length, width }: PlacedOnSheet): string =>
  [piece, turned, ...[x, y, length, width].map((mm) => mm.toFixed(4))].join(' ');

/** The list of pieces is what the tree has. */
function listFaults(leaves: readonly PlacedOnSheet[], listed: readonly PlacedOnSheet[]): string[] {
  const [tree, list] = [leaves, listed].map((pieces) => pieces.map(words).sort());
  return tree.join('\n') === list.join('\n') ? [] : ["the list of pieces is not the tree's"];
}

function pieceFaults({ pieces }: SheetProblem, placed: PlacedOnSheet, whole: Rect): string[] {
  const { length, width, turnable } = pieces[placed.piece];
  const [along, up] = placed.turned ? [width, length] : [length, width];
  const inside =
    atLeast(placed.x, whole.x) &&
    atLeast(placed.y, whole.y) &&
    atLeast(whole.x + whole.length, placed.x + placed.length) &&
    atLeast(whole.y + whole.width, placed.y + placed.width);
  return [
    ...(same(placed.length, along) && same(placed.width, up) ? [] : [`piece ${placed.piece} has another size`]),
    ...(placed.turned && !turnable ? [`piece ${placed.piece} lies across the grain`] : []),
    ...(inside ? [] : [`piece ${placed.piece} lies outside the trimmed sheet`]),
  ];
}

/** Any two pieces are a kerf apart, in one direction at least: seen without the tree. */
function overlaps(kerf: number, pieces: readonly PlacedOnSheet[]): string[] {
  const clear = (a: Rect, b: Rect): boolean =>
    atLeast(b.x - a.x - a.length, kerf) ||
    atLeast(a.x - b.x - b.length, kerf) ||
    atLeast(b.y - a.y - a.width, kerf) ||
    atLeast(a.y - b.y - b.width, kerf);
  return pieces.flatMap((a, i) =>
    pieces.slice(i + 1).flatMap((b) => (clear(a, b) ? [] : [`pieces ${a.piece} and ${b.piece} are not a kerf apart`])),
  );
}

/** Whether a sheet could give a piece that is alone on it: at most two cuts, in either order. */
export const sheetHolds =
  (problem: SheetProblem) =>
  (s: number, p: number): boolean => {
    const { length, width, turnable } = problem.pieces[p];
    const ways = turnable ? [[length, width] as const, [width, length] as const] : [[length, width] as const];
    return ways.some(([along, up]) => canBeCut(problem, usable(problem, s), along, up));
  };

function canBeCut(problem: SheetProblem, sheet: Rect, length: number, width: number): boolean {
  if (!atLeast(sheet.length, length) || !atLeast(sheet.width, width)) return false;
  const { longestCut = Number.POSITIVE_INFINITY, stages = Number.POSITIVE_INFINITY, trimsFree } = problem;
  const [crossed, ripped] = [!same(sheet.length, length), !same(sheet.width, width)];
  const directions = Number(crossed) + Number(ripped);
  if (directions - (trimsFree && directions > 0 ? 1 : 0) > stages) return false;
  if (!crossed && !ripped) return true;
  const crossFirst = (!crossed || sheet.width <= longestCut) && (!ripped || length <= longestCut);
  const ripFirst = (!ripped || sheet.length <= longestCut) && (!crossed || width <= longestCut);
  return crossFirst || ripFirst;
}
