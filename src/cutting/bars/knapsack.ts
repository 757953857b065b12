/** Cells of the table of decisions, a byte each: what memory and a step's time allow. */
const MOST_CELLS = 24_000_000;

/** Kinds and how often each, nothing twice. */
export type Times = readonly (readonly [kind: number, times: number])[];

/** A filled knapsack for every capacity up to the greatest. Lives until the table is filled anew. */
export interface Filled {
  /** The greatest value that fits into each capacity. */
  readonly best: Float64Array;
  /** What makes it up. */
  trace(capacity: number): Times;
}

/**
 * The bounded knapsack by dynamic programming, kinds split in binary bundles. Sizes are whole numbers above 0; kinds without value are left
 * out. Undefined when the table would be too large.
 */
export type Knapsack = (
  sizes: ArrayLike<number>,
  values: ArrayLike<number>,
  limits: ArrayLike<number>,
  capacity: number,
) => Filled | undefined;

interface Bundle {
  readonly kind: number;
  readonly times: number;
  readonly size: number;
  readonly value: number;
}

/** A knapsack with tables of its own, used again at every call. */
export function knapsackTable(mostCells = MOST_CELLS): Knapsack {
  let best = new Float64Array(0);
  let taken = new Uint8Array(0);
  return (sizes, values, limits, capacity) => {
    const width = capacity + 1;
    const bundles = bundled(sizes, values, limits, capacity);
    if (Math.max(1, bundles.length) * width > mostCells) return undefined;
    if (best.length < width) best = new Float64Array(width);
    if (taken.length < bundles.length * width) taken = new Uint8Array(bundles.length * width);
    best.fill(0, 0, width);
    taken.fill(0, 0, bundles.length * width);
    for (let row = 0; row < bundles.length; row++) take(best, taken, row * width, bundles[row], capacity);
    return { best, trace: (from) => traced(taken, bundles, width, from) };
  };
}

/** One bundle more, for every capacity from the greatest down. */
function take(best: Float64Array, taken: Uint8Array, at: number, { size, value }: Bundle, capacity: number): void {
  for (let c = capacity; c >= size; c--) {
    const sum = best[c - size] + value;
    if (sum > best[c]) {
      best[c] = sum;
      taken[at + c] = 1;
    }
  }
}

function traced(taken: Uint8Array, bundles: readonly Bundle[], width: number, from: number): Times {
  const times = new Map<number, number>();
  let c = from;
  for (let row = bundles.length - 1; row >= 0; row--) {
    const bundle = bundles[row];
    if (bundle.size > c || taken[row * width + c] === 0) continue;
    times.set(bundle.kind, (times.get(bundle.kind) ?? 0) + bundle.times);
    c -= bundle.size;
  }
  return [...times];
}

/** Smallest first: large ones touch few cells. */
function bundled(
  sizes: ArrayLike<number>,
  values: ArrayLike<number>,
  limits: ArrayLike<number>,
  capacity: number,
): readonly Bundle[] {
  const bundles: Bundle[] = [];
  for (let kind = sizes.length - 1; kind >= 0; kind--) {
    const size = sizes[kind];
    if (values[kind] <= 0 || size > capacity) continue;
    let left = Math.min(limits[kind], Math.floor(capacity / size));
    for (let times = 1; left > 0; times *= 2) {
      const now = Math.min(times, left);
      bundles.push({ kind, times: now, size: size * now, value: values[kind] * now });
      left -= now;
    }
  }
  return bundles;
}
