import { type Found, flagOf, maybe, numberOf, refuse, textOf } from './fields';
import { ALLOWANCE, COUNT, PRICE } from './limits';

/** What bars and sheets in stock have in common. The price may be missing yet. */
export function stockOf(given: (key: string) => Found) {
  return {
    name: maybe(given('name'), textOf),
    price: maybe(given('price'), (price) => numberOf(price, PRICE)),
    priceAt: given('price'),
    count: maybe(given('count'), (count) => numberOf(count, COUNT)),
    trim: maybe(given('trim'), (trim) => numberOf(trim, ALLOWANCE)),
    offcut: maybe(given('offcut'), flagOf) ? (true as const) : undefined,
  };
}

/** Stock, and whether it has prices. */
interface Priced<T> {
  readonly stock: readonly (Omit<T, 'priceAt'> & { readonly price: number })[];
  readonly priced: boolean;
}

/**
 * Stock with prices. Where none has one, what it measures stands for it (mm of bars, mm² of sheets: whole numbers mostly, so that sums of them
 * can be told apart exactly); where only some have one, those that lack it are refused.
 */
export function withPrices<T extends { readonly price: number | undefined; readonly priceAt: Found }>(
  stock: readonly T[],
  measure: (one: T) => number,
): Priced<T> {
  const priced = stock.some(({ price }) => price !== undefined);
  const all = stock.map((one) => {
    const { priceAt, ...rest } = one;
    if (priced && one.price === undefined) refuse(priceAt, 'a price, as other stock has one (0 for what is paid for)');
    return { ...rest, price: one.price ?? measure(one) };
  });
  return { stock: all, priced };
}
