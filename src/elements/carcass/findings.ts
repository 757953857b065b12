import { leftOf, tenth } from '../../base/tenth';
import type { Carcass } from '../../vocabulary/carcass';
import type { Finding } from '../../vocabulary/finding';
import type { Rod, RodRun } from '../../vocabulary/rod';
import { worktopRail } from './cross-frames';

/** A top that reaches further than this from what carries it wants support there (200–300 mm is usual for a free overhang; common practice, no source). */
const MOST_UNSUPPORTED = 300;

/** Behind an inside corner the carcasses of two runs part: the corner of the top reaches out between them. */
export function cornersOpen({ frameHeight }: Rod, run: RodRun, { back, high }: Carcass): readonly Finding[] {
  const { right } = run;
  const last = run.crossLines[run.crossLines.length - 1];
  if (right.kind !== 'corner' || right.deflectionDeg >= 0 || high < frameHeight || last?.why !== 'end') return [];
  const reach = run.length + back * right.grows - last.to;
  if (reach <= MOST_UNSUPPORTED) return [];
  return [
    {
      severity: 'note',
      rule: 'corner-unsupported',
      subject: { run: run.id },
      value: reach,
      limit: MOST_UNSUPPORTED,
      message: `Behind the inside corner of runs ${run.id} and ${right.neighbour} the top reaches ${tenth(reach)} mm beyond the last cross frame, and nothing that carries it there is worked out.`,
      source: 'common practice, no source',
      remedy: 'Stand a post under the corner of the top, with rails to both cross frames.',
    },
  ];
}

/** Between the bottom rail and the next a middle rail needs its own height, and as much again above and below. */
export function noMiddleRail(carcass: Carcass): Finding {
  const { low, high, depth } = carcass;
  const clear = (worktopRail(carcass) ?? high - depth) - low - depth;
  return {
    severity: 'note',
    rule: 'no-middle-rail',
    subject: { path: '/unit/elements/carcass/midRail' },
    value: clear,
    limit: 3 * depth,
    message: `Between bottom and next rail ${leftOf(clear)} stays clear; a middle rail wants ${tenth(3 * depth)} mm. None is made.`,
    source: 'common practice, no source',
    remedy: 'Do without it, or raise what lies above.',
  };
}

/** A recess lower than this takes no toes, mm (common practice, no source). */
export const LEAST_TOE = 30;

export const toeTooLow = (value: number): Finding => ({
  severity: 'note',
  rule: 'toe-recess-too-low',
  subject: { path: '/unit/elements/carcass/toeHeight' },
  value,
  limit: LEAST_TOE,
  message: `A recess for toes ${tenth(value)} mm high takes none; ${LEAST_TOE} mm is the least.`,
  source: 'common practice, no source',
  remedy: 'Ask for 100 to 150, or for none. It is left out.',
});
