import type { Cells } from './cell';
import { cellsOf } from './cells-of';
import { chanceOf } from './chance';
import type { Choice } from './choose-sheet';
import { ACROSS, ALONG } from './fields';
import { type Criterion, fitOf } from './fit';
import { forestOf } from './forest';
import { isBetter, type Merits, meritsOf } from './merits';
import { type Planting, plantOf } from './plant';
import { isFree, type Scaled } from './scaled';
import { keepWholeSets } from './sets';
import type { Order } from './sizes';

type Quick = Pick<Planting, 'order' | 'criterion' | 'strips'>;

/** The sheet in strips, along or across, the widest first: few stages, and the only good way where stages are limited (measured). */
const STRIPS: readonly Quick[] = [
  { order: 'width', criterion: 'area', strips: ALONG },
  { order: 'length', criterion: 'area', strips: ACROSS },
  { order: 'width', criterion: 'long', strips: ALONG },
  { order: 'length', criterion: 'squares', strips: ACROSS },
  { order: 'short', criterion: 'area', strips: ALONG },
  { order: 'long', criterion: 'area', strips: ACROSS },
];
const ORDERS: readonly Order[] = ['area', 'long', 'around', 'short', 'width', 'length'];
const CRITERIA: readonly Criterion[] = ['squares', 'short', 'area', 'long'];
const FREELY: readonly Quick[] = CRITERIA.flatMap((criterion) => ORDERS.map((order) => ({ order, criterion })));

/** Places looked at, at most, with so many more for each piece that is put in: about a tenth of a second. */
const WORK = 2.5e6;
const PUT_IN = 100;

/** The best of several quick constructive heuristics: orders of pieces × how a place is judged × which sheets are begun. */
export function firstCells(scaled: Scaled): Cells {
  const forest = forestOf(scaled);
  const chance = chanceOf(1);
  const fit = fitOf(forest, chance);
  const plant = plantOf(forest, fit, chance);
  const empty = forest.save();
  const pieces = scaled.kinds.reduce((sum, { quantity }) => sum + quantity, 0);
  const choices: readonly Choice[] = [
    'cheapest',
    ...scaled.sheets.map((_, s) => s).slice(0, scaled.sheets.length > 1 ? 4 : 0),
  ];
  let best: Cells = [];
  let merits: Merits | undefined;
  let put = 0;
  const quick = isFree(scaled) ? [...FREELY.slice(0, 3), ...STRIPS, ...FREELY.slice(3)] : [...STRIPS, ...FREELY];
  for (const one of quick)
    for (const choice of choices) {
      if (merits && fit.looked + PUT_IN * put > WORK) return best;
      put += pieces;
      forest.restore(empty);
      const how = { ...one, choice, blink: 0, flip: 0, budget: Number.POSITIVE_INFINITY };
      plant(how);
      keepWholeSets(forest, (without) => plant({ ...how, without }));
      const { missing, cost } = forest.tally;
      if (merits && (missing > merits.missing || (missing === merits.missing && cost > merits.cost))) continue;
      const cells = cellsOf(forest);
      const found = meritsOf(scaled, cells);
      if (merits && !isBetter(found, merits)) continue;
      best = cells;
      merits = found;
    }
  return best;
}
