import type { CutSheet, PlacedOnSheet, Rect, SheetPlan } from '../../vocabulary/cut-plan';
import type { SheetProblem } from '../../vocabulary/cut-problem';
import { leastSides } from '../least-offcut';
import { piecesOf } from '../set-ups/freed';
import { stagesOf } from '../set-ups/stages';
import { nameOf, withSheets } from './account';
import { type Answer, type Refusal, refuse } from './answer';
import { clear, placesNear, within } from './snap';
import { treeOf } from './tree';

/** A piece in the list of a sheet's pieces. */
export interface OnSheet {
  readonly sheet: number;
  readonly index: number;
}

/** Where it is to lie: its corner, mm of the sheet. The sheet after the last one is a new one of the stock that is named. */
export interface ToSheet {
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
  readonly stock?: number;
}

export interface MoveOptions {
  /** Sheets or bars that are cut already. */
  readonly locked?: readonly number[];
  /** How far a piece jumps to an edge or a neighbour, mm. */
  readonly reach?: number;
}

/** Common practice on screens, no source: a few mm at the scale of a whole sheet. */
const REACH = 8;

/** The plan with one piece laid elsewhere, and cut anew on the sheets concerned; or why it can't lie there. */
export function moveOnSheets(
  problem: SheetProblem,
  plan: SheetPlan,
  from: OnSheet,
  to: ToSheet,
  { locked = [], reach = REACH }: MoveOptions = {},
): Answer<SheetPlan> {
  const moved = plan.sheets[from.sheet].pieces[from.index];
  const { length, width, turnable, together } = problem.pieces[moved.piece];
  if (locked.includes(from.sheet) || locked.includes(to.sheet))
    return refuse('cut already', 'that sheet is cut already');
  if (to.turned && !turnable) return refuse('grain', `${nameOf(problem, moved.piece)} would lie across the grain`);
  const others = (sheet: number): readonly PlacedOnSheet[] =>
    plan.sheets[sheet].pieces.filter((_, i) => sheet !== from.sheet || i !== from.index);
  if (together !== undefined && to.sheet !== from.sheet && hasSet(problem, others(from.sheet), together))
    return refuse('set', `the pieces of "${together}" come from one sheet`);
  const stock = plan.sheets[to.sheet]?.stock ?? to.stock;
  if (stock === undefined || (!plan.sheets[to.sheet] && !isLeft(problem, plan, stock)))
    return refuse('no stock left', 'there is no such sheet left');
  const sheet = usable(problem, stock);
  const [along, up] = to.turned ? [width, length] : [length, width];
  const put = { x: to.x, y: to.y, length: along, width: up };
  const there = plan.sheets[to.sheet] ? others(to.sheet) : [];
  let refused: Refusal | undefined;
  // The first place is the one that it snaps to; what is wrong there is said.
  for (const place of placesNear(put, there, sheet, problem.kerf, reach)) {
    const piece: PlacedOnSheet = { kind: 'piece', ...place, piece: moved.piece, turned: to.turned };
    const cut = sheetCut(problem, stock, [...there, piece], piece);
    if (cut.refused) {
      refused ??= cut.refused;
      continue;
    }
    const left =
      from.sheet === to.sheet ? undefined : sheetCut(problem, plan.sheets[from.sheet].stock, others(from.sheet));
    if (left?.refused) return left;
    const sheets = plan.sheets.map((old, i) =>
      i === to.sheet ? cut.plan : i === from.sheet ? (left?.plan ?? old) : old,
    );
    if (to.sheet >= sheets.length) sheets.push(cut.plan);
    return { plan: withSheets(problem, plan, sheets) };
  }
  return { refused: refused ?? { why: 'off the stock', words: 'it reaches beyond the sheet' } };
}

const hasSet = (problem: SheetProblem, pieces: readonly PlacedOnSheet[], set: string): boolean =>
  pieces.some(({ piece }) => problem.pieces[piece].together === set);

const isLeft = ({ stock }: SheetProblem, plan: SheetPlan, index: number): boolean => {
  const used = plan.sheets.reduce((sum, sheet) => sum + (sheet.stock === index ? 1 : 0), 0);
  return index in stock && used < (stock[index].count ?? Number.POSITIVE_INFINITY);
};

/** A sheet within its trimmed edges. */
export function usable(problem: SheetProblem, stock: number): Rect {
  const { length, width, trim = problem.trim } = problem.stock[stock];
  return { x: trim, y: trim, length: length - 2 * trim, width: width - 2 * trim };
}

/** A sheet with these pieces, cut in as few stages as can be; or why it can't be cut so. `put`: the one to complain of. */
function sheetCut(
  problem: SheetProblem,
  stock: number,
  pieces: readonly PlacedOnSheet[],
  put?: PlacedOnSheet,
): Answer<CutSheet> {
  const { kerf, trimsFree, longestCut, stages = Number.POSITIVE_INFINITY } = problem;
  const sheet = usable(problem, stock);
  if (put) {
    if (!within(put, sheet))
      return refuse('off the stock', `${nameOf(problem, put.piece)} reaches beyond the trimmed sheet`);
    const other = pieces.find((piece) => piece !== put && !clear(piece, put, kerf));
    if (other) return refuse('overlap', `overlaps ${nameOf(problem, other.piece)}, or leaves no kerf to it`);
  }
  const terms = { kerf, trimsFree, longestCut, leastOffcut: leastSides(problem) };
  const tree = treeOf(pieces, sheet, terms);
  if (!tree)
    return treeOf(pieces, sheet, { ...terms, longestCut: undefined })
      ? refuse('too long a cut', `would need a cut longer than the saw's ${longestCut} mm`)
      : refuse('no cut through', 'not edge to edge: no cut goes through');
  const needed = stagesOf(tree, trimsFree);
  if (needed > stages) return refuse('too many stages', `${needed} stages, ${stages} allowed`);
  return { plan: { stock, tree, pieces: piecesOf(tree), stages: stagesOf(tree) } };
}
