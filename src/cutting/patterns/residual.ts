import type { LpSolver, Master } from '../lp';
import type { Scaled } from '../sheets/scaled';
import type { Pattern } from './pattern';

/** What is still to be cut, and what there still is to cut it from. */
export interface Residual {
  readonly wanted: Int32Array;
  readonly sheets: readonly number[];
}

export const allOf = ({ kinds, sheets }: Scaled): Residual => ({
  wanted: Int32Array.from(kinds, (kind) => kind.quantity),
  sheets: sheets.map(({ count }) => count),
});

/** What is left to do when patterns have been cut; more than is wanted of a kind is nothing. */
export function without({ wanted, sheets }: Residual, patterns: readonly Pattern[]): Residual {
  const rest = { wanted: wanted.slice(), sheets: [...sheets] };
  for (const { sheet, counts } of patterns) {
    rest.sheets[sheet] -= 1;
    for (let k = 0; k < counts.length; k += 1) rest.wanted[k] = Math.max(0, rest.wanted[k] - counts[k]);
  }
  return rest;
}

/** What a pattern brings of what is still wanted. */
export function worthIn({ wanted }: Residual, { counts }: Pattern, worths: ArrayLike<number>): number {
  let sum = 0;
  for (let k = 0; k < counts.length; k += 1) if (counts[k] > 0) sum += Math.min(counts[k], wanted[k]) * worths[k];
  return sum;
}

export interface Relaxation {
  readonly cost: number;
  readonly amounts: readonly { readonly pattern: Pattern; readonly amount: number }[];
  /** Pieces left uncut. */
  readonly missing: number;
}

/** How a residual is best cut from patterns, as a linear or a whole-numbered program. */
export interface Cover {
  /** What one piece of each kind, and one more of each sheet, is worth by the last relaxation. */
  readonly worths: Float64Array;
  readonly sheetWorths: Float64Array;
  /** Takes the pattern in, with no more of each kind than is wanted; false where it is in already. */
  add(pattern: Pattern): boolean;
  /** Lower limit of the patterns at hand only. Undefined when the solver gave up. */
  relax(): Relaxation | undefined;
  /** How many patterns were taken in. */
  size(): number;
  dispose(): void;
}

/** What a piece left uncut costs, in prices of the dearest sheet: for that each could have a sheet of its own. */
const MISSING = 1.25;

export interface CoverMeans {
  /** Patterns keep what they hold beyond what is wanted, as a bound that doesn't mind the numbers wanted must have it. */
  readonly beyond?: boolean;
  /** What a piece of each kind left uncut costs, instead of more than a sheet of its own: no dual becomes larger. */
  readonly missingCosts?: ArrayLike<number>;
}

export function coverOf(
  scaled: Scaled,
  residual: Residual,
  lp: LpSolver,
  { beyond = false, missingCosts }: CoverMeans = {},
): Cover {
  const { kinds, sheets } = scaled;
  const rows = [
    ...Array.from(residual.wanted, (n) => ({ lower: n, upper: Number.POSITIVE_INFINITY })),
    ...residual.sheets.map((n) => ({ lower: Number.NEGATIVE_INFINITY, upper: n })),
  ];
  const master: Master = lp(rows);
  const dearest = Math.max(...sheets.map(({ price }, s) => (residual.sheets[s] > 0 ? price : 0)));
  const missing = MISSING * Math.max(dearest, 1e-9);
  let artificial = 0;
  for (let k = 0; k < kinds.length; k += 1) {
    if (residual.wanted[k] === 0) continue;
    master.addColumn(missingCosts ? missingCosts[k] : missing, [k], [1]);
    artificial += 1;
  }
  const columns: Pattern[] = [];
  const known = new Set<string>();
  const worths = new Float64Array(kinds.length);
  const sheetWorths = new Float64Array(sheets.length);
  let last: Relaxation | undefined;
  return {
    worths,
    sheetWorths,
    add(pattern) {
      if (residual.sheets[pattern.sheet] <= 0) return false;
      const at: number[] = [];
      const counts: number[] = [];
      let key = String.fromCharCode(pattern.sheet);
      for (let k = 0; k < kinds.length; k += 1) {
        const n = pattern.counts[k];
        const most = beyond ? n : Math.min(n, residual.wanted[k]);
        if (most <= 0) continue;
        at.push(k);
        counts.push(most);
        key += String.fromCharCode(k, most);
      }
      if (at.length === 0 || known.has(key)) return false;
      known.add(key);
      columns.push(pattern);
      last = undefined;
      at.push(kinds.length + pattern.sheet);
      counts.push(1);
      master.addColumn(pattern.price, at, counts);
      return true;
    },
    relax() {
      if (last) return last;
      const relaxed = master.relax();
      if (!relaxed) return undefined;
      for (let k = 0; k < kinds.length; k += 1) worths[k] = Math.max(0, relaxed.duals[k]);
      for (let s = 0; s < sheets.length; s += 1) sheetWorths[s] = Math.max(0, -relaxed.duals[kinds.length + s]);
      let out = 0;
      for (let a = 0; a < artificial; a += 1) out += relaxed.amounts[a];
      const amounts = columns
        .map((pattern, c) => ({ pattern, amount: relaxed.amounts[artificial + c] }))
        .filter(({ amount }) => amount > 1e-9);
      last = { cost: relaxed.cost, amounts, missing: out };
      return last;
    },
    size: () => columns.length,
    dispose: master.dispose,
  };
}
