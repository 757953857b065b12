import type { AnyCutPlan } from '../../vocabulary/cut-plan';
import { money } from './account';

/** What is different in a later plan of the same problem. */
export interface Changes {
  /** How much more it costs; negative: less. */
  readonly cost: number;
  /** How many more sheets or bars; negative: fewer. Of each stock where it is not 0. */
  readonly sheets: number;
  readonly stock: readonly { readonly stock: number; readonly more: number }[];
  /** Pieces that lie on another sheet or bar than before, and that were or are no longer placed. */
  readonly moved: number;
  readonly placed: number;
  readonly dropped: number;
}

interface Lot {
  readonly stock: number;
  readonly pieces: readonly { readonly piece: number }[];
}

const lotsOf = (plan: AnyCutPlan): readonly Lot[] => (plan.kind === 'sheets' ? plan.sheets : plan.bars);

/**
 * What has changed since the last plan. Sheets have no names: each of the old ones is taken for the new one of the same stock that shares most
 * pieces with it (greedily), and copies of a piece are alike.
 */
export function changes(before: AnyCutPlan, after: AnyCutPlan): Changes {
  const [old, now] = [lotsOf(before), lotsOf(after)];
  const stocks = [...new Set([...old, ...now].map(({ stock }) => stock))].sort((a, b) => a - b);
  const count = (lots: readonly Lot[], stock: number): number =>
    lots.reduce((sum, lot) => sum + (lot.stock === stock ? 1 : 0), 0);
  const [had, has] = [tally(old.flatMap(({ pieces }) => pieces)), tally(now.flatMap(({ pieces }) => pieces))];
  const common = shared(had, has);
  const stayed = stocks.reduce((sum, stock) => {
    const own = (lots: readonly Lot[]) => lots.filter((lot) => lot.stock === stock).map(({ pieces }) => tally(pieces));
    return sum + staying(own(old), own(now));
  }, 0);
  const total = (counts: ReadonlyMap<number, number>): number => [...counts.values()].reduce((sum, n) => sum + n, 0);
  return {
    cost: money(after.cost - before.cost) + 0,
    sheets: now.length - old.length,
    stock: stocks
      .map((stock) => ({ stock, more: count(now, stock) - count(old, stock) }))
      .filter(({ more }) => more !== 0),
    moved: common - stayed,
    placed: total(has) - common,
    dropped: total(had) - common,
  };
}

type Counts = ReadonlyMap<number, number>;

function tally(pieces: Lot['pieces']): Counts {
  const counts = new Map<number, number>();
  for (const { piece } of pieces) counts.set(piece, (counts.get(piece) ?? 0) + 1);
  return counts;
}

const shared = (a: Counts, b: Counts): number =>
  [...a].reduce((sum, [piece, n]) => sum + Math.min(n, b.get(piece) ?? 0), 0);

/** How many pieces stay, when each old lot is matched with the new one that shares most with it. */
function staying(old: readonly Counts[], now: readonly Counts[]): number {
  const pairs = old
    .flatMap((a, i) => now.map((b, j) => ({ i, j, common: shared(a, b) })))
    .filter(({ common }) => common > 0);
  pairs.sort((a, b) => b.common - a.common || a.i - b.i || a.j - b.j);
  const [left, right] = [new Set<number>(), new Set<number>()];
  let sum = 0;
  for (const { i, j, common } of pairs) {
    if (left.has(i) || right.has(j)) continue;
    left.add(i);
    right.add(j);
    sum += common;
  }
  return sum;
}
