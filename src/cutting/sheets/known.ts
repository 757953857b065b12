import type { Cells } from './cell';
import { cellsOf } from './cells-of';
import type { Forest } from './forest';
import { isBetter, type Merits, meritsOf } from './merits';
import type { Scaled } from './scaled';
import { keepWholeSets } from './sets';
import type { Walk } from './walk';

/** The best that is known, shared by the searches that better it. */
export interface Known {
  readonly scaled: Scaled;
  readonly best: Cells;
  readonly merits: Merits;
  /** Nothing costs less. */
  bound: number;
  /** Takes over what is better; true when it was. */
  take(cells: Cells): boolean;
}

export function knownOf(scaled: Scaled, start: Cells): Known {
  const known = {
    scaled,
    best: start,
    merits: meritsOf(scaled, start),
    bound: 0,
    take(cells: Cells) {
      const merits = meritsOf(scaled, cells);
      if (!isBetter(merits, known.merits)) return false;
      known.best = cells;
      known.merits = merits;
      return true;
    },
  };
  return known;
}

/** Takes over what stands in the forest of a walk, without the sets of which a piece is missing. */
export function takeFrom(forest: Forest, { plant }: Walk, known: Known): boolean {
  if (forest.scaled.sets.length === 0 || forest.tally.missing === 0) return known.take(cellsOf(forest));
  const saved = forest.save();
  const how = {
    order: 'area',
    criterion: 'squares',
    blink: 0,
    flip: 0,
    choice: 'cheapest',
    budget: Number.POSITIVE_INFINITY,
  } as const;
  forest.unmarked();
  keepWholeSets(forest, (without) => plant({ ...how, without }));
  const taken = known.take(cellsOf(forest));
  forest.restore(saved);
  return taken;
}

/** Work of one step of a search, in places looked at: about 10 ms. */
const WORK = 1_000_000;
/** Steps of a walk in it, at most. */
const STEPS = 5_000;

/**
 * Walks for about 10 ms; `taken` is called after each step that was taken, and says whether that was as much work as the rest of them (a whole way
 * of cutting was written down, say): then it is enough for now.
 */
export function goOn(walk: Walk, taken: () => boolean): void {
  const end = walk.fit.looked + WORK;
  for (let i = 0; i < STEPS && walk.fit.looked < end; i++) if (walk.step() && taken()) return;
}
