import type { Chance } from './chance';
import { felling } from './fell';
import { type Fit, fitOf } from './fit';
import type { Forest } from './forest';
import { type Plant, plantOf } from './plant';
import type { Order } from './sizes';

/** What a walk is after: the less the value, in about sheets, the better. */
export interface Aim {
  /** The sheets may cost so much together. */
  budget: number;
  /** Sheets of each that may be used; absent: as many as there are. */
  caps?: Int32Array;
  value(): number;
  /** The most missing area with which a value can be reached: beyond it, a step is given up early. */
  mostMissing(value: number): number;
}

/** Values that differ by less are the same. */
const NOISE = 1e-9;
/** How many steps ago one may have stood worse. This and what follows was found by trial on the published classes of instances. */
const HISTORY = 300;
/** Steps without a better place, after which one may stand worse by so much again. */
const PATIENCE = 5_000;
const WORSE = 0.06;
/** How often one looks away from a place, and cuts off the other way. */
const BLINK = 0.05;
const FLIP = 0.15;
/** Orders of pieces, each as often as it stands here. */
const ORDERS: readonly Order[] = ['area', 'area', 'area', 'long', 'chance'];

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
  const history = new Float64Array(HISTORY);
  let aim: Aim | undefined;
  let at = 0;
  let least = 0;
  let since = 0;

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
        order: ORDERS[chance.below(ORDERS.length)],
        criterion: 'squares',
        blink: BLINK,
        flip: FLIP,
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
      if (walk.value < least - NOISE) {
        least = walk.value;
        since = 0;
      } else if (++since > PATIENCE) {
        history.fill(walk.value + WORSE);
        least = walk.value;
        since = 0;
      }
      return taken;
    },
  };
  return walk;
}
