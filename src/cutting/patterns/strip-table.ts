/*
 * What fills a strip best. A strip is as high as its highest piece; pieces lie side by side in it, those that are lower are trimmed. Pieces
 * come sorted by height, so that one run through them answers for the strips of every height.
 */

export interface StripPiece {
  /** Which piece it is: the row it counts for. */
  readonly piece: number;
  readonly turned: boolean;
  readonly along: number;
  readonly high: number;
  /** How many there may be of it in one strip. */
  readonly most: number;
}

/** How many of each strip piece (in the order of the table), and what they are worth. */
export interface Strip {
  readonly high: number;
  readonly counts: readonly number[];
  readonly worth: number;
}

export interface StripTable {
  readonly pieces: readonly StripPiece[];
  /** Fills the table for these worths, one for each strip piece; the worth of the best strip no higher than each piece is remembered. */
  fill(worths: ArrayLike<number>): void;
  /** The most that a strip that is so long is worth, of the pieces up to this one. */
  best(upTo: number, length: number): number;
  /** The strip that is worth so much. */
  strip(upTo: number): Strip;
}

/** Sorts by height and keeps a row of the table for each piece: (pieces + 1) × (length + 1) numbers. */
export function stripTable(length: number, unsorted: readonly StripPiece[]): StripTable {
  const pieces = [...unsorted].sort((a, b) => a.high - b.high || a.piece - b.piece);
  const across = length + 1;
  const worth = new Float64Array((pieces.length + 1) * across);
  let current: ArrayLike<number> = [];

  const fill = (worths: ArrayLike<number>): void => {
    current = worths;
    for (let n = 0; n < pieces.length; n += 1) {
      const from = n * across;
      const to = from + across;
      worth.copyWithin(to, from, to);
      const { along, most } = pieces[n];
      const each = worths[n];
      if (each <= 0) continue;
      // Bounded knapsack, copy by copy in powers of two.
      for (let left = Math.min(most, Math.floor(length / along)), bundle = 1; left > 0; left -= bundle, bundle *= 2) {
        bundle = Math.min(bundle, left);
        const long = bundle * along;
        const dear = bundle * each;
        for (let x = length; x >= long; x -= 1) {
          const sum = worth[to + x - long] + dear;
          if (sum > worth[to + x]) worth[to + x] = sum;
        }
      }
    }
  };

  const best = (upTo: number, x: number): number => worth[(upTo + 1) * across + x];

  const strip = (upTo: number): Strip => {
    const counts = new Array<number>(pieces.length).fill(0);
    let x = length;
    let high = 0;
    for (let n = upTo; n >= 0; n -= 1) {
      const { along, most } = pieces[n];
      const target = worth[(n + 1) * across + x];
      // The fewest copies that explain the worth; sums are made in other orders, hence the tolerance.
      let c = 0;
      while (
        c < most &&
        (c + 1) * along <= x &&
        worth[n * across + x - c * along] + c * current[n] < target - 1e-9 * (1 + target)
      )
        c += 1;
      counts[n] = c;
      x -= c * along;
      if (c > 0) high = Math.max(high, pieces[n].high);
    }
    return { high, counts, worth: best(upTo, length) };
  };

  return { pieces, fill, best, strip };
}
