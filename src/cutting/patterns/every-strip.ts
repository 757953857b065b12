import type { Strip, StripTable } from './strip-table';

export interface EveryStrip {
  readonly strips: readonly Strip[];
  /** False: there were more than allowed. */
  readonly complete: boolean;
}

/**
 * All strips that lose at most so much: their height at its price, less what their pieces are worth by the table's last filling. Depth first
 * from the highest piece down; the table says what the lower ones can still bring.
 */
export function everyStrip(
  table: StripTable,
  length: number,
  worths: ArrayLike<number>,
  priceOf: (high: number) => number,
  loss: number,
  most: number,
): EveryStrip {
  const { pieces } = table;
  const strips: Strip[] = [];
  const counts = new Array<number>(pieces.length).fill(0);
  let complete = true;

  /** Of the pieces up to n, with so much of the length left and worth so far. */
  const go = (n: number, left: number, worth: number, price: number, high: number): void => {
    if (!complete) return;
    if (n < 0) {
      if (strips.length === most) complete = false;
      else strips.push({ high, counts: [...counts], worth });
      return;
    }
    const { along } = pieces[n];
    for (let c = Math.min(pieces[n].most, Math.floor(left / along)); c >= 0; c -= 1) {
      const rest = left - c * along;
      const sum = worth + c * worths[n];
      // Worths below zero only lose: the table counts them as nothing, which is an upper bound still.
      if (sum + table.best(n - 1, rest) < price - loss) continue;
      counts[n] = c;
      go(n - 1, rest, sum, price, high);
      counts[n] = 0;
    }
  };

  for (let n = pieces.length - 1; n >= 0 && complete; n -= 1) {
    const { along, high } = pieces[n];
    const price = priceOf(high);
    // The highest piece of the strip is this one, at least once; of those as high as it only such as come before.
    for (let c = Math.min(pieces[n].most, Math.floor(length / along)); c >= 1; c -= 1) {
      const rest = length - c * along;
      if (c * worths[n] + table.best(n - 1, rest) < price - loss) continue;
      counts[n] = c;
      go(n - 1, rest, c * worths[n], price, high);
      counts[n] = 0;
    }
  }
  return { strips, complete };
}
