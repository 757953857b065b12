import type { Scaled } from './scaled';

/** Mixes that are kept. */
const MOST = 12;
/** Mixes looked at, at most. */
const LOOKED = 20_000;

/**
 * How many sheets of each one may use within a budget: mixes to which no sheet can be added, and whose area is enough for that of the pieces; those
 * with most area first. None when there are too many to look at: the sheets are then as good as free.
 */
export function mixesOf({ sheets }: Scaled, budget: number, area: number): Int32Array[] {
  const found: { area: number; caps: Int32Array }[] = [];
  const caps = new Int32Array(sheets.length);
  let looked = 0;
  const fits = (price: number, left: number): boolean => price <= left;
  const go = (s: number, left: number, covered: number): void => {
    if (++looked > LOOKED) return;
    if (s === sheets.length) {
      const more = sheets.some(({ price, count }, i) => caps[i] < count && fits(price, left));
      if (!more && covered >= area) found.push({ area: covered, caps: caps.slice() });
      return;
    }
    const { price, count, length, width } = sheets[s];
    const most = price > 0 ? Math.min(count, Math.floor(left / price)) : count;
    // The last kind of sheet is used as far as it goes.
    for (let n = most; n >= (s === sheets.length - 1 ? most : 0); n--) {
      caps[s] = n;
      go(s + 1, left - n * price, covered + n * length * width);
    }
    caps[s] = 0;
  };
  if (sheets.length > 0) go(0, budget, 0);
  if (looked > LOOKED) return [];
  return found
    .sort((a, b) => b.area - a.area)
    .slice(0, MOST)
    .map((one) => one.caps);
}
