import type { LpSolver } from '../lp';
import { type Columns, columnsOf, takeFrom } from './columns';
import { costOf } from './cutting';
import { quickest } from './first';
import { generate } from './generate';
import type { Ledger } from './ledger';
import type { Rest } from './pack';
import type { Pricing } from './pricing';
import type { Pattern, Task } from './task';

/** Rounds of generating below the root: patterns for what is left, not a bound. */
const MOST_ROUNDS = 60;

/** An amount that is whole but for the solver's rounding. */
const NEARLY = 1e-6;

/** Fractions from here on are rounded up together. */
const ALMOST = 0.95;

/** A smaller master is made where no more than this part of the kinds is left, if there were so many at least: the solver's time grows with the square. */
const SMALLER = 0.7;
const FEWEST_KINDS = 40;

/** What a dive works with. */
export interface Diver {
  readonly task: Task;
  readonly lp: LpSolver;
  readonly columns: Columns;
  readonly pricing: Pricing;
  readonly ledger: Ledger;
}

/** A master that several places have; without any, there is no more need of it. */
interface Shared {
  readonly columns: Columns;
  places: number;
}

/** A place on the way down: what is cut already, what is still to be cut, and the patterns that may not be chosen here. */
interface Place {
  readonly fixed: readonly Pattern[];
  readonly rest: Rest;
  readonly master: Shared;
  /** By their numbers in its master. */
  readonly refused: readonly number[];
  /** How often the way here went against what the relaxation said. */
  readonly against: number;
}

/** Dives that can be gone on with. */
export interface Dives {
  /** Looks at so many places more. False when there are none left. */
  dive(places: number): Generator<void, boolean>;
  /** Gives back what the solver holds for it. */
  dispose(): void;
}

/**
 * Rounds the relaxation bit by bit, generating patterns for what is left (diving with limited discrepancy: Sadykov, Vanderbeck, Pessoa,
 * Tahiri & Uchoa 2019). Whole ways of cutting that it meets are told to the ledger.
 */
export function divesFrom(diver: Diver, rest: Rest): Dives {
  // The diver's own columns are one more's than those of the places.
  const root: Shared = { columns: diver.columns, places: 2 };
  let goesOn = true;
  let retreats = 0;
  const open: Place[] = [{ fixed: [], rest, master: root, refused: [], against: 0 }];
  return {
    *dive(places) {
      for (let n = 0; n < places && open.length > 0 && !diver.ledger.done(); n++) {
        const place = takeNext(open, !goesOn && retreats++ % 2 === 1);
        const after = yield* lookAt(diver, place);
        open.push(...after);
        goesOn = after.length > 1;
        leave(place);
      }
      return open.length > 0;
    },
    dispose() {
      for (const place of open.splice(0)) leave(place);
    },
  };
}

function leave({ master }: Place): void {
  master.places--;
  if (master.places === 0) master.columns.dispose();
}

/** The master for what is left after a place: the same, or a smaller one with the patterns that what is left can fill. */
function masterFor({ task, lp }: Diver, master: Shared, rest: Rest): Shared {
  const { columns } = master;
  const kinds = rest.left.reduce((sum, n) => sum + Number(n > 0), 0);
  if (columns.width < FEWEST_KINDS || kinds > SMALLER * columns.width) {
    master.places++;
    return master;
  }
  const smaller = columnsOf(task, lp, rest);
  for (const pattern of columns.patterns)
    if (pattern.times.every(([kind, n]) => n <= rest.left[kind])) smaller.add(pattern);
  return { columns: smaller, places: 1 };
}

/** Solves what is left at a place and says where to go on from there: the likelier way last. */
function* lookAt(diver: Diver, { fixed, rest, master, refused, against }: Place): Generator<void, readonly Place[]> {
  const { task, pricing, ledger } = diver;
  const { columns } = master;
  const spent = costOf(task, fixed);
  columns.setRest(rest);
  for (const pattern of refused) columns.setUpper(pattern, 0);
  const generated = yield* generate(task, columns, pricing, rest, {
    enough: (bound, cost) =>
      ledger.hopeless(spent + bound) || ledger.roundUp(spent + bound) >= ledger.roundUp(spent + cost - ledger.fuzz),
    mostRounds: MOST_ROUNDS,
    byLength: true,
  });
  for (const pattern of refused) columns.setUpper(pattern, Number.POSITIVE_INFINITY);
  if (!generated || ledger.hopeless(spent + Math.max(generated.bound, generated.relaxation.cost - ledger.fuzz)))
    return [];
  const chosen = chooseFrom(generated.relaxation.amounts, refused);
  if (chosen.length === 0) return [];
  const left = [...rest.left];
  const stock = [...rest.stock];
  const bars = [...fixed];
  for (const [pattern, n] of chosen) {
    const { source, times } = columns.patterns[pattern];
    for (let k = 0; k < n && stock[source] > 0; k++) {
      const taken = takeFrom(task, left, times);
      if (taken.length === 0) break;
      bars.push({ source, times: taken });
      stock[source]--;
    }
  }
  const quick = quickest(task, { left, stock });
  ledger.offer({ bars: [...bars, ...quick.bars], missing: quick.missing });
  yield;
  const on: Place[] = [{ fixed, rest, master, refused: [...refused, chosen[0][0]], against: against + 1 }];
  master.places++;
  if (left.some((n) => n > 0)) {
    const after = { left, stock };
    on.push({ fixed: bars, rest: after, master: masterFor(diver, master, after), refused: [], against });
  }
  return on;
}

/** Patterns to cut now: whole amounts and what is almost whole, the least sure first; where there is nothing such, the one nearest to it. */
function chooseFrom(
  amounts: Float64Array,
  refused: readonly number[],
): readonly (readonly [pattern: number, times: number])[] {
  const chosen: (readonly [number, number])[] = [];
  let nearest = -1;
  for (let i = 0; i < amounts.length; i++) {
    if (amounts[i] <= NEARLY || refused.includes(i)) continue;
    const whole = Math.floor(amounts[i] + 1 - ALMOST);
    if (whole > 0) chosen.push([i, whole]);
    if (nearest < 0 || amounts[i] % 1 > amounts[nearest] % 1) nearest = i;
  }
  if (chosen.length === 0 && nearest >= 0) chosen.push([nearest, 1]);
  return chosen.sort((a, b) => (amounts[a[0]] % 1) - (amounts[b[0]] % 1) || a[0] - b[0]);
}

/**
 * The place that went against it the least often (Harvey & Ginsberg 1995): the newest, to go on down; after a dive that came to nothing, in
 * turn the deepest and the shallowest of them.
 */
function takeNext(open: Place[], shallow: boolean): Place {
  const least = open.reduce((most, { against }) => Math.min(most, against), Number.POSITIVE_INFINITY);
  let next = -1;
  for (let i = 0; i < open.length; i++) {
    if (open[i].against > least) continue;
    if (next < 0 || !shallow || open[i].fixed.length < open[next].fixed.length) next = i;
  }
  return open.splice(next, 1)[0];
}
