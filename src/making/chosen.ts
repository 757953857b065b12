import { tenth } from '../base/tenth';
import type { Fixing } from '../vocabulary/book';

/** A fixing chosen from the stock book, or what has to be bought in. */
export interface Chosen {
  readonly item?: Fixing;
  readonly name: string;
  /** Where the length comes from. */
  readonly rule: string;
  /** How deep it is let in, mm; not said: flush. */
  readonly sunk?: number;
  /** Work that goes with it: "counterbored 5.5". */
  readonly work?: string;
  /** Nothing of the kind will hold: the name says what is done instead, and nothing is counted. */
  readonly none?: true;
  /** Longer than wood screws are sold. */
  readonly coach?: true;
  /** Glued too, whatever its room says: by itself it holds too little. */
  readonly glued?: true;
}

/** What a length must keep to, mm. */
export interface Wanted {
  /** At least, and at most by habit. */
  readonly least: number;
  readonly usual: number;
  /** Longer than this it comes out again. */
  readonly most: number;
}

export const NOISE = 1e-6;
/** Frame timber is held with 5 mm screws (trade, from memory); it is thicker than this. */
const STOUT = 30;
/** No counterbore is deeper than this part of what is held (common practice, no source). */
export const DEEPEST = 0.5;
/** Lengths to be bought are asked for in steps of this, mm: so screws and pins are sold (common practice, no source). */
const SOLD_BY = 5;

/** Within the rule the longest; else the shortest beyond it. Of one length the stouter for frame timber, the thinner for sheet. */
export function best(own: readonly Fixing[], { least, usual, most }: Wanted, through: number): Fixing | undefined {
  const stout = through >= STOUT ? -1 : 1;
  const fit = own
    .filter((f) => f.length >= least - NOISE && f.length <= most + NOISE)
    .sort((a, b) => a.length - b.length || stout * (a.diameter - b.diameter));
  const within = fit.filter((f) => f.length <= usual + NOISE);
  const longest = within.at(-1)?.length;
  return longest === undefined ? fit[0] : within.find((f) => f.length === longest);
}

/** A length as it is asked for: up, or down, to what is sold. */
export const upToSold = (length: number): number => Math.ceil(length / SOLD_BY - NOISE) * SOLD_BY;
export const downToSold = (length: number): number => Math.floor(length / SOLD_BY + NOISE) * SOLD_BY;

/** A length to be bought, in words; `longest`: as they are sold. Between the least and the most there is room. */
export function lengthInWords({ least, usual, most }: Wanted, longest: number): string {
  const [from, to] = [upToSold(least), downToSold(Math.min(usual, most, longest))];
  if (from < to) return `${from} to ${to} long`;
  if (from === to) return `${from} long`;
  const limit = Math.min(most, longest);
  return from <= limit ? `at least ${from} long` : `${tenth(limit)} long`;
}
