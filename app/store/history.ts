import type { Job } from '../../src/vocabulary/job';

/** Something done beside the job, to what the user keeps or to a plan that is made of it: how it is taken back, and done again. */
export interface Deed {
  undo(): void;
  redo(): void;
}

/** One edit that can be undone: what it was, and the job before and after it. Jobs share all that an edit leaves alone. */
export interface Step {
  readonly label: string;
  readonly before: Job;
  readonly after: Job;
  /** What was done instead of an edit: then the job is the same before and after it. */
  readonly deed?: Deed;
}

/** How many steps are kept; the oldest is forgotten first. 500 covers a day at the board (an estimate, no source). */
export const MOST_STEPS = 500;

/** The past with one more step, no longer than `MOST_STEPS`. */
export function withStep(past: readonly Step[], step: Step): readonly Step[] {
  return [...past.slice(Math.max(0, past.length + 1 - MOST_STEPS)), step];
}
