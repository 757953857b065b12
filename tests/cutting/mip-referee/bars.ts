import type { BarPiece, BarProblem, BarTurn } from '../../../src/vocabulary/cut-problem';
import { type Ends, rise, SQUARE, stretch, turnedEnds } from '../verifier/bars';
import { type Asked, bitsOf, copiesOf, largest, setsOf, unitsOf } from './cover';

/** Sums of tenths come out this far off, at the most. */
const NOISE = 1e-6;

/** Every way to cut a bar: all sets of copies that fit, in the order and turned as they take least. */
export function barWays(problem: BarProblem): Asked {
  const copies = copiesOf(problem.pieces);
  const units = unitsOf(copies);
  const square = copies.every(({ ends }) => ends === undefined);
  const lengthOf = square ? sumOf(copies, problem.kerf) : nestedLength(copies, problem);
  const needed = setsOf(units).map((set) => [set, lengthOf(set)] as const);
  const ways = problem.stock.map(({ length, trim = problem.trim }) => {
    const fitting = needed.filter(([, long]) => long <= length - 2 * trim + NOISE).map(([set]) => set);
    return largest(fitting, units);
  });
  return { problem, ways };
}

const sumOf =
  (copies: readonly BarPiece[], kerf: number) =>
  (set: number): number =>
    bitsOf(set).reduce((sum, i) => sum + copies[i].length + kerf, -kerf);

/** A copy in one of the ways in which it may lie. */
interface Lying {
  readonly bit: number;
  readonly length: number;
  readonly ends: Ends;
}

/**
 * The least length that a set takes when slanted ends reach into one another: all orders and turns, by dynamic programming over what is on the bar
 * already and what lies last (after Held & Karp, "A dynamic programming approach to sequencing problems", 1962). No piece is shorter than its two
 * neighbours reach into it.
 */
function nestedLength(copies: readonly BarPiece[], { section, kerf }: BarProblem): (set: number) => number {
  const { width = 0, thickness = 0, turns = [] } = section ?? {};
  const ways: readonly (BarTurn | undefined)[] = [undefined, ...turns];
  const lying = copies.flatMap(({ length, ends }, i) =>
    ways.map((turn): Lying => ({ bit: 1 << i, length, ends: turnedEnds(ends ?? [SQUARE, SQUARE], turn) })),
  );
  /** From where `a` begins to where `b` does. */
  const apart = (a: Lying, b: Lying): number => {
    const [end, start] = [rise(a.ends[1], width, thickness), rise(b.ends[0], width, thickness)];
    const [last, first] = [Math.max(...end), Math.min(...start)];
    const reach = Math.max(...end.map((x, corner) => x - last - (start[corner] - first)));
    return a.length + reach + kerf * Math.max(stretch(a.ends[1]), stretch(b.ends[0]));
  };
  const steps = lying.map((a) => lying.map((b) => apart(a, b)));
  /** By set: where the last piece begins at the least, for each that may be last. */
  const begins = Array.from({ length: 1 << copies.length }, () => lying.map(() => Number.POSITIVE_INFINITY));
  lying.forEach(({ bit }, i) => {
    begins[bit][i] = 0;
  });
  begins.forEach((from, set) => {
    from.forEach((at, i) => {
      if (!Number.isFinite(at)) return;
      lying.forEach(({ bit }, j) => {
        if ((set & bit) === 0) begins[set | bit][j] = Math.min(begins[set | bit][j], at + steps[i][j]);
      });
    });
  });
  return (set) => Math.min(...begins[set].map((at, i) => at + lying[i].length));
}
