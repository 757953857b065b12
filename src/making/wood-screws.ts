import { tenth } from '../base/tenth';
import type { Fixing } from '../vocabulary/book';
import type { Hold } from '../vocabulary/part';
import { best, type Chosen, DEEPEST, downToSold, lengthInWords, upToSold, type Wanted } from './chosen';

/** Screws: 2 to 2.5 times what they go through, so that at least half is in the base (joinery textbooks, from memory). */
const SCREW = {
  least: 2,
  usual: 2.5,
  inBase: 0.5,
  rule: 'screw 2–2.5 × what it goes through, half of it in the base (joinery textbooks, from memory)',
};
/**
 * Into end grain half as long again in the base: it holds about three quarters as well there (after the Wood Handbook, ch. 8, from memory).
 * The shortest that does: for plates of 38 it is the trade's 100; for 45 the trade takes 100 too, and this rule more.
 */
const END_GRAIN = {
  least: 2.5,
  usual: 2.5,
  inBase: 0.6,
  rule: 'into end grain half as long again in the base (after the Wood Handbook ch. 8, from memory)',
};

/** Longest and shortest usual wood screw, mm (common practice, no source). */
const LONGEST = 150;
const SHORTEST = 15;

type Driven = Pick<Hold, 'through' | 'endGrain'>;

/**
 * The wood screw for so much stuff; `beyond`: how much there is behind it. The longest within the rule; where the book has none, the
 * shortest that is longer and doesn't come out again; then a shorter one, counterbored until half of it is in the base; then what is to
 * be bought: past the longest wood screws a coach screw or threaded rod.
 */
export function screwFor(hold: Driven, beyond: number, book: readonly Fixing[]): Chosen {
  const { through } = hold;
  const { least, usual, inBase, rule } = hold.endGrain ? END_GRAIN : SCREW;
  const own = book.filter((f) => f.kind === 'screw');
  const wanted = { least: least * through, usual: usual * through, most: through + beyond };
  const item = best(own, wanted, through);
  if (item) return { item, name: item.name, rule };
  // Let in until as much of it is in the base as the rule asks.
  const sunkBy = (length: number): number => through - (1 - inBase) * length;
  const sunk = [...own]
    .sort((a, b) => b.length - a.length)
    .find(({ length }) => sunkBy(length) > 0 && sunkBy(length) <= DEEPEST * through && inBase * length <= beyond);
  if (sunk) return { item: sunk, name: sunk.name, rule, ...counterbored(sunkBy(sunk.length)) };
  if (through <= 0) return { name: 'Wood screw, length to suit, to be bought', rule };
  if (wanted.most >= wanted.least) return { ...toBuy(wanted), rule };
  const length = Math.min(LONGEST, downToSold(beyond / inBase));
  if (length < SHORTEST) return { name: 'Too little behind for screws: glue and cramp', rule, none: true, glued: true };
  return { name: `Wood screw, ${length} long, to be bought`, rule, ...counterbored(sunkBy(length)) };
}

/** A screw that goes all the way in and does not come out again. */
function toBuy(wanted: Wanted): Pick<Chosen, 'name' | 'coach'> {
  if (wanted.least <= LONGEST) return { name: `Wood screw, ${lengthInWords(wanted, LONGEST)}, to be bought` };
  const length = Math.min(upToSold(wanted.least), wanted.most);
  return { name: `Coach screw or threaded rod, at least ${tenth(length)} long, to be bought`, coach: true };
}

const counterbored = (sunk: number): Pick<Chosen, 'sunk' | 'work'> => ({ sunk, work: `counterbored ${tenth(sunk)}` });
