import type { AnyCutPlan, BarPlan, CutBar, CutSheet, SheetPlan, Unplaced } from '../../vocabulary/cut-plan';
import type { BarProblem, CutProblem, SheetProblem } from '../../vocabulary/cut-problem';
import { accountOf, money } from './account';
import { usable } from './move-sheet';

/** What is left to be planned when some sheets or bars are cut already. */
export interface Rest<Problem extends CutProblem = CutProblem> {
  readonly problem: Problem;
  /** For each piece and stock of it, which of the whole problem's it is. */
  readonly pieces: readonly number[];
  readonly stock: readonly number[];
}

const cutOf = (plan: AnyCutPlan): readonly (CutSheet | CutBar)[] => (plan.kind === 'sheets' ? plan.sheets : plan.bars);

/** The problem of what is not on the locked sheets or bars (places in the plan), from the stock that they leave. Nothing left: no pieces. */
export function restOf(problem: SheetProblem, plan: SheetPlan, locked: readonly number[]): Rest<SheetProblem>;
export function restOf(problem: BarProblem, plan: BarPlan, locked: readonly number[]): Rest<BarProblem>;
export function restOf(problem: CutProblem, plan: AnyCutPlan, locked: readonly number[]): Rest;
export function restOf(problem: CutProblem, plan: AnyCutPlan, locked: readonly number[]): Rest {
  const kept = cutOf(plan).filter((_, i) => locked.includes(i));
  const done = problem.pieces.map(() => 0);
  for (const { pieces } of kept) for (const { piece } of pieces) done[piece]++;
  const taken = problem.stock.map((_, i) => kept.reduce((sum, { stock }) => sum + (stock === i ? 1 : 0), 0));
  const open = problem.pieces.flatMap(({ quantity }, i) => (quantity > done[i] ? [i] : []));
  const there = problem.stock.flatMap(({ count }, i) => (count === undefined || count > taken[i] ? [i] : []));
  const pieces = open.map((i) => ({ ...problem.pieces[i], quantity: problem.pieces[i].quantity - done[i] }));
  const stock = there.map((i) => {
    const { count } = problem.stock[i];
    return count === undefined ? problem.stock[i] : { ...problem.stock[i], count: count - taken[i] };
  });
  // Pieces and stock are of the problem's own kind.
  return { problem: { ...problem, pieces, stock } as CutProblem, pieces: open, stock: there };
}

/**
 * The locked sheets or bars of a plan, first, and after them a plan of the rest. No plan that keeps what is locked can cost less than what that
 * costs and the bound of the rest; `proven` says only that the rest can't be cut for less.
 * @throws when the rest was planned as another kind
 */
export function withLocked(
  problem: SheetProblem,
  plan: SheetPlan,
  locked: readonly number[],
  rest: SheetPlan,
): SheetPlan;
export function withLocked(problem: BarProblem, plan: BarPlan, locked: readonly number[], rest: BarPlan): BarPlan;
export function withLocked(
  problem: CutProblem,
  plan: AnyCutPlan,
  locked: readonly number[],
  rest: AnyCutPlan,
): AnyCutPlan;
export function withLocked(
  problem: CutProblem,
  plan: AnyCutPlan,
  locked: readonly number[],
  rest: AnyCutPlan,
): AnyCutPlan {
  const { pieces, stock } = restOf(problem, plan, locked);
  const kept = <T>(all: readonly T[]): readonly T[] => all.filter((_, i) => locked.includes(i));
  const common = (cut: readonly { readonly stock: number }[], held: readonly { readonly stock: number }[]) => ({
    ...accountOf(problem, cut),
    bound: rest.proven ? accountOf(problem, cut).cost : money(accountOf(problem, held).cost + rest.bound),
    proven: rest.proven,
    unplaced: rest.unplaced.map((one) => inWhole(problem, held, { ...one, piece: pieces[one.piece] })),
  });
  if (plan.kind === 'sheets' && rest.kind === 'sheets') {
    const held = kept(plan.sheets);
    const sheets = [...held, ...rest.sheets.map((sheet) => ownSheet(sheet, stock, pieces))];
    return { kind: 'sheets', ...common(sheets, held), sheets };
  }
  if (plan.kind === 'bars' && rest.kind === 'bars') {
    const held = kept(plan.bars);
    const bars = [...held, ...rest.bars.map((bar) => ownBar(bar, stock, pieces))];
    return { kind: 'bars', ...common(bars, held), bars };
  }
  throw new Error(`a rest of ${rest.kind} does not belong to a plan of ${plan.kind}`);
}

/** What is too large for the stock of the rest, but not for what the locked ones have used up, has no stock left. */
function inWhole(problem: CutProblem, held: readonly { readonly stock: number }[], one: Unplaced): Unplaced {
  if (one.why !== 'larger than any stock' && one.why !== 'fits no stock with the grain, stages and longest cut given')
    return one;
  return held.some(({ stock }) => holds(problem, stock, one.piece)) ? { ...one, why: 'no stock left' } : one;
}

/** Noise of sums, mm. */
const NOISE = 1e-6;

/** Whether a piece is no larger than a stock within its trimmed ends or edges. */
function holds(problem: CutProblem, stock: number, piece: number): boolean {
  if (problem.kind === 'bars') {
    const { length, trim = problem.trim } = problem.stock[stock];
    return problem.pieces[piece].length <= length - 2 * trim + NOISE;
  }
  const { length, width, turnable = false } = problem.pieces[piece];
  const sheet = usable(problem, stock);
  const lies = (along: number, up: number): boolean => along <= sheet.length + NOISE && up <= sheet.width + NOISE;
  return lies(length, width) || (turnable && lies(width, length));
}

/** A sheet of the rest in the numbers of the whole problem. */
function ownSheet(sheet: CutSheet, stock: readonly number[], pieces: readonly number[]): CutSheet {
  const own = (tree: CutSheet['tree']): CutSheet['tree'] => {
    if (tree.kind === 'left') return tree;
    if (tree.kind === 'piece') return { ...tree, piece: pieces[tree.piece] };
    return { ...tree, parts: tree.parts.map(own) };
  };
  return {
    stock: stock[sheet.stock],
    tree: own(sheet.tree),
    pieces: sheet.pieces.map((placed) => ({ ...placed, piece: pieces[placed.piece] })),
    stages: sheet.stages,
  };
}

const ownBar = (bar: CutBar, stock: readonly number[], pieces: readonly number[]): CutBar => ({
  ...bar,
  stock: stock[bar.stock],
  pieces: bar.pieces.map((placed) => ({ ...placed, piece: pieces[placed.piece] })),
});
