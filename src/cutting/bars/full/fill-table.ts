import type { Fill } from './fills';
import { LEAST_GAIN } from './gainful';

/** Cells of the table of decisions, a byte each: what memory and a step's time allow. */
const MOST_CELLS = 24_000_000;

/** The value of a length that no pieces come to. */
const IMPOSSIBLE = -1e12;

/** Fills of any number of pieces that are worth something by prices of kinds, which may be below 0; the worthiest first. */
export type Fills = (values: ArrayLike<number>, left: readonly number[]) => readonly Fill[];

/**
 * Bars filled to the end that are worth the most (dynamic programming over length): for each kind longer than half a bar the best that holds it,
 * and the best without any. None where the table would be too large. Sizes are whole and fall from kind to kind.
 */
export function fillTable(sizes: readonly number[], capacity: number): Fills {
  const width = capacity + 1;
  const best = new Float64Array(width);
  let taken = new Uint8Array(0);
  return (values, left) => {
    const short: number[] = [];
    const long: number[] = [];
    // Smallest first: large ones touch few cells.
    for (let kind = sizes.length - 1; kind >= 0; kind--) {
      if (left[kind] <= 0 || sizes[kind] > capacity) continue;
      if (2 * sizes[kind] > capacity) long.push(kind);
      else for (let n = Math.min(left[kind], Math.floor(capacity / sizes[kind])); n > 0; n--) short.push(kind);
    }
    const cells = short.length * width;
    if (cells > MOST_CELLS) return [];
    if (taken.length < cells) taken = new Uint8Array(cells);
    else taken.fill(0, 0, cells);
    best.fill(IMPOSSIBLE);
    best[0] = 0;
    let reach = 0;
    for (let row = 0; row < short.length; row++) {
      const size = sizes[short[row]];
      reach = Math.min(capacity, reach + size);
      take(best, taken, row * width, size, values[short[row]], reach);
    }
    const found: { readonly value: number; readonly fill: Fill }[] = [];
    const add = (value: number, lead: Fill, room: number): void => {
      if (value <= LEAST_GAIN) return;
      const fill = [...lead];
      for (let row = short.length - 1, c = room; row >= 0 && c > 0; row--)
        if (taken[row * width + c] === 1) {
          fill.push(short[row]);
          c -= sizes[short[row]];
        }
      found.push({ value, fill });
    };
    add(best[capacity], [], capacity);
    for (const kind of long) add(values[kind] + best[capacity - sizes[kind]], [kind], capacity - sizes[kind]);
    return found.sort((a, b) => b.value - a.value).map(({ fill }) => fill);
  };
}

/** One piece more, for every length from `reach` down. */
function take(best: Float64Array, taken: Uint8Array, at: number, size: number, value: number, reach: number): void {
  for (let c = reach; c >= size; c--) {
    const sum = best[c - size] + value;
    if (sum > best[c]) {
      best[c] = sum;
      taken[at + c] = 1;
    }
  }
}
