import type { Fixing } from '../vocabulary/book';
import type { FixingLine, PartFixing } from '../vocabulary/making';
import { tubOf } from './adhesives';

/** So much more is bought than is counted: some are dropped, bent or left in the tube (common practice, no source). */
const SPARE = 0.1;

/** What there is to buy: like with like, in the order of the stock book, then what it hasn't got. Ironmongery has no spare. */
export function totalsOf(parts: readonly PartFixing[], book: readonly Fixing[]): readonly FixingLine[] {
  const lots = new Map<string, PartFixing[]>();
  for (const line of parts) {
    if (line.amount === 0) continue;
    const key = `${line.item ?? line.name} ${line.unit}`;
    const lot = lots.get(key);
    if (lot) lot.push(line);
    else lots.set(key, [line]);
  }
  const place = new Map(book.map((item, i) => [item.id, i]));
  const order = ({ item }: FixingLine): number => (item === undefined ? book.length : (place.get(item) ?? book.length));
  return [...lots.values()].map((lot) => lineOf(lot, book)).sort((a, b) => order(a) - order(b));
}

function lineOf(lot: readonly PartFixing[], book: readonly Fixing[]): FixingLine {
  const [{ item, name, unit }] = lot;
  const amount = lot.reduce((sum, line) => sum + line.amount, 0);
  const isIronmongery = lot.every((line) => line.ironmongery === true);
  const spare = isIronmongery ? 0 : unit === 'pieces' ? Math.ceil(amount * SPARE - 1e-9) : amount * SPARE;
  return {
    ...(item === undefined ? {} : { item }),
    name,
    unit,
    amount,
    spare,
    packs: isIronmongery ? amount : packsFor(amount + spare, unit, item, book),
    rules: [...new Set(lot.map((line) => line.rule))],
  };
}

/** Packs, bottles or tubes that hold so much; 0 where it isn't known what one holds. */
function packsFor(amount: number, unit: FixingLine['unit'], id: string | undefined, book: readonly Fixing[]): number {
  const item = book.find((one) => one.id === id);
  if (!item) return 0;
  const holds = unit === 'pieces' ? item.pack : (tubOf(unit === 'g' ? 'pva' : 'grab', book)?.holds ?? 0) * item.pack;
  return holds > 0 ? Math.ceil(amount / holds - 1e-9) : 0;
}
