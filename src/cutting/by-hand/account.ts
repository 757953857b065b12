import type { AnyCutPlan, BarPlan, CutBar, CutSheet, SheetPlan } from '../../vocabulary/cut-plan';
import type { CutProblem } from '../../vocabulary/cut-problem';

/** Prices are added up to so many places: what is beyond is noise of the sum. */
const MONEY = 1e6;
export const money = (sum: number): number => Math.round(sum * MONEY) / MONEY;

/** What sheets or bars cost, and how many of each stock they are. */
export function accountOf(
  { stock }: CutProblem,
  cut: readonly { readonly stock: number }[],
): Pick<AnyCutPlan, 'cost' | 'used'> {
  const counts = stock.map((_, i) => cut.reduce((sum, one) => sum + (one.stock === i ? 1 : 0), 0));
  return {
    cost: money(cut.reduce((sum, one) => sum + stock[one.stock].price, 0)),
    used: counts.flatMap((count, i) => (count > 0 ? [{ stock: i, count }] : [])),
  };
}

/**
 * The plan with other sheets in the same places, on which the same pieces lie: so its bound holds. A sheet that has been emptied is put back; one
 * on which nothing lay before is there because it is cut already, and stays.
 */
export function withSheets(problem: CutProblem, plan: SheetPlan, sheets: readonly CutSheet[]): SheetPlan {
  const kept = sheets.filter(({ pieces }, i) => pieces.length > 0 || plan.sheets[i]?.pieces.length === 0);
  return { ...plan, ...priced(problem, plan, kept), sheets: kept };
}

/** The same of bars. */
export function withBars(problem: CutProblem, plan: BarPlan, bars: readonly CutBar[]): BarPlan {
  const kept = bars.filter(({ pieces }, i) => pieces.length > 0 || plan.bars[i]?.pieces.length === 0);
  return { ...plan, ...priced(problem, plan, kept), bars: kept };
}

function priced(problem: CutProblem, { bound }: AnyCutPlan, cut: readonly { readonly stock: number }[]) {
  const account = accountOf(problem, cut);
  const proven = account.cost - bound <= 1 / MONEY;
  return { ...account, bound: proven ? account.cost : bound, proven };
}

/** What a piece is called in words. */
export const nameOf = ({ pieces }: CutProblem, piece: number): string => pieces[piece].name ?? `piece ${piece + 1}`;
