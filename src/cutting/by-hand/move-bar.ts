import type { BarPlan, CutBar, PlacedOnBar } from '../../vocabulary/cut-plan';
import type { BarProblem, BarTurn } from '../../vocabulary/cut-problem';
import { gapBetween, kerfFactor } from '../bars/ends';
import { LEAST_BAR } from '../least-offcut';
import { endsOf } from '../set-ups/planes';
import { nameOf, withBars } from './account';
import { type Answer, refuse } from './answer';
import type { MoveOptions } from './move-sheet';

/** A piece in the list of a bar's pieces. */
export interface OnBar {
  readonly bar: number;
  readonly index: number;
}

/** Before which of the pieces of that bar it is to lie (of those that are there without it), and how. The bar after the last one is a new one of the stock. */
export interface ToBar extends OnBar {
  /** Absent: as it lies now; null: unturned. */
  readonly turn?: BarTurn | null;
  readonly stock?: number;
}

/** Noise of sums, mm. */
const NOISE = 1e-6;

/** The plan with one piece in another bar or order, pieces pushed together to the left; or why it can't lie there. */
export function moveOnBars(
  problem: BarProblem,
  plan: BarPlan,
  from: OnBar,
  to: ToBar,
  { locked = [] }: MoveOptions = {},
): Answer<BarPlan> {
  const moved = plan.bars[from.bar].pieces[from.index];
  const name = nameOf(problem, moved.piece);
  const { together } = problem.pieces[moved.piece];
  const turn = to.turn === undefined ? moved.turn : (to.turn ?? undefined);
  if (locked.includes(from.bar) || locked.includes(to.bar)) return refuse('cut already', 'that bar is cut already');
  if (turn && turn !== moved.turn && !problem.section?.turns.includes(turn))
    return refuse('turn', `${name} can't be ${turn}: the section would not be the same`);
  const others = (bar: number): readonly PlacedOnBar[] =>
    (plan.bars[bar]?.pieces ?? []).filter((_, i) => bar !== from.bar || i !== from.index);
  if (
    together !== undefined &&
    to.bar !== from.bar &&
    others(from.bar).some((p) => problem.pieces[p.piece].together === together)
  )
    return refuse('set', `the pieces of "${together}" come from one bar`);
  const stock = plan.bars[to.bar]?.stock ?? to.stock;
  if (stock === undefined || (!plan.bars[to.bar] && !isLeft(problem, plan, stock)))
    return refuse('no stock left', 'there is no such bar left');
  const row = [...others(to.bar)];
  const { piece, length } = moved;
  row.splice(to.index, 0, turn ? { piece, at: 0, length, turn } : { piece, at: 0, length });
  const cut = barOf(problem, stock, row);
  if (cut.over > NOISE) {
    const over = Math.ceil(cut.over * 10 - NOISE) / 10;
    return refuse('off the stock', `the bar is ${over} mm too short for ${name} as well`);
  }
  const left = from.bar === to.bar ? undefined : barOf(problem, plan.bars[from.bar].stock, others(from.bar)).bar;
  const bars = plan.bars.map((old, i) => (i === to.bar ? cut.bar : i === from.bar ? (left ?? old) : old));
  if (to.bar >= bars.length) bars.push(cut.bar);
  return { plan: withBars(problem, plan, bars) };
}

const isLeft = ({ stock }: BarProblem, { bars }: BarPlan, index: number): boolean => {
  const used = bars.reduce((sum, bar) => sum + (bar.stock === index ? 1 : 0), 0);
  return index in stock && used < (stock[index].count ?? Number.POSITIVE_INFINITY);
};

/** A bar with pieces in this order, as near to one another as their ends let them, and how much too long they are. */
function barOf(
  problem: BarProblem,
  stock: number,
  row: readonly PlacedOnBar[],
): { readonly bar: CutBar; readonly over: number } {
  const { kerf, section = { width: 0, thickness: 0 }, leastOffcut = LEAST_BAR } = problem;
  const { length: whole, trim = problem.trim } = problem.stock[stock];
  const pieces: PlacedOnBar[] = [];
  let at = trim;
  let kerfAfter = kerf;
  row.forEach((placed, i) => {
    const [left] = endsOf(problem.pieces[placed.piece].ends, placed.turn);
    if (i > 0) {
      const [, right] = endsOf(problem.pieces[row[i - 1].piece].ends, row[i - 1].turn);
      at += gapBetween(right, left, kerf, section.width, section.thickness);
    }
    pieces.push({ ...placed, at });
    at += placed.length;
    kerfAfter = kerf * kerfFactor(endsOf(problem.pieces[placed.piece].ends, placed.turn)[1]);
  });
  const start = at + kerfAfter;
  const length = whole - trim - start;
  const offcut = length >= leastOffcut ? { at: start, length } : undefined;
  return { bar: offcut ? { stock, pieces, offcut } : { stock, pieces }, over: at - (whole - trim) };
}
