import { tenth } from '../base/tenth';
import type { Fixing } from '../vocabulary/book';
import type { Hold } from '../vocabulary/part';
import { best, type Chosen, DEEPEST, downToSold, lengthInWords } from './chosen';
import { screwFor } from './wood-screws';

/** Brads: 2.5 to 3 times what they hold (trade, from memory). */
const BRAD = { least: 2.5, usual: 3, rule: 'brad 2.5–3 × what it holds (trade, from memory)' };
/** The longest that are usual are of 16 gauge: 38 to 64 mm (trade, from memory). */
const LONGEST = 64;
/** The shortest that are sold, mm (common practice, no source). */
const SHORTEST = 15;
/** A head under a pellet lies so deep, mm: enough glue line, and enough to pare flush (common practice, no source). */
const PELLET = 8;

/** The longest pin there is, mm: of the usual ones, or of the stock book. */
const longestIn = (book: readonly Fixing[]): number =>
  Math.max(LONGEST, ...book.flatMap(({ kind, length }) => (kind === 'brad' ? [length] : [])));

/** Whether pins are long enough for so much stuff, mm; what is thicker is screwed. */
export const pinned = (through: number, book: readonly Fixing[]): boolean => BRAD.least * through <= longestIn(book);

/**
 * The pin for so much stuff; `beyond`: how much there is behind it. A pin can't be let in: what is too thick for the longest is screwed
 * through counterbores with pellets glued over the heads, or from behind; and where there is too little behind for the rule, it is glued.
 */
export function pinFor(hold: Pick<Hold, 'through' | 'endGrain'>, beyond: number, book: readonly Fixing[]): Chosen {
  const { through } = hold;
  const { rule } = BRAD;
  const own = book.filter((f) => f.kind === 'brad');
  const wanted = { least: BRAD.least * through, usual: BRAD.usual * through, most: through + beyond };
  const longest = longestIn(book);
  if (!pinned(through, book)) return pelleted(hold, beyond, book);
  const item = best(own, wanted, through);
  if (item) return { item, name: item.name, rule };
  if (through <= 0) return { name: 'Brad, length to suit, to be bought', rule };
  if (wanted.most >= wanted.least) return { name: `Brad, ${lengthInWords(wanted, longest)}, to be bought`, rule };
  const length = downToSold(wanted.most);
  if (length < SHORTEST || length <= through)
    return { name: 'Too little behind for pins: glue and cramp', rule, none: true, glued: true };
  const work = 'glued too, for there is too little behind: so short it holds only until the glue has set';
  return { name: `Brad, ${length} long, to be bought`, rule, work, glued: true };
}

/** A screw with its head under a pellet, where wood screws are long enough. */
function pelleted(
  { through, endGrain }: Pick<Hold, 'through' | 'endGrain'>,
  beyond: number,
  book: readonly Fixing[],
): Chosen {
  const screw = screwFor({ through: through - PELLET, endGrain }, beyond, book);
  const rule = `too thick for pins, of which the longest is ${longestIn(book)} (16 gauge to ${LONGEST}; trade, from memory); ${screw.rule}`;
  // Let in deeper than that it holds by too little of the piece.
  if (screw.none || screw.coach || PELLET + (screw.sunk ?? 0) > DEEPEST * through)
    return { name: 'Too thick for pins: glue and screw from behind', rule, none: true, glued: true };
  return { ...screw, rule, work: `counterbored ${tenth(PELLET + (screw.sunk ?? 0))} and pelleted` };
}
