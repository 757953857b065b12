import type { Box } from '../../base/box';
import type { BackBay, Carcass } from '../../vocabulary/carcass';
import type { DecisionsOf } from '../../vocabulary/field';
import type { RodRun } from '../../vocabulary/rod';
import { dividedBy } from './divide';
import type { fields } from './fields';

export type Decisions = DecisionsOf<typeof fields>;

/** What the fronts of a bay fill: on the posts, from the middle of one to the middle of the next less half a gap; between them, less a gap. */
export interface InBay {
  readonly run: RodRun;
  readonly bay: BackBay;
  readonly carcass: Carcass;
  readonly field: Box;
  /** Height between the rails, where stops stand. */
  readonly low: number;
  readonly high: number;
  /** How much of a front lies on a post; or of a stop on the side of its post, or of a front on its stop, whichever is less. */
  readonly hold: number;
}

/** Works out the field of a bay. `thickness` of a front, `stop`: its thickness is the side that a front shuts against. mm. */
export function fieldOf(
  { lie, gap, floor }: Decisions,
  carcass: Carcass,
  run: RodRun,
  bay: BackBay,
  thickness: number,
  stop: { readonly thickness: number; readonly width: number },
): InBay {
  const { face, depth, back, worktop } = carcass;
  const top = worktop ? worktop.high - worktop.thickness : carcass.high;
  const [low, high] = [Math.max(bay.low, carcass.low), bay.high];
  if (lie === 'inset') {
    const field = {
      ...{ from: bay.from + gap, to: bay.to - gap, low: Math.max(low + gap, floor), high: high - gap },
      ...{ back, front: back + thickness },
    };
    // By the depth of the post, the side of the stop; and two stops must leave room between them, and before the front frame.
    const hold = Math.min(
      depth - thickness,
      stop.thickness - gap,
      (bay.to - bay.from) / 2 - stop.thickness,
      carcass.front - back - thickness - stop.width,
    );
    return { run, bay, carcass, low, high, field, hold };
  }
  const hold = (face - gap) / 2;
  const field = {
    ...{ from: bay.from - hold, to: bay.to + hold, low: Math.max(carcass.low + gap, floor), high: top - gap },
    ...{ back: back - thickness, front: back },
  };
  return { run, bay, carcass, low, high, field, hold };
}

/** Doors side by side from left to right, drawers one above the other from below. */
export function frontsOf(field: Box, purpose: 'doors' | 'drawers', count: number, gap: number): readonly Box[] {
  return purpose === 'doors'
    ? dividedBy(field.from, field.to - field.from, count, gap).map(({ from, to }) => ({ ...field, from, to }))
    : dividedBy(field.low, field.high - field.low, count, gap).map(({ from, to }) => ({
        ...field,
        low: from,
        high: to,
      }));
}
