import { type Columns, takeFrom } from './columns';
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
const ALMOST = 0.85;

/** What a dive works with. */
export interface Diver {
  readonly task: Task;
  readonly columns: Columns;
  readonly pricing: Pricing;
  readonly ledger: Ledger;
}

/** A place on the way down: what is cut already, what is still to be cut, and the patterns that may not be chosen here. */
interface Place {
  readonly fixed: readonly Pattern[];
  readonly rest: Rest;
  readonly refused: readonly number[];
  /** How often the way here went against what the relaxation said. */
  readonly against: number;
}

/** Dives that can be gone on with. */
export interface Dives {
  /** Looks at so many places more. False when there are none left. */
  dive(places: number): Generator<void, boolean>;
}

/**
 * Rounds the relaxation bit by bit, generating patterns for what is left (diving with limited discrepancy: Sadykov, Vanderbeck, Pessoa,
 * Tahiri & Uchoa 2019). Whole ways of cutting that it meets are told to the ledger.
 */
export function divesFrom(diver: Diver, rest: Rest): Dives {
  const open: Place[] = [{ fixed: [], rest, refused: [], against: 0 }];
  return {
    *dive(places) {
      for (let n = 0; n < places && open.length > 0 && !diver.ledger.done(); n++)
        open.push(...(yield* lookAt(diver, takeNext(open))));
      return open.length > 0;
    },
  };
}

/** Solves what is left at a place and says where to go on from there: the likelier way last. */
function* lookAt(
  { task, columns, pricing, ledger }: Diver,
  { fixed, rest, refused, against }: Place,
): Generator<void, readonly Place[]> {
  const spent = costOf(task, fixed);
  columns.setRest(rest);
  for (const pattern of refused) columns.setUpper(pattern, 0);
  const generated = yield* generate(task, columns, pricing, rest, {
    enough: (bound, cost) =>
      ledger.hopeless(spent + bound) || ledger.roundUp(spent + bound) >= ledger.roundUp(spent + cost - ledger.fuzz),
    mostRounds: MOST_ROUNDS,
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
  const on: Place[] = [{ fixed, rest, refused: [...refused, chosen[0][0]], against: against + 1 }];
  if (left.some((n) => n > 0)) on.push({ fixed: bars, rest: { left, stock }, refused: [], against });
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

/** The place that went against it the least often, of those the deepest (Harvey & Ginsberg 1995). */
function takeNext(open: Place[]): Place {
  let next = open.length - 1;
  for (let i = open.length - 1; i >= 0; i--) if (open[i].against < open[next].against) next = i;
  return open.splice(next, 1)[0];
}
