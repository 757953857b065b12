import type { Scaled } from './scaled';

/** Mixes looked at, at most. */
const LOOKED = 50_000;
const NOISE = 1e-9;

/** What sheets must do together. */
export interface Demand {
  /** Scaled units squared. */
  readonly area: number;
  /** How many there must be. */
  readonly number: number;
  /** Their cost is known not to be less. */
  readonly cost: number;
}

/**
 * No way of cutting all pieces costs less: by the area of the pieces, and by the number of those of which no two share a sheet.
 * `missing`: how many of each kind need not be cut.
 */
export const boundOf = (scaled: Scaled, missing?: ArrayLike<number>): number =>
  leastCost(scaled, demandOf(scaled, missing));

/** What the pieces ask of the sheets together. `missing`: how many of each kind need not be cut. */
export function demandOf({ kinds, sheets }: Scaled, missing?: ArrayLike<number>): Demand {
  const length = Math.max(0, ...sheets.map((sheet) => sheet.length));
  const width = Math.max(0, ...sheets.map((sheet) => sheet.width));
  let area = 0;
  let number = 0;
  kinds.forEach((kind, k) => {
    const quantity = kind.quantity - (missing?.[k] ?? 0);
    area += quantity * kind.length * kind.width;
    const alone = kind.turns
      ? 2 * Math.min(kind.length, kind.width) > Math.max(length, width)
      : 2 * kind.length > length && 2 * kind.width > width;
    if (alone) number += quantity;
  });
  return { area, number, cost: 0 };
}

/** The least that sheets cost, as many of each as there are, which meet a demand; or less, where there are too many mixes to look at. */
export function leastCost({ sheets }: Pick<Scaled, 'sheets'>, { area, number, cost }: Demand): number {
  const order = [...sheets]
    .map((sheet) => ({ ...sheet, area: sheet.length * sheet.width }))
    .sort((a, b) => a.price / a.area - b.price / b.area || b.area - a.area);
  /** What is still lacking costs at least so much with the sheets from one on. */
  const atLeast = (from: number, lacking: number): number => {
    let sum = 0;
    let rest = lacking;
    for (let i = from; i < order.length && rest > 0; i++) {
      const { count, price, area: each } = order[i];
      const part = Math.min(count, rest / each);
      sum += part * price;
      rest -= part * each;
    }
    return rest > NOISE * area ? Number.POSITIVE_INFINITY : sum;
  };
  let least = Number.POSITIVE_INFINITY;
  let looked = 0;
  const go = (i: number, lacking: number, few: number, sum: number): void => {
    if (++looked > LOOKED) return;
    const below = sum < cost - NOISE * cost;
    if (lacking <= 0 && few <= 0 && !below) {
      least = Math.min(least, sum);
      return;
    }
    if (i === order.length || sum + atLeast(i, Math.max(0, lacking)) >= least - NOISE) return;
    const { count, price, area: each } = order[i];
    const most = Math.min(
      count,
      Math.max(Math.ceil(lacking / each), few, price > 0 ? Math.ceil((cost - sum) / price) : 0, 0),
    );
    for (let n = most; n >= 0; n--) go(i + 1, lacking - n * each, few - n, sum + n * price);
  };
  go(0, area, number, 0);
  return looked > LOOKED ? Math.max(cost, atLeast(0, area)) : least;
}
