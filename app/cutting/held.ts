import type { AnyCutPlan, CutBatch } from '../../src/vocabulary/cut-plan';
import type { Stand } from '../workers/messages';
import { type Copies, freshCopies } from './copies';

/** A plan as it is shown: of which batch, and which part each piece of it is. */
export interface Shown {
  readonly batch: CutBatch;
  readonly plan: AnyCutPlan;
  readonly copies: Copies;
}

/** A batch with all that is known of its cutting. Plain data: what was can be put back. */
export interface Held {
  readonly batch: CutBatch;
  /** Its problem as text, to tell whether it has changed. */
  readonly key: string;
  /** The number under which the worker has it. */
  readonly revision: number;
  /** Until the new problem's first plan is there, the old one's stays in sight; null before there is any. */
  readonly shown: Shown | null;
  /** What was shown before the last thing that was done: the change since is said. */
  readonly before: Shown | null;
  readonly stand: Stand | 'waiting' | 'by hand' | 'failed';
  /** Work done by the search, and allowed to it, ms. */
  readonly spent: number;
  readonly allowed: number;
  readonly why?: string;
  /** Sheets or bars that are cut already, by their places in the plan. */
  readonly locked: readonly number[];
  /** The plan's bound holds only together with what was cut when it was made. */
  readonly boundByCut?: boolean;
  /** All of it is cut, and its leftovers have gone into the rack. */
  readonly done: boolean;
  /** What was cut of it before its parts changed can't be counted any more. */
  readonly unlocked: boolean;
  /** The batch as it is wanted by now, where only stock or ways of cutting have changed since sheets were cut: planning anew minds it. */
  readonly newer?: CutBatch;
  /** Taken up before anybody looks: its quick plan is made and bettered for a moment, and then it waits. */
  readonly ahead?: true;
}

export const keyOf = ({ problem }: CutBatch): string => JSON.stringify(problem);

/** What must be alike for a sheet cut by one problem to serve another: the pieces and how they are cut, not the stock. */
export const piecesKey = ({ problem, marks }: CutBatch): string =>
  JSON.stringify([problem.kind, problem.kerf, problem.pieces, marks]);

export const freshHeld = (batch: CutBatch, revision: number, allowed: number): Held => ({
  batch,
  key: keyOf(batch),
  revision,
  shown: null,
  before: null,
  stand: 'waiting',
  spent: 0,
  allowed,
  locked: [],
  done: false,
  unlocked: false,
});

export const shownOf = (batch: CutBatch, plan: AnyCutPlan, copies: Copies = freshCopies(plan)): Shown => ({
  batch,
  plan,
  copies,
});

/** The search is at it, or about to be. */
export const atWork = ({ stand }: Held): boolean => stand === 'waiting' || stand === 'first' || stand === 'bettering';
