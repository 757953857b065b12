import type { Columns, Relaxation } from './columns';
import type { Rest } from './pack';
import type { Pricing } from './pricing';
import type { Task } from './task';

/** Values are counted in so many parts of the dearest bar: whole numbers, so that sums of them are exact. */
const PARTS = 2 ** 26;

/** A gain smaller than this part of the dearest bar is the solver's rounding. */
const LEAST_GAIN = 1e-7;

/** Patterns that are added in one round; and in how many of them, of each one wanted, a kind may lie. */
const MOST_ADDED = 200;
const MOST_SHARED = 12;

/** How far values are drawn towards the best ones so far (Wentges 1997), which keeps them from swinging. */
const DRAWN = 0.7;

/** How generating ended. */
export interface Generated {
  readonly relaxation: Relaxation;
  /** No way of cutting what is left costs less: Farley's bound (1990), with limited sources at what they can save. */
  readonly bound: number;
  /** The prices that prove it: no bar is worth more than it costs. */
  readonly proof: Proof;
}

/** Of one piece of each kind; and of one bar of each source that there are only so many of: 0 or less. */
export interface Proof {
  readonly values: Float64Array;
  readonly rents: Float64Array;
}

export interface GenerateOptions {
  /** Ends as soon as this says that a bound is as good as that cost of the relaxation. */
  enough(bound: number, cost: number): boolean;
  readonly mostRounds: number;
  /** May end with the bound by length, where that is enough; but its prices don't tell full bars apart. */
  readonly byLength: boolean;
}

/**
 * Adds patterns until none would gain. Yields between rounds. The patterns known so far must be able to hold what is left, or leave it out.
 */
export function* generate(
  task: Task,
  columns: Columns,
  pricing: Pricing,
  rest: Rest,
  { enough, mostRounds, byLength }: GenerateOptions,
): Generator<void, Generated | undefined> {
  const dearest = task.sources.reduce((most, { price }) => Math.max(most, price), 0) || 1;
  const parts = PARTS / dearest;
  // Prices of nothing prove that cost isn't below nothing.
  const nothing: Proof = {
    values: new Float64Array(task.kinds.length),
    rents: new Float64Array(task.sources.length),
  };
  let centre: Proof | undefined = lengthProof(task);
  let bound = 0;
  for (let kind = 0; kind < rest.left.length; kind++) bound += centre.values[kind] * rest.left[kind];
  bound *= 1 - 1e-10;
  let relaxation: Relaxation | undefined;
  for (let round = 0; round < mostRounds; round++) {
    relaxation = columns.relax();
    if (!relaxation) return undefined;
    yield;
    if (!byLength && round === 0 && enough(bound, relaxation.cost)) {
      centre = undefined;
      bound = 0;
    }
    if (enough(bound, relaxation.cost)) break;
    const { values, rents } = relaxation;
    const drawn = centre ? { values: between(centre.values, values), rents: between(centre.rents, rents) } : relaxation;
    let added = 0;
    for (const prices of centre ? [drawn, relaxation] : [relaxation]) {
      const whole = prices.values.map((value) => Math.floor(value * parts));
      const costs = task.sources.map(({ price }, s) => (price - prices.rents[s]) * parts + LEAST_GAIN * PARTS);
      const priced = pricing(whole, rest.left, costs);
      const safe = farley(task, rest, whole, priced.most, parts);
      if (safe.bound > bound || !centre) {
        bound = Math.max(bound, safe.bound);
        centre = safe.bound < 0 ? nothing : safe.proof;
      }
      const shared = new Float64Array(task.kinds.length);
      for (const pattern of priced.found) {
        if (added >= MOST_ADDED) break;
        const { source, times } = pattern;
        if (times.some(([kind]) => shared[kind] >= MOST_SHARED)) continue;
        // By the master's own prices it must gain, or it would not enter.
        let gain = rents[source] - task.sources[source].price;
        for (const [kind, n] of times) gain += values[kind] * n;
        if (gain <= LEAST_GAIN * dearest || !columns.add({ source, times })) continue;
        added++;
        for (const [kind, n] of times) shared[kind] += n / Math.max(1, rest.left[kind]);
      }
      yield;
      if (added > 0 || enough(bound, relaxation.cost)) break;
    }
    if (added === 0 || enough(bound, relaxation.cost)) break;
  }
  return relaxation && { relaxation, bound, proof: centre ?? nothing };
}

/** Prices by length alone, as dear as the bar that gives most for its price allows: what is to be proven where hardly anything is wasted. */
function lengthProof({ kinds, sources }: Task): Proof {
  const perUnit = sources.reduce((least, { price, most }) => Math.min(least, price / most), Number.POSITIVE_INFINITY);
  return { values: Float64Array.from(kinds, ({ least }) => least * perUnit), rents: new Float64Array(sources.length) };
}

const between = (centre: Float64Array, values: Float64Array): Float64Array =>
  values.map((value, i) => DRAWN * centre[i] + (1 - DRAWN) * value);

/**
 * What prices prove: scaled until no bar of a source of which there is enough is worth more than it costs; a limited source may save, on
 * every bar that there is, what its bars are worth beyond their price.
 */
function farley(
  task: Task,
  { left, stock }: Rest,
  values: Float64Array,
  most: readonly number[],
  parts: number,
): { readonly bound: number; readonly proof: Proof } {
  let scale = 1;
  for (let s = 0; s < most.length; s++)
    if (stock[s] === Number.POSITIVE_INFINITY && most[s] > 0)
      scale = Math.min(scale, (task.sources[s].price * parts) / most[s]);
  let sum = 0;
  for (let kind = 0; kind < values.length; kind++) sum += values[kind] * left[kind];
  sum *= scale;
  const rents = new Float64Array(most.length);
  for (let s = 0; s < most.length; s++)
    if (stock[s] !== Number.POSITIVE_INFINITY) {
      rents[s] = Math.min(0, task.sources[s].price - (scale * most[s]) / parts);
      sum += rents[s] * parts * stock[s];
    }
  return {
    bound: (sum / parts) * (1 - 1e-10),
    proof: { values: values.map((value) => (value * scale) / parts), rents },
  };
}
