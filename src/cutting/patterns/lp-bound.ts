import type { LpSolver } from '../lp';
import type { Scaled } from '../sheets/scaled';
import { attainable } from './attainable';
import { type SheetLimit, sheetLimit } from './coarse';
import type { Pause } from './generate';
import type { Pattern } from './pattern';
import { allOf, coverOf } from './residual';

/** Cuts looked at in one reckoning of all sheets, from level to level; a nanosecond each. */
const LEVELS = [3e5, 3e6, 3e7, 2e8];
/** Reckonings at each level, at most. */
const TURNS = [120, 60, 30, 12];
/** Beyond these the relaxation does not come far enough in any reasonable time (measured: minutes). */
const MANY_KINDS = 400;
const MANY_SHEETS = 40;
/** Cuts looked at between two pauses: some 5 ms; and what a solve of the relaxation counts for. */
const PAUSE_AFTER = 4e6;
const RELAXING = 2e6;
/** How far the duals are drawn towards the best ones known (Wentges 1997). */
const DRAWN = 0.5;

/** What is known from elsewhere while the bound is worked out, and what becomes of it. */
export interface BoundSoFar {
  /** Raised as better ones are found: no way of cutting costs less. */
  bound: number;
  /** Of the best way of cutting known. */
  readonly cost: number;
  /** Patterns known by now: they spare the reckoning many turns. */
  readonly patterns: readonly Pattern[];
}

/**
 * A bound for ways of cutting with any number of stages: the linear relaxation over all ways to cut a sheet edge to edge, whatever the numbers
 * wanted, in steps that get finer from level to level. Every reckoning gives a bound that holds (Farley, "A note on bounding a class of
 * linear programming problems, including cutting stock problems", Operations Research 38, 1990), however far the relaxation has come. Ends
 * when the bound meets the cost, or could not be raised to the next attainable sum by going on.
 */
export function* lpBound(scaled: Scaled, lp: LpSolver, so: BoundSoFar): Generator<Pause, void> {
  const { kinds, sheets } = scaled;
  if (kinds.length === 0 || kinds.length > MANY_KINDS || sheets.length > MANY_SHEETS) return;
  let centre: Float64Array | undefined;
  let since = 0;
  function* worked(much: number): Generator<Pause, void> {
    since += much;
    if (since < PAUSE_AFTER) return;
    since = 0;
    yield;
  }
  for (let level = 0; level < LEVELS.length; level += 1) {
    const limits: SheetLimit[] = [];
    for (const sheet of sheets) {
      limits.push(sheetLimit(scaled, sheet, LEVELS[level] / sheets.length));
      yield;
    }
    const residual = allOf(scaled);
    const cover = coverOf(scaled, residual, lp, { beyond: true });
    try {
      for (const pattern of so.patterns) cover.add(pattern);
      let centreValue = 0;
      if (centre) centreValue = yield* reckon(centre);
      for (let turn = 0; turn < TURNS[level]; turn += 1) {
        const relaxed = cover.relax();
        if (!relaxed) return;
        yield* worked(RELAXING);
        // This level's bound ends up no higher than the relaxation stands now.
        if (so.bound >= so.cost - 1e-9 || attainable(scaled, relaxed.cost) <= so.bound + 1e-9) break;
        const drawn = centre;
        const worths = drawn ? cover.worths.map((w, k) => DRAWN * drawn[k] + (1 - DRAWN) * w) : cover.worths.slice();
        const before = cover.size();
        const value = yield* reckon(worths);
        if (!centre || value > centreValue) {
          centre = worths;
          centreValue = value;
        } else if (cover.size() === before) {
          const plain = cover.worths.slice();
          const again = yield* reckon(plain);
          if (cover.size() === before) break;
          if (again > centreValue) {
            centre = plain;
            centreValue = again;
          }
        }
      }
    } finally {
      cover.dispose();
    }
    if (so.bound >= so.cost - 1e-9 || limits.every(({ exact }) => exact)) return;

    /** The bound that these worths give, after scaling; takes in what the sheets were found to hold. */
    function* reckon(worths: Float64Array): Generator<Pause, number> {
      const most: number[] = [];
      for (let s = 0; s < limits.length; s += 1) {
        most.push(yield* limits[s].limit(worths));
        const price = sheets[s].price;
        const counts = limits[s].counts();
        cover.add({ sheet: s, price, counts, cell: { kind: 'left', ...sheets[s] } });
        yield* worked(limits[s].work);
      }
      const value = scaledBound(scaled, worths, most);
      so.bound = Math.max(so.bound, attainable(scaled, value));
      return value;
    }
  }
}

/**
 * The bound from worths of kinds and the most that each sheet can hold of them: worths are made smaller by one factor, and what a sheet then
 * still holds beyond its price is lost for as many as there are of it. Best at a factor for which a sheet holds its price.
 */
function scaledBound({ kinds, sheets }: Scaled, worths: Float64Array, most: readonly number[]): number {
  const all = kinds.reduce((sum, { quantity }, k) => sum + quantity * worths[k], 0);
  let best = 0;
  for (let s = 0; s < sheets.length; s += 1) {
    if (most[s] <= 0) continue;
    const factor = sheets[s].price / most[s];
    const lost = sheets.reduce((sum, { price, count }, t) => sum + count * Math.max(0, factor * most[t] - price), 0);
    best = Math.max(best, factor * all - lost);
  }
  return best;
}
