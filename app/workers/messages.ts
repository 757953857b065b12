import type { LengthUnits } from '../../src/base/lengths';
import type { PlannedBatch } from '../../src/cut';
import type { AnyCutPlan } from '../../src/vocabulary/cut-plan';
import type { CutProblem } from '../../src/vocabulary/cut-problem';
import type { Part } from '../../src/vocabulary/part';
import type { BarCuts, Settings, SheetCuts } from '../../src/vocabulary/set-up';
import type { TypedList, TypedRead } from '../cutting/typed';

/*
 * What the page and the worker say to one another. What is about one batch bears its id and the revision of its problem: what comes late,
 * about a problem that has changed since, is known by it and dropped.
 */

/** A batch as it stood when it was asked about. */
export interface About {
  readonly batch: string;
  readonly revision: number;
}

/** What is worked out away from the page besides plans. An answer bears the number of its question. */
export type Question =
  /** All cuts of batches with their plans by what is set for them; `blockKerf`: of the saw that parts moulded strips. */
  | {
      readonly what: 'settings';
      readonly planned: readonly PlannedBatch[];
      readonly parts: readonly Part[];
      readonly blockKerf: number;
    }
  /** The same plans in such an order that the saws are set less often. */
  | { readonly what: 'rearranged'; readonly planned: readonly PlannedBatch[] }
  /** The cuts of one sheet or bar. */
  | { readonly what: 'cuts'; readonly problem: CutProblem; readonly plan: AnyCutPlan; readonly index: number }
  /** A list as it is typed. */
  | { readonly what: 'list'; readonly list: TypedList; readonly units: LengthUnits };

export type Reply =
  | { readonly what: 'settings'; readonly settings: Settings }
  | { readonly what: 'rearranged'; readonly planned: readonly PlannedBatch[] }
  | { readonly what: 'cuts'; readonly cuts: SheetCuts | BarCuts | undefined }
  | { readonly what: 'list'; readonly read: TypedRead };

export interface Asked {
  readonly say: 'ask';
  readonly number: number;
  readonly question: Question;
}

export type Order =
  | Asked
  /**
   * A plan for this problem, bettered for so many milliseconds of work. `ahead`: nobody looks until it is told to go on, and it is worked on
   * with rests. What was asked of the batch before is forgotten.
   */
  | (About & {
      readonly say: 'plan';
      readonly problem: CutProblem;
      readonly seed: number;
      readonly ms: number;
      readonly ahead?: boolean;
    })
  /** So much more work on it. */
  | (About & { readonly say: 'go on'; readonly ms: number })
  /** No more work on it; it can go on later. */
  | (About & { readonly say: 'stop' })
  /** It is no longer wanted. */
  | (About & { readonly say: 'forget' })
  /** It is being looked at: it comes before the others. */
  | (About & { readonly say: 'first' });

/**
 * How far the search is. `first`: the quick plan, a search still to come; `bettering`: at it; `done`: nothing left to better; `time`:
 * the time is over; `stopped`: by hand.
 */
export type Stand = 'first' | 'bettering' | 'done' | 'time' | 'stopped';

export type Answer =
  /** The worker has been loaded. */
  | { readonly say: 'ready' }
  | (About & {
      readonly say: 'plan';
      /** Left out where it is the one that was sent before. */
      readonly plan?: AnyCutPlan;
      readonly stand: Stand;
      /** Work done on it so far, ms. */
      readonly spent: number;
    })
  | { readonly say: 'told'; readonly number: number; readonly reply: Reply }
  /** A question could not be answered. */
  | { readonly say: 'at a loss'; readonly number: number; readonly why: string }
  /** The solver of linear programs can't be had: the plans are good all the same, but less is proven. */
  | { readonly say: 'no solver'; readonly why: string }
  /** It can be had after all. */
  | { readonly say: 'solver' }
  /** Nothing more comes about this batch. */
  | (About & { readonly say: 'trouble'; readonly why: string });
