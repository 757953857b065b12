/** Of each item how many are taken, and what they are worth together. */
export interface Packed {
  readonly counts: Int32Array;
  readonly worth: number;
}

/** Items as they stand in the lists: those worth most for their size first. */
export interface Items {
  readonly sizes: ArrayLike<number>;
  readonly worths: ArrayLike<number>;
  /** So many of each at most. */
  readonly most: ArrayLike<number>;
}

/** Choices looked at, at most; few knapsacks of a strip need a tenth of it. */
const LOOKED_AT = 3000;

/**
 * The bounded knapsack by branching depth first, as many as fit of the best item first, cut short by Dantzig's bound (Horowitz & Sahni,
 * "Computing partitions with applications to the knapsack problem", Journal of the ACM 21, 1974; Martello & Toth, "Knapsack Problems",
 * 1990). Exact, but for a limit to the choices looked at: then the best so far.
 */
export function knapsack({ sizes, worths, most }: Items, room: number): Packed {
  const n = sizes.length;
  const least = new Float64Array(n + 1).fill(Number.POSITIVE_INFINITY);
  for (let i = n - 1; i >= 0; i -= 1) least[i] = Math.min(least[i + 1], sizes[i]);
  const counts = new Int32Array(n);
  const best = new Int32Array(n);
  let bestWorth = 0;
  let looked = 0;

  /** What the items from i on can bring to so much room, could the last be taken in part. */
  const hope = (i: number, space: number): number => {
    let sum = 0;
    let left = space;
    for (let k = i; k < n; k += 1) {
      if (sizes[k] > space) continue;
      const all = most[k] * sizes[k];
      if (all >= left) return sum + (left * worths[k]) / sizes[k];
      sum += most[k] * worths[k];
      left -= all;
    }
    return sum;
  };

  const go = (from: number, space: number, worth: number): void => {
    if (worth > bestWorth) {
      bestWorth = worth;
      best.set(counts);
    }
    for (let i = from; space >= least[i]; i += 1) {
      if (sizes[i] > space) continue;
      looked += 1;
      if (looked > LOOKED_AT || worth + hope(i, space) <= bestWorth * (1 + 1e-12)) return;
      for (let c = Math.min(most[i], Math.floor(space / sizes[i])); c > 0; c -= 1) {
        counts[i] = c;
        go(i + 1, space - c * sizes[i], worth + c * worths[i]);
      }
      counts[i] = 0;
    }
  };
  go(0, room, 0);
  return { counts: best, worth: bestWorth };
}
