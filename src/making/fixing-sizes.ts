import type { Fixing } from '../vocabulary/book';
import type { Hold } from '../vocabulary/part';
import { type Chosen, NOISE, upToSold } from './chosen';
import { pinFor } from './pins';
import { screwFor } from './wood-screws';

/** The fixing for a hold. `beyond`: how much stuff there is behind what it goes through, where known. */
export function chosenFor(hold: Hold, beyond: number | undefined, book: readonly Fixing[]): Chosen {
  switch (hold.by) {
    case 'bolt':
      return boltFor(2 * hold.through, book);
    case 'dowel':
      return dowelFor(hold, book);
    case 'brad':
      return pinFor(hold, beyond ?? Infinity, book);
    default:
      return screwFor(hold, beyond ?? Infinity, book);
  }
}

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
    : { name: `Bolt M8, at least ${upToSold(need(8))} long, with nut and washers, to be bought`, rule };
}

/** The shortest dowel that goes as far into one piece as into the other. */
function dowelFor({ through }: Hold, book: readonly Fixing[]): Chosen {
  const item = book
    .filter((f) => f.kind === 'dowel' && f.length >= 2 * through - NOISE)
    .sort((a, b) => a.length - b.length)[0];
  const rule = 'dowel as deep in one piece as in the other (common practice, no source)';
  if (item) return { item, name: item.name, rule };
  const length = through > 0 ? `${upToSold(2 * through)} long` : 'length to suit';
  return { name: `Dowel, ${length}, to be bought`, rule };
}
