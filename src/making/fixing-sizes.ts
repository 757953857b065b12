import { tenth } from '../base/tenth';
import type { Fixing } from '../vocabulary/book';
import type { Hold } from '../vocabulary/part';

/** A fixing chosen from the stock book, or what has to be bought in. */
export interface Chosen {
  readonly item?: Fixing;
  readonly name: string;
  /** Where the length comes from. */
  readonly rule: string;
  /** Work that goes with it: "counterbored 5.5". */
  readonly work?: string;
}

/** What a length must keep to, mm. */
interface Wanted {
  /** At least, and at most by habit. */
  readonly least: number;
  readonly usual: number;
  /** Longer than this it comes out again. */
  readonly most: number;
}

/** Screws: 2 to 2.5 times what they go through, so that at least half is in the base (joinery textbooks, from memory). */
const SCREW = {
  least: 2,
  usual: 2.5,
  rule: 'screw 2–2.5 × what it goes through, half of it in the base (joinery textbooks, from memory)',
};
/**
 * Into end grain half as long again in the base: it holds about three quarters as well there (after the Wood Handbook, ch. 8, from memory).
 * The shortest that does: for plates of 38 it is the trade's 100; for 45 the trade takes 100 too, and this rule more.
 */
const END_GRAIN = {
  least: 2.5,
  usual: 2.5,
  rule: 'into end grain half as long again in the base (after the Wood Handbook ch. 8, from memory)',
};
/** Brads: 2.5 to 3 times what they hold (trade, from memory). */
const BRAD = { least: 2.5, usual: 3, rule: 'brad 2.5–3 × what it holds (trade, from memory)' };

/**
 * The fixing for a hold. `beyond`: how much stuff there is behind what it goes through, where known. The longest within the rule; where
 * the book has none, the shortest that is longer and doesn't come out again; for a screw then a shorter one, counterbored until half of
 * it is in the base.
 */
export function chosenFor(hold: Hold, beyond: number | undefined, book: readonly Fixing[]): Chosen {
  const most = hold.through + (beyond ?? Infinity);
  if (hold.by === 'bolt') return boltFor(2 * hold.through, book);
  if (hold.by === 'dowel') return dowelFor(hold, book);
  const { least, usual, rule } = hold.by === 'brad' ? BRAD : hold.endGrain ? END_GRAIN : SCREW;
  const own = book.filter((f) => f.kind === (hold.by === 'brad' ? 'brad' : 'screw'));
  const wanted = { least: least * hold.through, usual: usual * hold.through, most };
  const item = best(own, wanted, hold.through);
  if (item) return { item, name: item.name, rule };
  const sunk = hold.by === 'screw' ? counterbored(own, hold, beyond) : undefined;
  if (sunk) return { ...sunk, rule };
  return { name: `${hold.by === 'brad' ? 'Brad' : 'Wood screw'}, ${inWords(wanted)}, to be bought`, rule };
}

/** Within the rule the longest; else the shortest beyond it. Of one length the stouter for frame timber, the thinner for sheet. */
function best(own: readonly Fixing[], { least, usual, most }: Wanted, through: number): Fixing | undefined {
  const stout = through >= STOUT ? -1 : 1;
  const fit = own
    .filter((f) => f.length >= least - NOISE && f.length <= most + NOISE)
    .sort((a, b) => a.length - b.length || stout * (a.diameter - b.diameter));
  const within = fit.filter((f) => f.length <= usual + NOISE);
  const longest = within.at(-1)?.length;
  return longest === undefined ? fit[0] : within.find((f) => f.length === longest);
}

/** Frame timber is held with 5 mm screws (trade, from memory); it is thicker than this. */
const STOUT = 30;
const NOISE = 1e-6;
/** No counterbore is deeper than this part of what the screw goes through (common practice, no source). */
const DEEPEST = 0.5;

/** The longest screw that can be let in: half of it in the base, in end grain three fifths. */
function counterbored(
  own: readonly Fixing[],
  { through, endGrain }: Hold,
  beyond = Infinity,
): Omit<Chosen, 'rule'> | undefined {
  const inBase = endGrain ? 0.6 : 0.5;
  const depth = (f: Fixing): number => through - (1 - inBase) * f.length;
  const item = [...own]
    .sort((a, b) => b.length - a.length)
    .find((f) => depth(f) > 0 && depth(f) <= DEEPEST * through && inBase * f.length <= beyond);
  if (!item) return undefined;
  return { item, name: item.name, work: `counterbored ${tenth(depth(item))}` };
}

const inWords = ({ least, usual, most }: Wanted): string => {
  if (least <= 0) return 'length to suit';
  if (most < least) return `no more than ${tenth(most)} long, or it comes through; let in until half is in the base`;
  const to = Math.min(usual, most);
  return to > least ? `${tenth(least)} to ${tenth(to)} long` : `at least ${tenth(least)} long`;
};

/** Nut and washers of a bolt by its diameter, mm: height of nut (ISO 4032) and thickness of a washer (ISO 7089), from memory. */
const NUTS: Readonly<Record<number, readonly [number, number]>> = {
  6: [5.2, 1.6],
  8: [6.8, 1.6],
  10: [8.4, 2],
  12: [10.8, 2.5],
};
/** A thread or so stands proud of the nut, mm (common practice, no source). */
const PROUD = 1.25;

/** The shortest bolt through so much timber with a nut and a washer on each side. */
export function boltFor(timber: number, book: readonly Fixing[]): Chosen {
  const need = (diameter: number): number => {
    const [nut, washer] = NUTS[diameter] ?? NUTS[12];
    return timber + nut + 2 * washer + PROUD;
  };
  const item = book
    .filter((f) => f.kind === 'bolt' && f.length >= need(f.diameter) - NOISE)
    .sort((a, b) => a.length - b.length || a.diameter - b.diameter)[0];
  const rule = 'bolt M8 or M10 through both, with nut and washers (trade, from memory; nut ISO 4032, washers ISO 7089)';
  return item
    ? { item, name: item.name, rule }
    : { name: `Bolt M8, at least ${Math.ceil(need(8))} long, with nut and washers, to be bought`, rule };
}

/** The shortest dowel that goes as far into one piece as into the other. */
function dowelFor({ through }: Hold, book: readonly Fixing[]): Chosen {
  const item = book
    .filter((f) => f.kind === 'dowel' && f.length >= 2 * through - NOISE)
    .sort((a, b) => a.length - b.length)[0];
  const rule = 'dowel as deep in one piece as in the other (common practice, no source)';
  return item ? { item, name: item.name, rule } : { name: `Dowel, ${tenth(2 * through)} long, to be bought`, rule };
}
