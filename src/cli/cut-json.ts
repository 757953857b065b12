import type { AnyCutPlan, CutBar, CutSheet } from '../vocabulary/cut-plan';
import type { BarProblem, CutProblem } from '../vocabulary/cut-problem';
import type { Issue } from '../vocabulary/result';
import type { Searched } from './cut-for';
import { dealer, type Marks } from './marks';

/** What was cut: a problem, how it was searched, what it gave. */
export interface CutDone extends Searched {
  readonly problem: CutProblem;
  readonly seed: number;
  readonly warnings: readonly Issue[];
}

/**
 * A plan with all that is needed to check it without the problem at hand: sizes and prices of the stock, names and places of the pieces (`piece` and `stock`
 * are places in the problem's lists), of a job the marks of each copy's parts, of bars the saw's places in order, of sheets the tree of cuts.
 */
export function cutData({ problem, plan, seed, steps, warnings }: CutDone, marks: Marks = []) {
  const { kind, kerf, trim } = problem;
  const { cost, bound, proven } = plan;
  const used = plan.used.map(({ stock, count }) => ({ stock, ...problem.stock[stock], count }));
  const unplaced = plan.unplaced.map((one) => ({ name: problem.pieces[one.piece]?.name, ...one }));
  return {
    kind,
    kerf,
    trim,
    cost,
    bound,
    proven,
    seed,
    steps,
    used,
    unplaced,
    warnings,
    ...cutsOf(problem, plan, dealt(marks)),
  };
}

type Named = <P extends { readonly piece: number }>(
  problem: CutProblem,
  placed: P,
) => P & { name?: string; marks?: readonly string[] };

/** Names placed pieces: each copy with the marks of the parts in it, where there are any. */
function dealt(marks: Marks): Named {
  const next = dealer(marks);
  return (problem, placed) => ({ name: problem.pieces[placed.piece]?.name, marks: next(placed.piece), ...placed });
}

function cutsOf(problem: CutProblem, plan: AnyCutPlan, named: Named) {
  return plan.kind === 'bars' && problem.kind === 'bars'
    ? { bars: plan.bars.map((bar) => barData(problem, bar, named)) }
    : { sheets: plan.kind === 'sheets' ? plan.sheets.map((sheet) => sheetData(problem, sheet, named)) : [] };
}

const sizes = ({ stock }: CutProblem, index: number) => {
  const { count: _, ...one } = stock[index]!;
  return one;
};

function barData(problem: BarProblem, { stock, pieces, offcut }: CutBar, named: Named) {
  return {
    stock,
    ...sizes(problem, stock),
    pieces: pieces.map((piece) => named(problem, piece)),
    cuts: sawPlaces(problem, { stock, pieces }),
    offcut,
  };
}

/**
 * Where the saw cuts, mm from the bar's left end, in order: the side of the kerf towards the piece it frees – before a piece that doesn't begin where one has
 * just been cut off, and after each that doesn't end with the bar. Of slanted ends the outermost point counts.
 */
function sawPlaces({ stock: all, kerf }: BarProblem, { stock, pieces }: CutBar): readonly number[] {
  const { length } = all[stock]!;
  const places: number[] = [];
  let free = 0;
  for (const piece of pieces) {
    // Slanted ends reach into one another: then the cut before has freed this end too.
    if (piece.at > free + NOISE) places.push(piece.at);
    const end = piece.at + piece.length;
    if (end < length - NOISE) places.push(end);
    free = end + kerf;
  }
  return places;
}

/** Sums of tenths come out this far off, at the most. */
const NOISE = 1e-6;

function sheetData(problem: CutProblem, { stock, stages, pieces, tree }: CutSheet, named: Named) {
  return {
    stock,
    ...sizes(problem, stock),
    stages,
    pieces: pieces.map((piece) => named(problem, piece)),
    tree,
  };
}

/** JSON, indented, with an end of line. */
export const asJson = (data: unknown): string => `${JSON.stringify(data, null, 2)}\n`;
