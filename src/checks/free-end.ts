import type { Finding } from '../vocabulary/finding';
import type { Rod, RodRun } from '../vocabulary/rod';

/** Ends that stand free show the ends of frame and skin; a return closes them with a panel, its own pillar and mitres. */
export function openEnds({ rod }: { readonly rod: Rod }): readonly Finding[] {
  return rod.runs.flatMap((run): readonly Finding[] =>
    run.jobIndex === null
      ? []
      : (['left', 'right'] as const).flatMap((side) =>
          run[side].kind === 'free' && !run[side].flap ? [open(run, side)] : [],
        ),
  );
}

const open = (run: RodRun, side: 'left' | 'right'): Finding => ({
  severity: 'note',
  rule: 'free-end-open',
  subject: { run: run.id, path: `/unit/plan/${side}End` },
  message: `The ${side} end of run ${run.id} stands free: the ends of its frame and skin will show.`,
  source: 'common practice, no source',
  remedy: 'Close it with a return, which brings a panel with its own pillar and mitres; or face it on site.',
});
