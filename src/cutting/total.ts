import type { AnyCutPlan } from '../vocabulary/cut-plan';

/** What several plans are together. */
export type Total = Pick<AnyCutPlan, 'cost' | 'bound' | 'proven' | 'unplaced'>;

/** Added up in hundredths of a penny, so that no noise of the sum is told. */
const sumOf = (amounts: readonly number[]): number =>
  amounts.reduce((sum, amount) => sum + Math.round(amount * 100), 0) / 100;

/** What plans of several stuffs, their prices in pence, cost together, and how good that is known to be. */
export const totalOf = (plans: readonly AnyCutPlan[]): Total => ({
  cost: sumOf(plans.map(({ cost }) => cost)),
  bound: sumOf(plans.map(({ bound }) => bound)),
  proven: plans.every(({ proven }) => proven),
  unplaced: plans.flatMap(({ unplaced }) => unplaced),
});
