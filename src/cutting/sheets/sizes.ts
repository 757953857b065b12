import type { Scaled } from './scaled';

/** In which order pieces are put in: the greatest first by one of these, or by chance. */
export type Order = 'area' | 'long' | 'short' | 'length' | 'width' | 'around' | 'chance';

/** What must lie together goes in before all else. */
const AHEAD = 1e15;

/** What kinds are put in order by. */
export function sizesOf({ kinds, sets }: Scaled): Record<Exclude<Order, 'chance'>, Float64Array> {
  const ahead = kinds.map(({ set }) => (set < 0 ? 0 : AHEAD * (sets.length - set)));
  const by = (f: (l: number, w: number) => number): Float64Array =>
    Float64Array.from(kinds, ({ length, width }, k) => f(length, width) + ahead[k]);
  return {
    area: by((l, w) => l * w),
    long: by((l, w) => Math.max(l, w)),
    short: by((l, w) => Math.min(l, w)),
    length: by((l) => l),
    width: by((_, w) => w),
    around: by((l, w) => l + w),
  };
}
