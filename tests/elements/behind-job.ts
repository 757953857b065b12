import type { BayWish, Job, Opening } from '../../src/vocabulary/job';
import { jobOf, type Said } from './job-of';

/** A bay of run 1, bay 1, as a new one is, with what a test says of it. */
export const wishOf = (said: Partial<BayWish>): BayWish => ({
  run: 1,
  bay: 1,
  panels: true,
  purpose: 'open',
  count: 2,
  shelves: 'fixed',
  width: 0,
  height: 0,
  depth: 0,
  besides: 5,
  above: 10,
  behind: 50,
  ...said,
});

/** A socket in the front of run 1, with what a test says of it: a hole of 145 × 85, its middle 430 along and 500 up. */
export const openingOf = (said: Partial<Opening> = {}): Opening => ({
  name: '',
  run: 1,
  through: 'front',
  use: 'socket',
  x: 430,
  z: 500,
  width: 145,
  height: 85,
  ...said,
});

/**
 * A counter of one bay, 1000 long between two walls, with a frame behind it. Carcass timber 38 × 63: cross frames take 38 at each end, so
 * the bay is clear from 38 to 962: 924. Top 40: carcass up to 1100 − 40 = 1060. Rear rails 63 high: clear from 63 to 997: 934. Front frame
 * 63 deep; back edge of the top at 75 − 640 = −565, posts 40 before it: clear from −63 to −525: 462.
 */
export const behindJob = (bays: readonly Partial<BayWish>[], said: Said = {}): Job =>
  jobOf({
    runs: [{ length: 1000 }],
    depth: 640,
    height: 1100,
    ...said,
    bays: bays.map(wishOf),
    elements: {
      ...said.elements,
      pillar: { rhythm: 'count', bays: 1, ...said.elements?.pillar },
      top: { overhang: 75, hardwood: 'oak-40' },
      carcass: { build: true, setBack: 40, ...said.elements?.carcass },
    },
  });
