import type { BarPlan, CutBar, PlacedOnBar } from '../../../src/vocabulary/cut-plan';
import type { BarProblem, BarTurn, Slant } from '../../../src/vocabulary/cut-problem';
import { atLeast, NOISE, same } from './shared';

/** Common practice, no source. */
const LEAST_OFFCUT = 300;
export const SQUARE: Slant = [0, 0];

/** A plane across the bar: x = slope · (u, v), from anywhere. */
export type Ends = readonly [left: Slant, right: Slant];

/** The ends of a piece once it is turned; u runs over the width w, v over the thickness t, and a constant doesn't matter here. */
export function turnedEnds([left, right]: Ends, turn: BarTurn | undefined): Ends {
  switch (turn) {
    case undefined:
      return [left, right];
    case 'rolled': // x = a·(w − u') + o·(t − v')
      return [
        [-left[0], -left[1]],
        [-right[0], -right[1]],
      ];
    case 'swung': // −x' = a·(w − u') + o·v', and what was right is left
      return [
        [right[0], -right[1]],
        [left[0], -left[1]],
      ];
    case 'tumbled': // −x' = a·u' + o·(t − v')
      return [
        [-right[0], right[1]],
        [-left[0], left[1]],
      ];
  }
}

/** Where a piece begins and ends at the four corners of the section, mm from the bar's left end, and how much longer its cuts are than square ones. */
interface Spans {
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  readonly steep: Ends;
}

/** How far a plane lies behind where it meets the first corner, at each of the four corners. */
export const rise = ([across, out]: Slant, width: number, thickness: number): readonly number[] => [
  0,
  across * width,
  out * thickness,
  across * width + out * thickness,
];

function spansOf({ section, pieces }: BarProblem, { piece, at, length, turn }: PlacedOnBar): Spans {
  const steep = turnedEnds(pieces[piece].ends ?? [SQUARE, SQUARE], turn);
  const [from, to] = steep.map((slant) => rise(slant, section?.width ?? 0, section?.thickness ?? 0));
  const [first, last] = [Math.min(...from), Math.max(...to)];
  return { starts: from.map((x) => at + x - first), ends: to.map((x) => at + length + x - last), steep };
}

/** A kerf cut on a slant is so many times as long along the bar. */
export const stretch = ([across, out]: Slant): number => Math.sqrt(1 + across ** 2 + out ** 2);

export function barFaults(problem: BarProblem, { bars }: BarPlan): string[] {
  return bars.flatMap((bar, i) => oneBar(problem, bar).map((fault) => `bar ${i}: ${fault}`));
}

function oneBar(problem: BarProblem, bar: CutBar): string[] {
  const { length, trim = problem.trim } = problem.stock[bar.stock];
  const faults: string[] = [];
  for (const [i, placed] of bar.pieces.entries()) {
    const { length: wanted } = problem.pieces[placed.piece];
    if (!same(placed.length, wanted)) faults.push(`piece ${placed.piece} is ${placed.length}, not ${wanted}`);
    if (!atLeast(placed.at, trim)) faults.push(`piece ${placed.piece} begins in the trim`);
    if (!atLeast(length - trim, placed.at + placed.length)) faults.push(`piece ${placed.piece} ends in the trim`);
    if (placed.turn !== undefined && !problem.section?.turns.includes(placed.turn))
      faults.push(`piece ${placed.piece} may not be ${placed.turn}`);
    const next = bar.pieces[i + 1];
    if (next) faults.push(...tooClose(problem, placed, next));
  }
  return [...faults, ...offcutFaults(problem, bar, length - trim)];
}

function tooClose(problem: BarProblem, a: PlacedOnBar, b: PlacedOnBar): string[] {
  const [before, after] = [spansOf(problem, a), spansOf(problem, b)];
  const needed = problem.kerf * Math.max(stretch(before.steep[1]), stretch(after.steep[0]));
  const gap = Math.min(...after.starts.map((start, corner) => start - before.ends[corner]));
  return atLeast(gap, needed) ? [] : [`pieces ${a.piece} and ${b.piece} are ${gap} apart, ${needed} needed`];
}

/** An offcut lies where nothing else does, and is told where it can be used again. */
function offcutFaults(problem: BarProblem, { pieces, offcut }: CutBar, end: number): string[] {
  const least = problem.leastOffcut ?? LEAST_OFFCUT;
  const last = Math.max(...pieces.map(({ at, length }) => at + length));
  const steepest = Math.max(1, ...pieces.slice(-1).map((piece) => stretch(spansOf(problem, piece).steep[1])));
  const free = last + problem.kerf * steepest;
  if (offcut === undefined) return end - free > least + NOISE ? [`an offcut of ${end - free} is not told`] : [];
  return [
    ...(atLeast(offcut.at, free) ? [] : [`the offcut begins at ${offcut.at}, free from ${free}`]),
    ...(atLeast(end, offcut.at + offcut.length) ? [] : ['the offcut ends in the trim']),
    ...(atLeast(offcut.length, least) ? [] : [`an offcut of ${offcut.length} can't be used again`]),
  ];
}

/** Whether a bar could hold a piece that is alone on it. */
export const barHolds =
  ({ stock, pieces, trim }: BarProblem) =>
  (s: number, p: number): boolean =>
    atLeast(stock[s].length - 2 * (stock[s].trim ?? trim), pieces[p].length);
