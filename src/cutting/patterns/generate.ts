import type { Chance } from '../sheets/chance';
import type { PatternMaker } from './maker';
import type { Pool } from './pool';
import type { Cover, Residual } from './residual';

/** Patterns taken from one maker at a time. */
const AT_ONCE = 4;
/** Makers asked in one round: where there are more, chance draws them. */
const ASKED = 16;
/** What a pattern must save, as a part of its price, to be taken in. */
const LEAST_GAIN = 1e-6;

/**
 * What worths are given to the makers, one after the other as they find nothing more: the duals drawn so far towards their middle (Wentges,
 * "Weighted Dantzig–Wolfe decomposition for linear mixed-integer programming", International Transactions in Operational Research 4, 1997),
 * then as they are, then each by chance up to so much more or less.
 */
export const TRIES: readonly { readonly middle: number; readonly shaken: number }[] = [
  { middle: 0.6, shaken: 0 },
  { middle: 0.25, shaken: 0 },
  { middle: 0, shaken: 0 },
  { middle: 0, shaken: 0.1 },
  { middle: 0.3, shaken: 0.3 },
];
/** How far the middle follows the duals at each step. */
const FOLLOWS = 0.15;

/** Where the search pauses: about 10 ms of work lie between two pauses. */
export type Pause = undefined;

/** What a generation needs besides the cover. */
export interface Generation {
  readonly makers: readonly PatternMaker[];
  readonly prices: readonly number[];
  /** First guess of what a piece of each kind is worth. */
  readonly guess: Float64Array;
  readonly pool: Pool;
  readonly chance: Chance;
}

export interface HowFar {
  /** Through all makers, at most. */
  readonly rounds: number;
  /** With which kind of worths it begins. */
  readonly first?: number;
  /** It is enough when the relaxation leaves no piece uncut. */
  readonly untilWhole?: boolean;
}

/**
 * Generates patterns for a residual until none is found that pays, or for so many rounds through all makers (Gilmore & Gomory 1965, with a
 * heuristic for the problem of one sheet). Leaves the cover relaxed; returns whether it came to the end.
 */
export function* generate(
  cover: Cover,
  residual: Residual,
  by: Generation,
  { rounds, first = 0, untilWhole = false }: HowFar,
): Generator<Pause, boolean> {
  const { makers, prices, pool, chance } = by;
  const middle = by.guess.slice();
  const done = (): boolean => (cover.relax()?.missing ?? 1) < 1e-9 && untilWhole;
  if (done()) return true;
  let tried = 0;
  for (let round = 0; round < rounds; round += 1) {
    let found = false;
    for (const maker of some(makers, residual, chance)) {
      const { middle: part, shaken } = TRIES[(first + tried) % TRIES.length];
      const worths = cover.worths.map(
        (dual, k) => (part * middle[k] + (1 - part) * dual) * (shaken > 0 ? 1 + shaken * (2 * chance.part() - 1) : 1),
      );
      const due = prices[maker.sheet] * (1 + LEAST_GAIN) + cover.sheetWorths[maker.sheet];
      let entered = false;
      for (const pattern of yield* maker.make({ left: residual.wanted, worths }, AT_ONCE)) {
        pool.add(pattern);
        if (pattern.counts.reduce((sum, n, k) => sum + n * cover.worths[k], 0) > due && cover.add(pattern))
          entered = true;
      }
      if (entered) {
        found = true;
        cover.relax();
        for (let k = 0; k < middle.length; k += 1) middle[k] += FOLLOWS * (cover.worths[k] - middle[k]);
      }
    }
    yield;
    if (untilWhole && done()) return true;
    if (!found) tried += 1;
    if (tried === TRIES.length) return true;
  }
  return false;
}

function some(makers: readonly PatternMaker[], { sheets }: Residual, chance: Chance): readonly PatternMaker[] {
  const able = makers.filter(({ sheet }) => sheets[sheet] > 0);
  for (let i = 0; able.length > ASKED && i < ASKED; i += 1) {
    const j = i + chance.below(able.length - i);
    [able[i], able[j]] = [able[j], able[i]];
  }
  return able.slice(0, ASKED);
}
