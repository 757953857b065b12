import type { LpSolver } from '../cut';
import { startCutting } from '../cut';
import type { AnyCutPlan } from '../vocabulary/cut-plan';
import type { CutProblem } from '../vocabulary/cut-problem';

/** How long a search goes on: so many seconds, or so many steps, which is the same on every machine. */
export type Patience = { readonly seconds: number } | { readonly steps: number };

/** A plan, and after how many steps it was taken. */
export interface Searched {
  readonly plan: AnyCutPlan;
  readonly steps: number;
}

/** The clock is looked at after steps this many times further on. */
const STRIDE = 2 ** (1 / 4);
/** Never much more than the time given. */
const MOST_OVER = 1.1;

/**
 * Searches until there is nothing to better or patience is over. Where time ends it, it ends only after certain steps (… 81, 96, 114, 136, 162 …):
 * the last of them by which, as fast as it went so far, the time is not much overrun. So two runs mostly end after the same step, with the same plan, though
 * no two take quite the same time. A step that takes for ever ends it all the same.
 */
export function cutFor(problem: CutProblem, seed: number, patience: Patience, lp: LpSolver): Searched {
  const from = performance.now();
  const search = startCutting(problem, { seed, lp });
  const goesOn = 'steps' in patience ? upTo(patience.steps) : within(patience.seconds * 1000, from);
  let steps = 0;
  try {
    while (goesOn(steps)) {
      steps += 1;
      if (!search.step()) break;
    }
    return { plan: search.best, steps };
  } finally {
    search.dispose();
  }
}

const upTo =
  (most: number) =>
  (steps: number): boolean =>
    steps < most;

function within(ms: number, from: number): (steps: number) => boolean {
  let nextLook = 1;
  let begun = from;
  return (steps) => {
    const now = performance.now();
    if (now - from > ms * MOST_OVER) return false;
    if (steps === 0) {
      begun = now;
      return now - from < ms;
    }
    if (steps < nextLook) return true;
    nextLook = Math.max(steps + 1, Math.round(steps * STRIDE));
    const expected = begun - from + ((now - begun) * nextLook) / steps;
    return now - from < ms && expected <= ms * MOST_OVER;
  };
}
