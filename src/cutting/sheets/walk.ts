import type { Chance } from './chance';
import { felling } from './fell';
import { type Criterion, type Fit, fitOf } from './fit';
import type { Forest } from './forest';
import { type Plant, plantOf } from './plant';
import type { Order } from './sizes';

/** What a walk is after: the less the value, the better. */
export interface Aim {
  /** The sheets may cost so much together. */
  budget: number;
  /** Sheets of each that may be used; absent: as many as there are. */
  caps?: Int32Array;
  value(): number;
  /** The most missing area with which a value can be reached: beyond it, a step is given up early. */
  mostMissing(value: number): number;
}

export const WALKING = {
  history: 1000,
  blink: 0.02,
  flip: 0.03,
  patience: 1e9,
  bump: 0.03,
  orders: ['area', 'area', 'area', 'long', 'chance'] as Order[],
  criteria: ['squares'] as Criterion[],
};

/** A walk through ways of cutting, by ruin and recreate. */
export interface Walk {
  readonly fit: Fit;
  readonly plant: Plant;
  /** Of where one stands. */
  readonly value: number;
  /** Goes on from what the forest is now. */
  begin(aim: Aim): void;
  /** One step; true when it was taken. */
  step(): boolean;
}

/**
 * Ruin and recreate (Schrimpf et al., Journal of Computational Physics 159, 2000) over guillotine trees, as by Gardeyn & Wauters (European
 * Journal of Operational Research 301, 2022), with late acceptance (Burke & Bykov, European Journal of Operational Research 258, 2017): a
 * step is taken when it is no worse than where one stands, or stood some steps ago.
 */
export function walkOf(forest: Forest, chance: Chance): Walk {
  const fit = fitOf(forest, chance);
  const plant = plantOf(forest, fit, chance);
  const fell = felling(forest, chance);
  const history = new Float64Array(WALKING.history);
  let aim: Aim | undefined;
  let at = 0;
  let least = 0;
  let since = 0;
  const some = <T>(all: readonly T[]): T => all[chance.below(all.length)];

  const walk = {
    fit,
    plant,
    value: 0,
    begin(next: Aim) {
      aim = next;
      walk.value = next.value();
      history.fill(walk.value);
      least = walk.value;
      since = 0;
    },
    step() {
      if (!aim) return false;
      forest.mark();
      fell();
      at = at + 1 === history.length ? 0 : at + 1;
      const worst = Math.max(walk.value, history[at]);
      const whole = plant({
        order: some(WALKING.orders),
        criterion: some(WALKING.criteria),
        blink: WALKING.blink,
        flip: WALKING.flip,
        choice: chance.below(2) === 0 ? 'chance' : 'cheapest',
        budget: aim.budget,
        caps: aim.caps,
        most: aim.mostMissing(worst),
      });
      const value = whole ? aim.value() : Number.POSITIVE_INFINITY;
      const taken = value <= worst;
      if (taken) walk.value = value;
      else forest.takeBack();
      if (walk.value < history[at]) history[at] = walk.value;
      if (walk.value < least - 1e-9) {
        least = walk.value;
        since = 0;
      } else if (++since > WALKING.patience) {
        history.fill(walk.value + WALKING.bump);
        least = walk.value;
        since = 0;
      }
      return taken;
    },
  };
  return walk;
}
