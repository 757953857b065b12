import type { LpSolver } from '../../lp';
import type { Fills } from './fill-table';
import { type Fill, fillAt, NONE, WIDTH } from './fills';
import { gainful } from './gainful';
import { NEARLY } from './nearly';
import { sharpened } from './sharpen';

/** Fills that are added in one round, and in one of sharpening; and in how many of them a kind may lie. */
const MOST_ADDED = 150;
const MOST_ADDED_SHARPENING = 50;
const MOST_SHARED = 3;
const MOST_ROUNDS = 100;

/** Fills of up to three pieces that are all added before sharpening; where there are more, only what gains is. */
const MOST_SHORT = 6000;

/** A relaxed choice of full bars that leaves nothing out. */
export interface Relaxed {
  readonly fills: readonly Fill[];
  /** How much of each. */
  readonly amounts: Float64Array;
}

/** What is to be covered, and what with. */
export interface Choice {
  readonly left: readonly number[];
  /** See `listFills`. */
  readonly listed: Uint16Array;
  /** Where the listed ones don't do. */
  readonly table: Fills;
  /** To begin with. */
  readonly known: readonly Fill[];
}

/**
 * A relaxed choice of full bars that covers all that is left, by column generation (Gilmore & Gomory 1961), sharpened; undefined when something
 * stays uncovered.
 */
export function* relaxedChoice(lp: LpSolver, choice: Choice): Generator<void, Relaxed | undefined> {
  const { left, listed, table, known } = choice;
  const kinds = left.flatMap((n, kind) => (n > 0 ? [kind] : []));
  const row = new Int32Array(left.length).fill(-1);
  kinds.forEach((kind, r) => {
    row[kind] = r;
  });
  const values = new Float64Array(NONE + 1);
  const setValues = (duals: Float64Array): void => {
    kinds.forEach((kind, r) => {
      values[kind] = duals[r];
    });
  };
  const master = lp(kinds.map((kind) => ({ lower: left[kind], upper: left[kind] })));
  const fills: Fill[] = [];
  const there = new Set<string>();
  const add = (fill: Fill): boolean => {
    const key = fill.join();
    if (there.has(key)) return false;
    there.add(key);
    fills.push(fill);
    const times = new Map<number, number>();
    for (const kind of fill) times.set(row[kind], (times.get(row[kind]) ?? 0) + 1);
    master.addColumn(0, [...times.keys()], [...times.values()]);
    return true;
  };
  const addSome = (found: readonly Fill[], most = MOST_ADDED): number => {
    const shared = new Int32Array(left.length);
    let added = 0;
    for (const fill of found) {
      if (added >= most) break;
      if (fill.some((kind) => shared[kind] >= MOST_SHARED) || !add(fill)) continue;
      added++;
      for (const kind of fill) shared[kind]++;
    }
    return added;
  };
  try {
    // A piece left out costs 1, and nothing else costs anything.
    for (let r = 0; r < kinds.length; r++) master.addColumn(1, [r], [1]);
    for (const fill of known) add(fill);
    for (let round = 0; round < MOST_ROUNDS; round++) {
      const relaxed = master.relax();
      yield;
      if (!relaxed) return undefined;
      if (relaxed.cost < NEARLY) {
        // The more to choose from, the sharper. Begun with all the short ones, the solver could take seconds for its first answer.
        const short = shortOf(listed);
        if (short.length <= MOST_SHORT) for (const fill of short) add(fill);
        const first = new Float64Array(kinds.length + fills.length);
        first.set(relaxed.amounts);
        const amounts = yield* sharpened(master, kinds.length, first, (duals) => {
          setValues(duals);
          return addSome(gainful(listed, values), MOST_ADDED_SHARPENING);
        });
        return { fills, amounts };
      }
      setValues(relaxed.duals);
      if (addSome(gainful(listed, values)) > 0) continue;
      const added = addSome(table(values, left));
      yield;
      if (added === 0) return undefined;
    }
    return undefined;
  } finally {
    // Also when nobody goes on with it.
    master.dispose();
  }
}

/** The listed fills of fewer pieces than the list has room for. */
function shortOf(listed: Uint16Array): readonly Fill[] {
  const short: Fill[] = [];
  for (let at = 0; at < listed.length; at += WIDTH) if (listed[at + WIDTH - 1] === NONE) short.push(fillAt(listed, at));
  return short;
}
