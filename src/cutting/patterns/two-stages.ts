import type { LpSolver } from '../lp';
import { everyStrip } from './every-strip';
import { type Strip, type StripPiece, stripTable } from './strip-table';
import { lyings, type ValuedSheet } from './valued';

/*
 * The most value from one sheet in two stages – strips first, then pieces off each strip, the lower ones trimmed – with limited numbers of
 * each piece. Exact: the linear relaxation over all ways of filling a strip is solved by generating them (Gilmore & Gomory, "Multistage
 * cutting stock problems of two and more dimensions", Operations Research 13, 1965); its duals bound what any strip of a better answer can
 * cost, all such strips are listed, and the best whole-numbered choice among them is the optimum (column enumeration after Baldacci,
 * Christofides & Mingozzi, "An exact algorithm for the vehicle routing problem …", Mathematical Programming 115, 2008).
 */

export interface CutStrip {
  readonly high: number;
  readonly pieces: readonly { readonly piece: number; readonly turned: boolean; readonly count: number }[];
}

export interface TwoStages {
  readonly value: number;
  /** No two-stage way of cutting is worth more. */
  readonly proven: boolean;
  /** One above the other in y when the first cuts lie along x, side by side in x otherwise. */
  readonly strips: readonly CutStrip[];
}

export interface TwoStageLimits {
  /** Strips listed at most. */
  readonly strips: number;
  readonly nodes: number;
  readonly patienceS: number;
}

const LIMITS: TwoStageLimits = { strips: 60_000, nodes: 200_000, patienceS: 60 };
/** Reduced costs and sums of values within so much count as equal, as a part of the value. */
const TINY = 1e-7;

/** `first`: which way the first cuts run. Values must not be negative. */
export function twoStages(sheet: ValuedSheet, first: 'along' | 'across', lp: LpSolver, limits = LIMITS): TwoStages {
  const along = first === 'along';
  const [length, height] = along ? [sheet.length, sheet.width] : [sheet.width, sheet.length];
  const table = stripTable(length, stripPieces(sheet, along));
  const { pieces } = table;
  const most = sheet.pieces.map((p) => p.most ?? Number.POSITIVE_INFINITY);
  const values = pieces.map(({ piece }) => sheet.pieces[piece].value);
  const rows = [{ lower: -Infinity, upper: height }, ...most.map((upper) => ({ lower: -Infinity, upper }))];
  const whole = values.every(Number.isInteger);

  const columns: Strip[] = [];
  const master = lp(rows);
  const add = (strip: Strip, into: typeof master): void => {
    const used = new Map<number, number>();
    strip.counts.forEach((c, n) => {
      if (c > 0) used.set(pieces[n].piece, (used.get(pieces[n].piece) ?? 0) + c);
    });
    const value = strip.counts.reduce((sum, c, n) => sum + c * values[n], 0);
    const often = Math.floor(height / strip.high);
    into.addColumn(-value, [0, ...[...used.keys()].map((p) => p + 1)], [strip.high, ...used.values()], often);
  };

  try {
    // Relaxation.
    let bound = 0;
    let duals: Float64Array = new Float64Array(rows.length);
    let reduced = values;
    for (;;) {
      table.fill(reduced);
      let entered = 0;
      for (let n = 0; n < pieces.length; n += 1) {
        if (n + 1 < pieces.length && pieces[n + 1].high === pieces[n].high) continue;
        const gain = table.best(n, length) + duals[0] * pieces[n].high;
        if (gain <= TINY * (1 + bound)) continue;
        const strip = table.strip(n);
        if (strip.high < pieces[n].high) continue;
        columns.push(strip);
        add(strip, master);
        entered += 1;
      }
      if (entered === 0) break;
      const relaxed = master.relax();
      if (!relaxed) break;
      bound = -relaxed.cost;
      duals = relaxed.duals;
      reduced = pieces.map(({ piece }, n) => values[n] + duals[piece + 1]);
    }
    if (columns.length === 0) return { value: 0, proven: true, strips: [] };
    // Over the strips at hand: mostly the optimum, or near.
    const near = master.whole(limits);
    const least = near ? -near.cost : 0;
    const step = whole ? 1 - 1e-6 : TINY * (1 + bound);
    const answer = (amounts: readonly number[], from: readonly Strip[], value: number, proven: boolean): TwoStages => ({
      value: whole ? Math.round(value) : value,
      proven,
      strips: from.flatMap((strip, s) => new Array<CutStrip>(amounts[s]).fill(cutStrip(strip, pieces))),
    });
    if (near && bound < least + step) return answer(near.amounts, columns, least, true);
    const every = everyStrip(table, length, reduced, (high) => -duals[0] * high, bound - least - step, limits.strips);
    const full = lp(rows);
    try {
      for (const strip of every.strips) add(strip, full);
      const best = every.strips.length > 0 ? full.whole(limits) : undefined;
      const better = best !== undefined && -best.cost > least + TINY;
      const done = every.complete && (best === undefined || -best.bound < Math.max(-best.cost, least) + step);
      if (better) return answer(best.amounts, every.strips, -best.cost, done);
      return near ? answer(near.amounts, columns, least, done) : { value: 0, proven: false, strips: [] };
    } finally {
      full.dispose();
    }
  } finally {
    master.dispose();
  }
}

function stripPieces(sheet: ValuedSheet, along: boolean): readonly StripPiece[] {
  const length = along ? sheet.length : sheet.width;
  return lyings(sheet).map(({ piece, turned, x, y }) => ({
    piece,
    turned,
    along: along ? x : y,
    high: along ? y : x,
    most: Math.min(sheet.pieces[piece].most ?? Number.POSITIVE_INFINITY, Math.floor(length / (along ? x : y))),
  }));
}

const cutStrip = ({ high, counts }: Strip, pieces: readonly StripPiece[]): CutStrip => ({
  high,
  pieces: counts.flatMap((count, n) =>
    count > 0 ? [{ piece: pieces[n].piece, turned: pieces[n].turned, count }] : [],
  ),
});
