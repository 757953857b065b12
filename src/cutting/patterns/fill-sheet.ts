import { stacker, type Wanted } from './blocks';
import { type FilledStrip, filledStrip, type Offers, offersFor } from './fill-strip';
import type { Lengthwise } from './lengthwise';

export interface FilledSheet {
  readonly side: Lengthwise;
  readonly strips: readonly FilledStrip[];
  readonly worth: number;
}

/** The most valuable ways found to cut one sheet parted one way, the best first; at most so many. Pauses in between. */
export type SheetFiller = (wanted: Wanted, most: number) => Generator<undefined, readonly FilledSheet[]>;

/** Heights that are tried truly at each level, of those that look best. */
const TRIED = 3;
/** Heights whose best strip is made before looking ahead. */
const MADE_FIRST = 8;
/** What a strip that is only known by its bound is mostly worth of it. By trial. */
const OF_BOUND = 0.97;

/** Steps in which rests of the sheet are told apart, at most. */
const CELLS = 800;
/** Kinds that are thought of for one sheet: of more, those worth most for their area. */
const KINDS = 48;

/** The strip of one height while everything is wanted: what it is worth, or can be at most; the strip once it was made. */
interface Hope {
  readonly offers: Offers;
  worth: number;
  strip?: FilledStrip;
}

/**
 * Strips one above the other. What the best strip of each height is worth while everything is still wanted says, by a knapsack over the heights,
 * what a rest of the sheet can bring; strips are then taken one after the other, looking ahead with that, each filled anew from what is still
 * wanted.
 */
export function sheetFiller(side: Lengthwise): SheetFiller {
  const { high, variants, ways } = side;
  const step = Math.max(1, Math.ceil(high / CELLS));
  const ahead = new Float64Array(Math.floor(high / step) + 1);

  const lookAhead = (hopes: readonly Hope[]): void => {
    ahead.fill(0);
    const sizes = hopes.map(({ offers }) => Math.ceil(offers.high / step));
    for (let y = 1; y < ahead.length; y += 1) {
      let best = ahead[y - 1];
      for (let n = 0; n < sizes.length && sizes[n] <= y; n += 1) {
        const sum = hopes[n].worth + ahead[y - sizes[n]];
        if (sum > best) best = sum;
      }
      ahead[y] = best;
    }
  };
  const aheadOf = (room: number): number => ahead[Math.floor(room / step)];
  const inOrder = (hopes: readonly Hope[], room: number): { n: number; hope: number }[] =>
    hopes
      .flatMap(({ worth, offers }, n) =>
        offers.high <= room && worth > 0 ? [{ n, hope: worth + aheadOf(room - offers.high) }] : [],
      )
      .sort((a, b) => b.hope - a.hope);

  return function* (all, most) {
    const { worths } = all;
    const wanted = dearest(all);
    const stack = stacker(side, worths);
    const offersOf = (h: number, left: Int32Array): Offers => offersFor(side, h, left, worths, stack);
    const heights = [...new Set(variants.filter(({ kind }) => wanted[kind] > 0).map((v) => v.high))];
    if (heights.length === 0) return [];
    const hopes: Hope[] = heights.map((h) => {
      const offers = offersOf(h, wanted);
      return { offers, worth: OF_BOUND * offers.bound };
    });
    const made = (n: number): FilledStrip => {
      const hope = hopes[n];
      if (!hope.strip) {
        hope.strip = filledStrip(side, hope.offers, wanted, stack);
        hope.worth = hope.strip.worth;
      }
      return hope.strip;
    };
    lookAhead(hopes);
    for (const { n } of inOrder(hopes, high).slice(0, MADE_FIRST)) made(n);
    lookAhead(hopes);
    yield;
    const filled: FilledSheet[] = [];
    for (const { n } of inOrder(hopes, high).slice(0, most)) {
      const start = made(n);
      if (start.blocks.length > 0) filled.push(completed(start));
      yield;
    }
    return filled.sort((a, b) => b.worth - a.worth);

    function completed(start: FilledStrip): FilledSheet {
      const still = wanted.slice();
      const strips: FilledStrip[] = [];
      let room = high;
      let worth = 0;
      for (let next: FilledStrip | undefined = start; next; next = following(still, room)) {
        strips.push(next);
        take(next, still);
        room -= next.high;
        worth += next.worth;
      }
      return { side, strips, worth };
    }

    function following(still: Int32Array, room: number): FilledStrip | undefined {
      let best: FilledStrip | undefined;
      let bestHope = 0;
      const weigh = (strip: FilledStrip): void => {
        const hope = strip.worth + aheadOf(room - strip.high);
        if (strip.blocks.length > 0 && (!best || hope > bestHope)) {
          best = strip;
          bestHope = hope;
        }
      };
      let tried = 0;
      for (const { n, hope } of inOrder(hopes, room)) {
        if (best && (hope <= bestHope || tried === TRIED)) break;
        const { strip } = hopes[n];
        if (strip && allLeft(strip, still)) weigh(strip);
        else {
          const offers = offersOf(heights[n], still);
          if (best && offers.bound + aheadOf(room - offers.high) <= bestHope) continue;
          weigh(filledStrip(side, offers, still, stack));
          tried += 1;
        }
      }
      // Stacks can use all the height that is left, as far as the saw's cut reaches.
      const rest = Math.min(room, side.longestCut);
      if (ways.stacks && rest > heights[0] && !heights.includes(rest)) {
        const offers = offersOf(rest, still);
        if (!best || offers.bound > bestHope) weigh(filledStrip(side, offers, still, stack));
      }
      return best;
    }

    function take(strip: FilledStrip, left: Int32Array): void {
      for (const { stack } of strip.blocks) for (const n of stack) left[variants[n].kind] -= 1;
    }

    function allLeft(strip: FilledStrip, left: Int32Array): boolean {
      const rest = left.slice();
      take(strip, rest);
      return strip.blocks.every(({ stack }) => stack.every((n) => rest[variants[n].kind] >= 0));
    }
  };

  function dearest({ left, worths }: Wanted): Int32Array {
    const density = new Float64Array(left.length);
    for (const { kind, along, high: h } of variants) if (left[kind] > 0) density[kind] = worths[kind] / (along * h);
    const order = [...density].filter((d) => d > 0).sort((a, b) => b - a);
    if (order.length <= KINDS) return left;
    return left.map((n, k) => (density[k] >= order[KINDS - 1] ? n : 0));
  }
}
