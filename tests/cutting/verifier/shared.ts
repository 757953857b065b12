import type { AnyCutPlan } from '../../../src/vocabulary/cut-plan';
import type { CutProblem } from '../../../src/vocabulary/cut-problem';

/** Sums of tenths come out this far off, at the most. Millimetres, and money. */
export const NOISE = 1e-6;

export const same = (a: number, b: number): boolean => Math.abs(a - b) <= NOISE * Math.max(1, Math.abs(a) * 1e-3);
export const atLeast = (a: number, b: number): boolean => a >= b || same(a, b);

/** What lies on one bar or sheet: which stock, and which pieces. */
export interface Cut {
  readonly stock: number;
  readonly pieces: readonly { readonly piece: number }[];
}

/** Whether a stock could hold a piece if it had nothing else on it. */
export type Holds = (stock: number, piece: number) => boolean;

/** Every number of a plan is one. */
export function numbersIn(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, `${path}/${key}`));
}

/** Places in the problem's lists that aren't there. */
export function strangers(problem: CutProblem, cuts: readonly Cut[], plan: AnyCutPlan): readonly string[] {
  const stocks = [...cuts.map(({ stock }) => stock), ...plan.used.map(({ stock }) => stock)];
  const pieces = [...cuts.flatMap((cut) => cut.pieces), ...plan.unplaced].map(({ piece }) => piece);
  return [
    ...stocks.filter((i) => problem.stock[i] === undefined).map((i) => `there is no stock ${i}`),
    ...pieces.filter((i) => problem.pieces[i] === undefined).map((i) => `there is no piece ${i}`),
  ];
}

/** Counts by place. */
function tally(places: readonly (readonly [place: number, count: number])[]): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  for (const [place, count] of places) counts.set(place, (counts.get(place) ?? 0) + count);
  return counts;
}

/** What is true of bars and sheets alike: everything is there once, paid once, and no more is claimed than holds. */
export function accountFaults(problem: CutProblem, cuts: readonly Cut[], plan: AnyCutPlan, holds: Holds): string[] {
  const taken = tally(cuts.map(({ stock }) => [stock, 1]));
  return [
    ...quantityFaults(problem, cuts, plan),
    ...stockFaults(problem, taken, plan),
    ...costFaults(problem, taken, plan),
    ...setFaults(problem, cuts, plan),
    ...unplacedFaults(problem, taken, plan, holds),
    ...cuts.flatMap(({ pieces }, i) => (pieces.length > 0 ? [] : [`${i} is paid for and gives nothing`])),
  ];
}

function quantityFaults({ pieces }: CutProblem, cuts: readonly Cut[], { unplaced }: AnyCutPlan): string[] {
  const placed = tally(cuts.flatMap((cut) => cut.pieces.map(({ piece }) => [piece, 1] as const)));
  const left = tally(unplaced.map(({ piece, quantity }) => [piece, quantity]));
  return pieces.flatMap(({ quantity }, i) => {
    const [on, off] = [placed.get(i) ?? 0, left.get(i) ?? 0];
    return on + off === quantity ? [] : [`piece ${i}: ${on} placed and ${off} not, of ${quantity}`];
  });
}

function stockFaults({ stock }: CutProblem, taken: ReadonlyMap<number, number>, { used }: AnyCutPlan): string[] {
  const said = tally(used.map(({ stock, count }) => [stock, count]));
  return stock.flatMap(({ count }, i) => {
    const [found, told] = [taken.get(i) ?? 0, said.get(i) ?? 0];
    return [
      ...(found > (count ?? Number.POSITIVE_INFINITY) ? [`stock ${i}: ${found} cut, there are ${count}`] : []),
      ...(found === told ? [] : [`stock ${i}: ${found} cut, ${told} said`]),
    ];
  });
}

function costFaults({ stock }: CutProblem, taken: ReadonlyMap<number, number>, plan: AnyCutPlan): string[] {
  const cost = [...taken].reduce((sum, [i, count]) => sum + count * stock[i].price, 0);
  return [
    ...(same(cost, plan.cost) ? [] : [`the cost is ${cost}, not ${plan.cost}`]),
    ...(atLeast(plan.cost, plan.bound) ? [] : [`bound ${plan.bound} above the cost ${plan.cost}`]),
    ...(plan.bound >= 0 ? [] : [`bound ${plan.bound} below nothing`]),
    ...(plan.proven && !same(plan.cost, plan.bound) ? [`proven, but ${plan.bound} is not ${plan.cost}`] : []),
  ];
}

/** Why a piece lies on no stock, though there be enough of it. */
const MISFITS: readonly string[] = [
  'larger than any stock',
  'fits no stock with the grain, stages and longest cut given',
];

/** Pieces that carry the same word come from one bar or sheet: all or none of those that aren't larger than any stock. */
function setFaults({ pieces }: CutProblem, cuts: readonly Cut[], { unplaced }: AnyCutPlan): string[] {
  const words = new Set(pieces.flatMap(({ together }) => together ?? []));
  return [...words].flatMap((word) => {
    const of = ({ piece }: { readonly piece: number }): boolean => pieces[piece].together === word;
    const on = cuts.filter((cut) => cut.pieces.some(of)).length;
    if (on > 1) return [`set '${word}' lies on ${on}`];
    const missing = unplaced.some((one) => of(one) && !MISFITS.includes(one.why));
    return on === 1 && missing ? [`set '${word}' is placed in part`] : [];
  });
}

/** Why pieces aren't placed must be true, as far as one piece alone can tell. */
function unplacedFaults(problem: CutProblem, taken: ReadonlyMap<number, number>, plan: AnyCutPlan, holds: Holds) {
  return plan.unplaced.flatMap(({ piece, quantity, why }) => {
    const { together } = problem.pieces[piece];
    const could = problem.stock.flatMap(({ count }, i) => (count !== 0 && holds(i, piece) ? [i] : []));
    const spare = could.some((i) => (taken.get(i) ?? 0) < (problem.stock[i].count ?? Number.POSITIVE_INFINITY));
    return [
      ...(quantity >= 1 && Number.isInteger(quantity) ? [] : [`piece ${piece}: ${quantity} not placed`]),
      ...(MISFITS.includes(why) && could.length > 0 ? [`piece ${piece} is not larger than stock ${could[0]}`] : []),
      ...(why === 'no stock left' && spare && !together
        ? [`piece ${piece} is not placed, and there is stock left`]
        : []),
      ...(why === 'no stock left' && could.length === 0 ? [`piece ${piece} is larger than any stock`] : []),
      ...(why === 'its set fits no stock' && !together ? [`piece ${piece} is of no set`] : []),
    ];
  });
}
