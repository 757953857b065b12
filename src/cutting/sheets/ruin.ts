import type { Cells } from './cell';
import { chanceOf } from './chance';
import { type Cheapening, cheapening } from './cheapen';
import { firstCells } from './first';
import { gathering } from './gather';
import { knownOf } from './known';
import { type Merits, NOISE } from './merits';
import type { Scaled } from './scaled';
import { simplerSheet } from './simpler';

/** A search among ways of cutting by ruin and recreate, which has one from the start. */
export interface RuinSearch {
  /** The best so far; a new object when it has become better. */
  readonly best: Cells;
  readonly merits: Merits;
  /** About 10 ms of work. False when there is nothing left to better, as far as it can know. */
  step(): boolean;
  /** Takes over a way of cutting found elsewhere, where it is better. */
  offer(cells: Cells): void;
  /** Nothing costs less than this. */
  stopAt(bound: number): void;
  /** Sheets where the search stands now: not all pieces are on them, but they are well filled. */
  current(): Cells;
}

export interface RuinMeans {
  readonly seed: number;
  /** A way of cutting to begin with. */
  readonly from?: Cells;
}

/** One step in so many is for the lesser merits while the cost may still fall: at first, and later. */
const LESSER_FIRST = 20;
const LESSER = 6;
/** Steps after which it is later. */
const FIRST_STEPS = 100;
/** Steps without anything better after which it ends, once the cost is at its bound. */
const ENOUGH = 300;

export function startRuin(scaled: Scaled, { seed, from }: RuinMeans): RuinSearch {
  const chance = chanceOf(seed);
  const known = knownOf(scaled, firstCells(scaled));
  if (from) known.take(from);
  const nothing = scaled.kinds.length === 0;
  let cheapen: Cheapening | undefined;
  const gather = gathering(known, chance);
  let simplified: Cells | undefined;
  let sheet = 0;
  let steps = 0;
  let lesser = 0;
  let idle = 0;

  /** The next sheet of the best in fewer stages; false when all were tried. */
  function simplify(): boolean {
    if (simplified !== known.best) {
      simplified = known.best;
      sheet = 0;
    }
    if (sheet >= simplified.length) return false;
    const cells = simplerSheet(scaled, simplified, sheet, chance);
    if (cells && known.take(cells)) simplified = known.best;
    else sheet++;
    return true;
  }

  return {
    get best() {
      return known.best;
    },
    get merits() {
      return known.merits;
    },
    step() {
      if (nothing) return false;
      const before = known.best;
      const { missing, cost } = known.merits;
      const least = missing === 0 && cost <= known.bound + NOISE;
      steps++;
      if (least || steps % (steps > FIRST_STEPS ? LESSER : LESSER_FIRST) === 0) {
        if (++lesser % 2 === 0 || !simplify()) gather();
      } else {
        cheapen ??= cheapening(known, chance);
        cheapen.step();
      }
      idle = known.best === before ? idle + 1 : 0;
      return !least || idle < ENOUGH;
    },
    offer: known.take,
    stopAt(bound) {
      known.bound = Math.max(known.bound, bound);
    },
    current: () => cheapen?.cells() ?? known.best,
  };
}
