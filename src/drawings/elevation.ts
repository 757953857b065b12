import type { Design } from '../vocabulary/design';
import type { Drawing } from '../vocabulary/drawing';
import type { RodRun } from '../vocabulary/rod';
import type { Drawable } from './drawable';
import { framingView } from './framing-view';
import { frontView } from './front-view';

/**
 * The elevation of a run, seen square to its front: `front` as finished, `framing` with the skin off. Model mm: x along the run
 * from the left end of its frame line, y up from the finished floor. Figures in the job's units. Throws for a run that the rod has not.
 */
export function elevationOf(design: Drawable, runId: string, kind: 'front' | 'framing'): Drawing {
  const run = runOf(design, runId);
  return kind === 'front' ? frontView(design, run) : framingView(design, run);
}

/** The run of that letter; throws when there is none, naming those there are. */
export function runOf(design: Pick<Design, 'rod'>, runId: string): RodRun {
  const run = design.rod.runs.find((one) => one.id === runId);
  if (!run)
    throw new RangeError(`run '${runId}' is not on the rod; runs: ${design.rod.runs.map((one) => one.id).join(', ')}`);
  return run;
}
