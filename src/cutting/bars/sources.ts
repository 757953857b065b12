import type { BarProblem } from '../../vocabulary/cut-problem';
import type { Layout } from './layout';
import type { Source } from './task';
import type { Unit } from './units';

/** Pence in the money, when all prices are whole pence. */
const PENCE = 100;

/** The stocks of a problem, like ones as one, the roomiest first; and what of its money prices are counted in. */
export function sourcesOf(
  { stock, kerf }: BarProblem,
  layout: Layout,
  unit: Unit,
): { readonly sources: readonly Source[]; readonly perMoney: number } {
  const isWhole = stock.every(({ price }) => Math.abs(price * PENCE - Math.round(price * PENCE)) < 1e-6);
  const by = new Map<string, Source>();
  for (let i = 0; i < stock.length; i++) {
    const count = stock[i].count ?? Number.POSITIVE_INFINITY;
    const room = layout.room(i) + (layout.square ? kerf : layout.ends.outer);
    if (layout.room(i) <= 0 || count < 1) continue;
    const most = unit.up(room);
    const capacity = layout.square ? unit.down(room) : most;
    const price = isWhole ? Math.round(stock[i].price * PENCE) : stock[i].price;
    const key = `${capacity},${most},${price}`;
    const known = by.get(key);
    // What lies in the rack already goes first.
    const from = [...(known?.from ?? []), { stock: i, count }].sort(
      (a, b) => Number(stock[b.stock].offcut ?? false) - Number(stock[a.stock].offcut ?? false),
    );
    by.set(key, { capacity, most, price, count: (known?.count ?? 0) + count, from });
  }
  const sources = [...by.values()].sort((a, b) => b.most - a.most || a.price - b.price || b.capacity - a.capacity);
  return { sources: sources.filter((s) => !sources.some((other) => outdoes(other, s))), perMoney: isWhole ? PENCE : 1 };
}

/** As many as one likes, roomier, and no dearer: then nobody takes the other. */
const outdoes = (a: Source, b: Source): boolean =>
  a !== b &&
  a.count === Number.POSITIVE_INFINITY &&
  a.capacity >= b.most &&
  a.price <= b.price &&
  (a.capacity > b.capacity || a.price < b.price);
