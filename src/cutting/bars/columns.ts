import type { LpSolver, Master } from '../lp';
import type { Times } from './knapsack';
import type { Rest } from './pack';
import type { Pattern, Task } from './task';

/** What leaving out one piece costs in the master, as often as the dearest bar: more than any bar that could hold it. */
const LEFT_OUT = 4;
/** And where only so many bars can hold it, for its whole length. */
const LEFT_OUT_LIMITED = 60;

/** The linear relaxation over the patterns known so far. */
export interface Relaxation {
  readonly cost: number;
  /** Of one piece of each kind; and of one bar of each source that there are only so many of: 0 or less. */
  readonly values: Float64Array;
  readonly rents: Float64Array;
  /** Of each pattern. */
  readonly amounts: Float64Array;
  /** Pieces left out, in parts. */
  readonly missing: number;
}

/** Patterns and the master problem that chooses among them (Gilmore & Gomory 1961). */
export interface Columns {
  readonly patterns: readonly Pattern[];
  /** How many kinds it knows of: those of which something was left when it was made. Of others a pattern may hold none. */
  readonly width: number;
  /** False when it is known already. */
  add(pattern: Pattern): boolean;
  /** What is still to be cut, and from what. */
  setRest(rest: Rest): void;
  setUpper(pattern: number, upper: number): void;
  relax(): Relaxation | undefined;
  dispose(): void;
}

/**
 * The master of a task. Where a smaller kind may lie in place of a larger one, columns say so: they are dual cuts and spare most of the
 * rounds (Valério de Carvalho 2005).
 * @param smaller whether to have such columns.
 */
export function columnsOf(task: Task, lp: LpSolver, { left, stock }: Rest, smaller = task.plain): Columns {
  const { kinds, sources } = task;
  const limited = sources.flatMap(({ count }, i) => (Number.isFinite(count) ? [i] : []));
  const present = kinds.flatMap((_, kind) => (left[kind] > 0 ? [kind] : []));
  const place = new Int32Array(kinds.length).fill(-1);
  present.forEach((kind, row) => {
    place[kind] = row;
  });
  const rowOf = new Map(limited.map((source, i) => [source, present.length + i]));
  const master: Master = lp([
    ...present.map((kind) => ({ lower: left[kind], upper: Number.POSITIVE_INFINITY })),
    ...limited.map((source) => ({ lower: Number.NEGATIVE_INFINITY, upper: stock[source] })),
  ]);
  const dearest = sources.reduce((most, { price }) => Math.max(most, price), 0) || 1;
  const plenty = sources.reduce((most, s) => (Number.isFinite(s.count) ? most : Math.max(most, s.capacity)), 0);
  const roomiest = sources.reduce((most, s) => Math.max(most, s.capacity), 1);
  for (let row = 0; row < present.length; row++) {
    const { size } = kinds[present[row]];
    const cost = size <= plenty ? LEFT_OUT * dearest : dearest * (LEFT_OUT + (LEFT_OUT_LIMITED * size) / roomiest);
    master.addColumn(cost, [row], [1]);
  }
  let extra = present.length;
  if (smaller)
    for (let row = 1; row < present.length; row++) {
      master.addColumn(0, [row - 1, row], [-1, 1]);
      extra++;
    }
  const patterns: Pattern[] = [];
  const known = new Set<string>();
  return {
    patterns,
    width: present.length,
    add(pattern) {
      const key = `${pattern.source}|${[...pattern.times].sort((a, b) => a[0] - b[0]).join(';')}`;
      if (known.has(key)) return false;
      known.add(key);
      patterns.push(pattern);
      const rows = pattern.times.map(([kind]) => place[kind]);
      const amounts = pattern.times.map(([, n]) => n);
      const row = rowOf.get(pattern.source);
      master.addColumn(
        sources[pattern.source].price,
        row === undefined ? rows : [...rows, row],
        row === undefined ? amounts : [...amounts, 1],
      );
      return true;
    },
    setRest(rest) {
      for (let row = 0; row < present.length; row++)
        master.setRow(row, rest.left[present[row]], Number.POSITIVE_INFINITY);
      for (const [source, row] of rowOf) master.setRow(row, Number.NEGATIVE_INFINITY, rest.stock[source]);
    },
    setUpper: (pattern, upper) => master.setUpper(extra + pattern, upper),
    relax() {
      const relaxed = master.relax();
      if (!relaxed) return undefined;
      const { cost, duals, amounts } = relaxed;
      const rents = new Float64Array(sources.length);
      for (const [source, row] of rowOf) rents[source] = Math.min(0, duals[row]);
      let missing = 0;
      const values = new Float64Array(kinds.length);
      for (let row = 0; row < present.length; row++) {
        missing += amounts[row];
        values[present[row]] = Math.max(0, duals[row]);
      }
      return {
        cost,
        values,
        rents,
        amounts: amounts.subarray(extra),
        missing,
      };
    },
    dispose: () => master.dispose(),
  };
}

/**
 * Cuts a pattern out of what is left: what is no longer wanted of a kind gives its place to the next smaller one, where it may. Returns what
 * truly lies in the bar.
 */
export function takeFrom(task: Task, left: number[], times: Times): Times {
  const taken = new Map<number, number>();
  for (const [kind, n] of [...times].sort((a, b) => a[0] - b[0])) {
    let places = n;
    for (let k = kind; k < left.length && places > 0; k++) {
      const now = Math.min(places, left[k]);
      if (now > 0) {
        taken.set(k, (taken.get(k) ?? 0) + now);
        left[k] -= now;
        places -= now;
      }
      if (!task.plain) break;
    }
  }
  return [...taken].sort((a, b) => a[0] - b[0]);
}
