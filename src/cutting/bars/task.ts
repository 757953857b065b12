import type { Unplaced } from '../../vocabulary/cut-plan';
import type { BarProblem } from '../../vocabulary/cut-problem';
import { LEAST_BAR } from '../least-offcut';
import { kindsOf } from './kinds';
import type { Times } from './knapsack';
import { FUZZ, type Layout, layoutOf } from './layout';
import { sourcesOf } from './sources';
import { coarseUnit, unitFor } from './units';

/** Stocks that are alike to a bar. Sizes in whole units, each bar with a kerf more than it has, for each piece has one too. */
export interface Source {
  readonly capacity: number;
  /** No bar of it holds more, with rounding and slanted ends seen at their best. */
  readonly most: number;
  /** In pence where all prices are whole pence, else in the problem's money. */
  readonly price: number;
  readonly count: number;
  /** Stocks of the problem, and how many there are of each. */
  readonly from: readonly { readonly stock: number; readonly count: number }[];
}

/** Pieces that are alike to a bar: single ones, or sets that come from one bar. */
export interface Kind {
  /** With kerf, in whole units. */
  readonly size: number;
  /** It never takes less, in whole units. */
  readonly least: number;
  /** The pieces of each copy, by their places in the problem. */
  readonly copies: readonly (readonly number[])[];
}

/** One bar's worth: where from, and how many of each kind. */
export interface Pattern {
  readonly source: number;
  readonly times: Times;
}

/** A problem in whole numbers. Kinds, the largest first, and sources, the roomiest first, don't depend on the order they were given in. */
export interface Task {
  readonly problem: BarProblem;
  readonly layout: Layout;
  readonly perMoney: number;
  readonly wholePrices: boolean;
  readonly kinds: readonly Kind[];
  readonly sources: readonly Source[];
  /** From this length on what is left is a reusable offcut, in whole units. */
  readonly leastOffcut: number;
  /** What fits no stock at all. */
  readonly unplaced: readonly Unplaced[];
  /** What fits by size truly fits, and a smaller kind may lie wherever a larger one does. */
  readonly plain: boolean;
  /** Whether a pattern truly fits its source. */
  holds(pattern: Pattern): boolean;
}

/** All the pieces of a pattern. */
export const piecesOf = (kinds: readonly Kind[], times: Times): readonly number[] =>
  times.flatMap(([kind, n]) => Array.from({ length: n }, () => kinds[kind].copies[0]).flat());

/** Makes a task of a problem. */
export function taskOf(problem: BarProblem): Task {
  const { pieces, stock, kerf } = problem;
  const layout = layoutOf(problem);
  const trims = stock.map((_, i) => 2 * layout.trim(i));
  const lengths = [kerf, ...stock.map((s) => s.length), ...trims, ...pieces.map((p) => p.length)];
  const unit = layout.square ? unitFor(lengths) : coarseUnit();
  const { sources, perMoney } = sourcesOf(problem, layout, unit);
  const { kinds, unplaced } = kindsOf(problem, layout, unit, sources);
  const plain = layout.square;
  const leastOffcut = unit.up(problem.leastOffcut ?? LEAST_BAR);
  const holds = ({ source, times }: Pattern): boolean => {
    const { capacity, from } = sources[source];
    let size = 0;
    for (const [kind, n] of times) size += kinds[kind].size * n;
    if (plain || size > capacity) return size <= capacity;
    const needed = layout.needed(piecesOf(kinds, times));
    return from.every((one) => needed <= layout.room(one.stock) + FUZZ);
  };
  return { problem, layout, perMoney, wholePrices: perMoney > 1, kinds, sources, leastOffcut, unplaced, plain, holds };
}
