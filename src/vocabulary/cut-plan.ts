import type { BarTurn, CutProblem } from './cut-problem';

/*
 * How stock is cut. `stock` and `piece` are places in the problem's lists. Bars are measured from their left end, sheets from one corner,
 * x along the length and y along the width, before any trimming.
 */

interface CutPlan {
  /** Of all stock used, in the problem's money. */
  readonly cost: number;
  /** No plan for the pieces that are placed can cost less. */
  readonly bound: number;
  /** The cost meets the bound. */
  readonly proven: boolean;
  readonly used: readonly { readonly stock: number; readonly count: number }[];
  /** What could not be placed, and why. */
  readonly unplaced: readonly Unplaced[];
}

export interface Unplaced {
  readonly piece: number;
  readonly quantity: number;
  readonly why:
    | 'larger than any stock'
    /** Some stock is large enough, but not the way round that the grain wants it, or not with the stages or the saw given. */
    | 'fits no stock with the grain, stages and longest cut given'
    | 'no stock left'
    | 'its set fits no stock';
}

/** A piece on a bar: `at` is its foremost point, `length` as the problem has it. */
export interface PlacedOnBar {
  readonly piece: number;
  readonly at: number;
  readonly length: number;
  readonly turn?: BarTurn;
}

export interface CutBar {
  readonly stock: number;
  /** From left to right. */
  readonly pieces: readonly PlacedOnBar[];
  /** What is left at the right end, clear of the last kerf and of the trim, where it can be used again. */
  readonly offcut?: { readonly at: number; readonly length: number };
}

export interface BarPlan extends CutPlan {
  readonly kind: 'bars';
  readonly bars: readonly CutBar[];
}

export interface Rect {
  readonly x: number;
  readonly y: number;
  /** Along x. */
  readonly length: number;
  /** Along y. */
  readonly width: number;
}

/** A piece on a sheet; turned: its length lies along y. */
export interface PlacedOnSheet extends Rect {
  readonly kind: 'piece';
  readonly piece: number;
  readonly turned: boolean;
}

export interface Leftover extends Rect {
  readonly kind: 'left';
  /** Large enough to go into the rack. */
  readonly reusable: boolean;
}

/**
 * A rectangle parted by cuts from edge to edge, all in one direction. `along` the length: its parts lie one above the other in y; `across`:
 * side by side in x. Parts are in order, a kerf between neighbours; what remains after the last one is less than a kerf: sawdust.
 */
export interface Parted extends Rect {
  readonly kind: 'cut';
  readonly way: 'along' | 'across';
  readonly parts: readonly CutTree[];
}

export type CutTree = Parted | PlacedOnSheet | Leftover;

export interface CutSheet {
  readonly stock: number;
  /** Of the sheet within its trimmed edges. */
  readonly tree: CutTree;
  /** The pieces of the tree, for who doesn't care how they are cut. */
  readonly pieces: readonly PlacedOnSheet[];
  /** How often the direction of cutting changes, counting the first, and cuts that only trim a piece to its size too. */
  readonly stages: number;
}

export interface SheetPlan extends CutPlan {
  readonly kind: 'sheets';
  readonly sheets: readonly CutSheet[];
}

export type AnyCutPlan = BarPlan | SheetPlan;

/**
 * A search that has a whole plan from the start and betters it for as long as it is asked. It goes the same way for the same problem and
 * seed: the clock only says where on that way one stops.
 */
export interface CutSearch<Plan extends AnyCutPlan = AnyCutPlan> {
  /** The best so far; a new object when it has become better, or its bound has. */
  readonly best: Plan;
  /** Works for a short while (aim: 10 ms, never much over 50). False when there is nothing left to better. */
  step(): boolean;
  /** Frees what the solver holds. The best stays; no step after that. */
  dispose(): void;
}

/** Parts of a job cut from one stuff: the problem, and who its pieces and stock are. */
export interface CutBatch {
  /** Stable: the stuff's id in the stock book, with a width where blanks are ordered to width. */
  readonly id: string;
  readonly name: string;
  readonly problem: CutProblem;
  /** Bars too wide for the mitre saw, as tops are, are cut at the panel saw or along a guide. */
  readonly saw?: 'panel saw';
  /** For each piece of the problem, for each copy of it, the marks of the parts in it: one, or several where blocks are run as a strip. */
  readonly marks: readonly (readonly (readonly string[])[])[];
  /** For each stock of the problem: the item of the stock book, or the mark of the offcut. */
  readonly from: readonly { readonly item?: string; readonly offcut?: string }[];
}

/** A piece left over from an earlier job. Kept with the user. A bar has no width. */
export interface Offcut {
  /** Pencilled on it. */
  readonly mark: string;
  /** Id of the stuff in the stock book. */
  readonly material: string;
  readonly length: number;
  readonly width?: number;
  readonly note?: string;
}
