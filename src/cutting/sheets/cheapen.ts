import type { Cells } from './cell';
import { cellsOf } from './cells-of';
import type { Chance } from './chance';
import { ON, SHEET, SHIFT } from './fields';
import { type Forest, forestOf, type Saved } from './forest';
import { goOn, type Known, takeFrom } from './known';
import { NOISE } from './merits';
import { mixesOf } from './mixes';
import { plantCells } from './plant-cells';
import { type Aim, walkOf } from './walk';

/** Small beside what is missing: what is left over had better be gathered. */
const GATHERED = 0.001;
/** Small beside what is missing, for all sheets together: where sheets are short, the cheaper ones are taken. */
const PRICE = 1e-4;
/** Steps of the search without a better place, after which it goes on with another mix of sheets. */
const PATIENCE = 20;

/** Looks for a cheaper way: the budget lies below the best, and what goes nowhere is made less, till all is placed. */
export interface Cheapening {
  step(): void;
  /** As it stands now, within the budget; not all pieces are placed. */
  cells(): Cells;
}

export function cheapening(known: Known, chance: Chance): Cheapening {
  const { scaled } = known;
  const { kinds, sheets } = scaled;
  const forest = forestOf(scaled);
  const walk = walkOf(forest, chance);
  const { tally } = forest;
  const unit = Math.max(1, ...sheets.map(({ length, width }) => length * width));
  const all = sheets.reduce((sum, { price, count }) => sum + price * count, NOISE);
  const area = kinds.reduce((sum, { length, width, quantity }) => sum + length * width * quantity, 0);
  const aim: Aim = {
    budget: Number.POSITIVE_INFINITY,
    value: () => tally.missing / unit - GATHERED * tally.gathered + (PRICE * tally.cost) / all,
    mostMissing: (value) => (value + GATHERED * forest.memory[forest.at.roots]) * unit,
  };
  let mixes: { readonly caps: Int32Array; saved?: Saved }[] = [];
  let mix = -1;
  let goal = known.merits;
  let least = Number.POSITIVE_INFINITY;
  let since = 0;

  /** Nothing costs less: below that there is nothing to begin with. */
  const isLeast = (): boolean => known.merits.missing === 0 && known.merits.cost <= known.bound + 2 * NOISE;

  /** Begins below what is known now, where there is anything. */
  function lower(): void {
    goal = known.merits;
    if (isLeast()) return;
    const whole = goal.missing === 0;
    aim.budget = whole ? goal.cost - 2 * NOISE : Number.POSITIVE_INFINITY;
    mixes = whole ? mixesOf(scaled, aim.budget, area).map((caps) => ({ caps })) : [];
    mix = -1;
    plantCells(forest, known.best);
    goTo(0);
  }

  /** Goes on with a mix of sheets where one was with it last. */
  function goTo(next: number): void {
    if (mixes.length > 1 && mix >= 0) mixes[mix].saved = forest.save();
    mix = next;
    const one = mixes.at(mix);
    aim.caps = one?.caps;
    if (one?.saved) forest.restore(one.saved);
    else keepWithin(forest, chance, aim);
    walk.begin(aim);
    least = walk.value;
    since = 0;
  }

  /** Whether a better way of cutting was taken over. */
  function taken(): boolean {
    if (walk.value < least) {
      least = walk.value;
      since = 0;
    }
    const { missing } = known.merits;
    const better = (tally.missing < missing || (missing === 0 && tally.missing === 0)) && takeFrom(forest, walk, known);
    if (better) lower();
    return better;
  }

  lower();
  return {
    step() {
      const { missing, cost } = known.merits;
      if (missing < goal.missing || cost < goal.cost - NOISE) lower();
      if (isLeast()) return;
      goOn(walk, taken);
      // The mixes with most area come up more often.
      if (++since > PATIENCE && mixes.length > 1)
        goTo(Math.min(chance.below(mixes.length), chance.below(mixes.length)));
    },
    cells: () => cellsOf(forest),
  };
}

/** Takes off sheets until those that are left keep within the budget and the numbers. */
function keepWithin(forest: Forest, chance: Chance, { budget, caps }: Aim): void {
  const { memory: M, at, tally } = forest;
  forest.unmarked();
  while (M[at.roots] > 0) {
    const over = caps ? caps.findIndex((cap, sheet) => M[at.used + sheet] > cap) : -1;
    if (over < 0 && tally.cost <= budget) return;
    const roots = Array.from(M.subarray(at.roots + 1, at.roots + 1 + M[at.roots]));
    const those = over < 0 ? roots : roots.filter((root) => M[(root << SHIFT) + SHEET] === over);
    // The emptier of two.
    const one = those[chance.below(those.length)];
    const other = those[chance.below(those.length)];
    forest.clear(M[(one << SHIFT) + ON] <= M[(other << SHIFT) + ON] ? one : other);
  }
}
