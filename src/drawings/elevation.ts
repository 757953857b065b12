import type { Design } from '../vocabulary/design';
import type { Drawing } from '../vocabulary/drawing';
import type { RodRun } from '../vocabulary/rod';
import { behindView } from './behind-view';
import type { Drawable } from './drawable';
import { framingView } from './framing-view';
import { frontView } from './front-view';

/** `front` as finished, `framing` with the skin off, `behind` from where one serves. */
export type ElevationKind = 'front' | 'framing' | 'behind';

/**
 * The elevation of a run, seen square to its front. Model mm: x along the run from the left end of its frame line (from behind:
 * from the right-hand end, which is at the left there), y up from the finished floor. Figures in the job's units. Throws for a run that the rod has not.
 */
export function elevationOf(design: Drawable, runId: string, kind: ElevationKind): Drawing {
  return VIEWS[kind](design, runOf(design, runId));
}

const VIEWS = { front: frontView, framing: framingView, behind: behindView } as const satisfies Record<
  ElevationKind,
  (design: Drawable, run: RodRun) => Drawing
>;

/** The run of that letter; throws when there is none, naming those there are. */
export function runOf(design: Pick<Design, 'rod'>, runId: string): RodRun {
  const run = design.rod.runs.find((one) => one.id === runId);
  if (!run)
    throw new RangeError(`run '${runId}' is not on the rod; runs: ${design.rod.runs.map((one) => one.id).join(', ')}`);
  return run;
}
