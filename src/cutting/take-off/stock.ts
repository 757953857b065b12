import type { Hardwood, Moulding, Sheet, StockItem, Timber } from '../../vocabulary/book';
import type { CutBatch, Offcut } from '../../vocabulary/cut-plan';
import type { BarStock, SheetStock } from '../../vocabulary/cut-problem';
import type { Cutting } from '../../vocabulary/job';
import { MOST } from '../most';
import { fits, hundredth } from './sawn';

/** Stock of a problem, and where each of it comes from. */
export interface Stocked<S> {
  readonly stock: readonly S[];
  readonly from: CutBatch['from'];
}

/** Sheets of one stuff in all their sizes, and the offcuts of any of them. */
export function sheetStock(
  sheets: readonly Sheet[],
  offcuts: readonly Offcut[],
  cutting: Cutting,
): Stocked<SheetStock> {
  const bought = sheets.map(
    ({ name, length, width, pricePence }): SheetStock => ({ name, length, width, price: pricePence }),
  );
  const kept = offcuts.flatMap((offcut): readonly Racked<SheetStock>[] => {
    const { length, width = 0 } = offcut;
    if (!(length > 0 && width > 0)) return [];
    return [{ offcut, size: length * width, stock: { ...racked(offcut, cutting), width: hundredth(width) } }];
  });
  return together(bought, sheets, kept);
}

/** Timber or a moulding in all its lengths, and the offcuts of it. */
export function barStock(item: Timber | Moulding, offcuts: readonly Offcut[], cutting: Cutting): Stocked<BarStock> {
  const bought = item.lengths.map(
    ({ length, pricePence }): BarStock => ({ name: `${item.name}, ${length} long`, length, price: pricePence }),
  );
  return together(
    bought,
    bought.map(() => item),
    offcuts.flatMap((offcut) => (offcut.length > 0 ? [bar(offcut, cutting)] : [])),
  );
}

/** Blanks come in lengths of so many mm, up to the longest (the usual step of sawn timber in metric lengths; from memory). */
const BLANK_STEP = 300;

/**
 * Blanks of hardwood, planed and made up to one width. Such stuff is ordered by the square metre at a stated width, in lengths that rise by a
 * step; the stock book's longest is what a top can be in one piece, so what must come off a blank's ends is not counted in its length, nor
 * taken off again. Offcuts at least so wide are ripped to the width.
 */
export function blankStock(
  { name, maxLength, pricePencePerM2 }: Hardwood,
  id: string,
  width: number,
  offcuts: readonly Offcut[],
  cutting: Cutting,
): Stocked<BarStock> {
  const steps = Array.from({ length: Math.floor(maxLength / BLANK_STEP) }, (_, i) => (i + 1) * BLANK_STEP);
  const lengths = steps.at(-1) === maxLength ? steps : [...steps, maxLength];
  const bought = lengths.map(
    (length): BarStock => ({
      name: `${name}, ${width} wide, ${length} long`,
      length,
      price: Math.round((pricePencePerM2 * length * width) / 1e6),
    }),
  );
  return together(
    bought,
    bought.map(() => ({ id })),
    offcuts.map((offcut) => bar(offcut, cutting)),
  );
}

/** Offcuts of hardwood by the width of blank that each serves: the widest that it holds, so that none is offered twice. */
export function byWidth(offcuts: readonly Offcut[], widths: readonly number[]): ReadonlyMap<number, readonly Offcut[]> {
  const by = new Map<number, Offcut[]>(widths.map((width) => [width, []]));
  for (const offcut of offcuts) {
    const held = widths.filter((width) => fits(width, offcut.width ?? 0));
    if (held.length > 0 && offcut.length > 0) by.get(Math.max(...held))?.push(offcut);
  }
  return by;
}

interface Racked<S> {
  readonly offcut: Offcut;
  readonly size: number;
  readonly stock: S;
}

const bar = (offcut: Offcut, cutting: Cutting): Racked<BarStock> => ({
  offcut,
  size: offcut.length,
  stock: racked(offcut, cutting),
});

/** It is paid for, and there is one. */
const racked = ({ mark, length }: Offcut, { offcutTrim }: Cutting) =>
  ({ name: mark, length: hundredth(length), price: 0, count: 1, trim: offcutTrim, offcut: true }) as const;

function together<S>(
  bought: readonly S[],
  items: readonly Pick<StockItem, 'id'>[],
  kept: readonly Racked<S>[],
): Stocked<S> {
  // With a fuller rack its largest offcuts are offered.
  const room = Math.max(0, MOST.stocks - bought.length);
  const offered = kept.length <= room ? kept : [...kept].sort((a, b) => b.size - a.size).slice(0, room);
  return {
    stock: [...bought, ...offered.map(({ stock }) => stock)],
    from: [...items.map(({ id }) => ({ item: id })), ...offered.map(({ offcut }) => ({ offcut: offcut.mark }))],
  };
}
