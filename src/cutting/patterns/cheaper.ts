import type { LpSolver } from '../lp';
import { chanceOf } from '../sheets/chance';
import type { Scaled } from '../sheets/scaled';
import { attainable } from './attainable';
import { dive } from './dive';
import { type Generation, generate, type Pause } from './generate';
import type { Known } from './index';
import { patternMakers } from './maker';
import type { Pattern } from './pattern';
import { allOf, type CoverMeans, coverOf } from './residual';
import { cellsOf } from './whole';

/** Rounds of generating before the first dive. */
const FIRST_ROUNDS = 7;
/** To begin with, no piece is worth more than so many times its share by area. */
const FIRST_BOX = 1.6;
/** Beyond this patterns can't be generated fast enough to be of use (measured). */
const MANY_KINDS = 250;
/** How far chance bends the choice in later dives. */
const SHAKEN = 0.5;
/** Dives in a row that end at once, before the search gives up. */
const IN_VAIN = 60;

/** Looks for ways of cutting that cost less than what is known, for as long as there is hope. Nothing where sets must stay together. */
export function* cheaper(scaled: Scaled, lp: LpSolver, seed: number, known: Known): Generator<Pause, void> {
  const { sheets, kinds, sets } = scaled;
  if (sets.some((set) => set.length > 0) || kinds.length > MANY_KINDS) return;
  const makers = patternMakers(scaled);
  if (makers.length === 0) return;
  const area = kinds.reduce((sum, { length, width, quantity }) => sum + length * width * quantity, 0);
  const by: Generation = {
    makers,
    prices: sheets.map(({ price }) => price),
    guess: Float64Array.from(kinds, ({ length, width }) => (length * width * known.bound) / area),
    pool: known.pool,
    chance: chanceOf(seed),
  };
  const all = allOf(scaled);
  // First without what came from outside, and with duals that cannot go far from the areas: a whole plan makes the relaxation whole too, and
  // the duals of few rows all there is (du Merle, Villeneuve, Desrosiers & Hansen, "Stabilized column generation", Discrete Mathematics 194, 1999).
  yield* rooted({ missingCosts: by.guess.map((worth) => FIRST_BOX * worth) }, []);
  yield* rooted({}, known.patterns);
  let shaken = 0;
  for (let vain = 0; vain < IN_VAIN && attainable(scaled, known.bound) < known.cost - 1e-9; ) {
    const limit = (): number => known.cost;
    const found = yield* dive(scaled, all, by, lp, limit, shaken);
    if (found) {
      known.cost = found.reduce((sum, { price }) => sum + price, 0);
      known.best = cellsOf(scaled, found);
      vain = 0;
    } else vain += 1;
    known.dived = true;
    shaken = SHAKEN;
  }

  function* rooted(means: CoverMeans, patterns: readonly Pattern[]): Generator<Pause, void> {
    const cover = coverOf(scaled, all, lp, means);
    try {
      for (const pattern of patterns) cover.add(pattern);
      yield* generate(cover, all, by, { rounds: FIRST_ROUNDS });
      for (let k = 0; k < kinds.length; k += 1) by.guess[k] += (cover.worths[k] - by.guess[k]) / 2;
    } finally {
      cover.dispose();
    }
  }
}
