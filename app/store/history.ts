import { apply, type Patches } from 'mutative';
import type { Job } from '../../src/vocabulary/job';

/** One edit that can be undone: what it was, and the patches there and back. */
export interface Step {
  readonly label: string;
  readonly redo: Patches;
  readonly undo: Patches;
}

/** How many steps are kept; the oldest is forgotten first. 500 covers a day at the board (an estimate, no source). */
export const MOST_STEPS = 500;

const pathOf = (path: string | readonly (string | number)[]): string => JSON.stringify(path);

/** Both steps set the same places and nothing else, so the later one alone says it all. */
function sameReplacements(a: Patches, b: Patches): boolean {
  if (a.length !== b.length) return false;
  return a.every((patch, i) => {
    const other = b[i];
    return patch.op === 'replace' && other?.op === 'replace' && pathOf(patch.path) === pathOf(other.path);
  });
}

/**
 * Two steps of one gesture as one. A drag that sets the same numbers a thousand times stays as small as one step.
 */
export function joined(first: Step, second: Step): Step {
  if (sameReplacements(first.redo, second.redo) && sameReplacements(first.undo, second.undo)) {
    return { label: second.label, redo: second.redo, undo: first.undo };
  }
  return { label: second.label, redo: [...first.redo, ...second.redo], undo: [...second.undo, ...first.undo] };
}

/** The past with one more step, no longer than `MOST_STEPS`. */
export function withStep(past: readonly Step[], step: Step): readonly Step[] {
  return [...past.slice(Math.max(0, past.length + 1 - MOST_STEPS)), step];
}

/** The job before a step that has just been taken. */
export const before = (job: Job, step: Step): Job => apply(job, step.undo);

/** The job after a step that had been undone. */
export const after = (job: Job, step: Step): Job => apply(job, step.redo);
