import type { Lying } from './valued';

/*
 * The most that can be cut from one sheet with cuts from edge to edge, any number of stages and of each piece: recursion over every
 * rectangle whose sides are sums of piece sides (Gilmore & Gomory, "The theory and computation of knapsack functions", Operations Research
 * 14, 1966; Beasley, "Algorithms for unconstrained two-dimensional guillotine cutting", Journal of the Operational Research Society 36, 1985).
 */

/** Sums of sides that a cut can lie at, from 0 up, none over the limit; the limit itself stands at the end. */
export function sumsUpTo(limit: number, sides: readonly number[]): Int32Array {
  const reached = new Uint8Array(limit + 1);
  reached[0] = 1;
  for (const side of new Set(sides))
    if (side > 0) for (let x = side; x <= limit; x += 1) if (reached[x - side]) reached[x] = 1;
  reached[limit] = 1;
  const sums: number[] = [];
  for (let x = 0; x <= limit; x += 1) if (reached[x]) sums.push(x);
  return Int32Array.from(sums);
}

/** For each length up to the limit the last of the sums that does not exceed it. */
function indexOfSum(sums: Int32Array, limit: number): Int32Array {
  const at = new Int32Array(limit + 1);
  for (let x = 0, i = 0; x <= limit; x += 1) {
    if (i + 1 < sums.length && sums[i + 1] <= x) i += 1;
    at[x] = i;
  }
  return at;
}

/** Cuts looked at between two pauses: some 5 ms (measured: about one a nanosecond). */
const PAUSE_AFTER = 4e6;

export type GuillotineCut =
  | { readonly kind: 'piece'; readonly lying: Lying }
  | { readonly kind: 'waste' }
  /** Parted at so much along x or along y. */
  | {
      readonly kind: 'cut';
      readonly axis: 'x' | 'y';
      readonly at: number;
      readonly parts: readonly [GuillotineCut, GuillotineCut];
    };

interface Size {
  readonly length: number;
  readonly width: number;
}

/** The table for one sheet and set of pieces, to be filled for other values again and again: the sums stay. */
export interface GuillotineTable {
  /** How many cuts one filling looks at: what it costs. */
  readonly work: number;
  /** The most value from the whole sheet; a value for each piece. */
  fill(values: ArrayLike<number>): number;
  /** The same with pauses, about 10 ms apart. */
  filling(values: ArrayLike<number>): Generator<undefined, number>;
  /** How many of each piece the last filling used. */
  counts(): Int32Array;
  /** How the last filling is cut. */
  tree(): GuillotineCut;
}

/** What one filling of a table with so many sums along x and along y looks at. */
export const workOf = (xs: number, ys: number): number => (xs * xs * ys + xs * ys * ys) / 4;

/** `lying`: every way in which a piece may lie; `pieces`: how many there are. A side of nothing is allowed: it is worth its value once. */
export function guillotineTable({ length, width }: Size, lying: readonly Lying[], pieces: number): GuillotineTable {
  const xs = sumsUpTo(
    length,
    lying.map((l) => l.x),
  );
  const ys = sumsUpTo(
    width,
    lying.map((l) => l.y),
  );
  const [nx, ny] = [xs.length, ys.length];
  const xAt = indexOfSum(xs, length);
  const yAt = indexOfSum(ys, width);
  /** Row by row in y, so that both ways of parting walk through memory evenly. */
  const worth = new Float64Array(nx * ny);
  /** 0: waste; n > 0: lying n − 1; n < 0: see below. */
  const how = new Int32Array(nx * ny);
  const inner = lying.map((l) => [xAt[l.x], yAt[l.y]] as const);

  const begin = (values: ArrayLike<number>): void => {
    worth.fill(0);
    how.fill(0);
    // The best single piece that fits: put at its own corner, then carried on to all larger rectangles as they are visited.
    lying.forEach((l, n) => {
      const cell = inner[n][1] * nx + inner[n][0];
      if (values[l.piece] > worth[cell]) {
        worth[cell] = values[l.piece];
        how[cell] = n + 1;
      }
    });
  };

  const fillRow = (j: number): void => {
    const row = j * nx;
    const y = ys[j];
    for (let i = 1; i < nx; i += 1) {
      const cell = row + i;
      let best = worth[cell];
      let way = how[cell];
      // A smaller rectangle's answer serves a larger one: parted off as a cut with waste.
      if (worth[cell - 1] > best) {
        best = worth[cell - 1];
        way = -1 - 2 * (i - 1);
      }
      if (worth[cell - nx] > best) {
        best = worth[cell - nx];
        way = -2 - 2 * (j - 1);
      }
      const x = xs[i];
      for (let k = 1; 2 * xs[k] <= x; k += 1) {
        const sum = worth[row + k] + worth[row + xAt[x - xs[k]]];
        if (sum > best) {
          best = sum;
          way = -1 - 2 * k;
        }
      }
      for (let k = 1; 2 * ys[k] <= y; k += 1) {
        const sum = worth[k * nx + i] + worth[yAt[y - ys[k]] * nx + i];
        if (sum > best) {
          best = sum;
          way = -2 - 2 * k;
        }
      }
      worth[cell] = best;
      how[cell] = way;
    }
  };

  function* filling(values: ArrayLike<number>): Generator<undefined, number> {
    begin(values);
    let work = 0;
    for (let j = 1; j < ny; j += 1) {
      fillRow(j);
      // Half of the pairs of sums in x, and those in y for every column.
      work += (nx * nx) / 4 + (nx * j) / 2;
      if (work < PAUSE_AFTER) continue;
      work = 0;
      yield;
    }
    return worth[nx * ny - 1];
  }
  const fill = (values: ArrayLike<number>): number => {
    const run = filling(values);
    for (;;) {
      const next = run.next();
      if (next.done) return next.value;
    }
  };

  /** The last sum within what is left of sum i beyond sum k. */
  const restX = (i: number, k: number): number => xAt[xs[i] - xs[k]];
  const restY = (j: number, k: number): number => yAt[ys[j] - ys[k]];

  const treeOf = (i: number, j: number): GuillotineCut => {
    const way = how[j * nx + i];
    if (i === 0 || j === 0 || way === 0) return { kind: 'waste' };
    if (way > 0) return { kind: 'piece', lying: lying[way - 1] };
    const along = (-way & 1) === 1;
    const k = along ? (-1 - way) / 2 : (-2 - way) / 2;
    return along
      ? { kind: 'cut', axis: 'x', at: xs[k], parts: [treeOf(k, j), treeOf(restX(i, k), j)] }
      : { kind: 'cut', axis: 'y', at: ys[k], parts: [treeOf(i, k), treeOf(i, restY(j, k))] };
  };

  const counts = (): Int32Array => {
    const counted = new Int32Array(pieces);
    const stack = [nx - 1, ny - 1];
    while (stack.length > 0) {
      const j = stack.pop()!;
      const i = stack.pop()!;
      const way = how[j * nx + i];
      if (i === 0 || j === 0 || way === 0) continue;
      if (way > 0) counted[lying[way - 1].piece] += 1;
      else if ((-way & 1) === 1) stack.push((-1 - way) / 2, j, restX(i, (-1 - way) / 2), j);
      else stack.push(i, (-2 - way) / 2, i, restY(j, (-2 - way) / 2));
    }
    return counted;
  };

  return { work: workOf(nx, ny), fill, filling, counts, tree: () => treeOf(nx - 1, ny - 1) };
}
