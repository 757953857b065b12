import type { BarProblem, BarTurn } from '../../../src/vocabulary/cut-problem';
import { pitch, planesOf } from './check';

/**
 * The least cost of cutting all pieces, by trying every way of parting them into bars and every order and turn on a bar; infinite where they
 * can't all be cut. For a handful of pieces.
 */
export function leastCost(problem: BarProblem): number {
  const copies = problem.pieces.flatMap(({ quantity }, piece) => Array.from({ length: quantity }, () => piece));
  const n = copies.length;
  const turns: readonly (BarTurn | undefined)[] = [undefined, ...(problem.section?.turns ?? [])];
  const poses = copies.map((piece) => turns.map((turn) => planesOf(problem, piece, turn)));
  const needs = new Float64Array(1 << n).fill(Number.POSITIVE_INFINITY);
  // Shortest row of each subset, by what lies last and how.
  const rows = Array.from({ length: 1 << n }, () => new Float64Array(n * turns.length).fill(Number.POSITIVE_INFINITY));
  for (let set = 1; set < 1 << n; set++)
    for (let last = 0; last < n; last++) {
      if (!(set & (1 << last))) continue;
      const before = set & ~(1 << last);
      const { length } = problem.pieces[copies[last]];
      for (let k = 0; k < turns.length; k++) {
        let start = before === 0 ? 0 : Number.POSITIVE_INFINITY;
        for (let other = 0; other < n; other++)
          if (before & (1 << other))
            for (let q = 0; q < turns.length; q++) {
              const end = rows[before][other * turns.length + q] - problem.pieces[copies[other]].length;
              start = Math.min(start, end + pitch(problem, poses[other][q], poses[last][k]));
            }
        rows[set][last * turns.length + k] = start + length;
        needs[set] = Math.min(needs[set], start + length);
      }
    }
  const whole = (set: number): boolean =>
    problem.pieces.every(({ together }) => {
      if (together === undefined) return true;
      const own = copies.reduce(
        (all, piece, i) => (problem.pieces[piece].together === together ? all | (1 << i) : all),
        0,
      );
      return (set & own) === 0 || (set & own) === own;
    });
  const known = new Map<string, number>();
  const least = (set: number, stock: readonly number[]): number => {
    if (set === 0) return 0;
    const key = `${set}|${stock.join()}`;
    let best = known.get(key);
    if (best !== undefined) return best;
    best = Number.POSITIVE_INFINITY;
    const first = set & -set;
    for (let part = set; part > 0; part = (part - 1) & set) {
      if (!(part & first) || !whole(part)) continue;
      for (let s = 0; s < stock.length; s++) {
        const { length, price, trim = problem.trim } = problem.stock[s];
        if (stock[s] < 1 || needs[part] > length - 2 * trim + 1e-9) continue;
        best = Math.min(best, price + least(set & ~part, stock.with(s, stock[s] - 1)));
      }
    }
    known.set(key, best);
    return best;
  };
  return least(
    (1 << n) - 1,
    problem.stock.map(({ count }) => Math.min(n, count ?? n)),
  );
}
