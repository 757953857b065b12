import type { AnyCutPlan } from '../../src/vocabulary/cut-plan';

const leftOut = ({ unplaced }: AnyCutPlan): number => unplaced.reduce((sum, { quantity }) => sum + quantity, 0);

const sameLeftOut = (a: AnyCutPlan, b: AnyCutPlan): boolean =>
  JSON.stringify(a.unplaced.map(({ piece, quantity }) => [piece, quantity])) ===
  JSON.stringify(b.unplaced.map(({ piece, quantity }) => [piece, quantity]));

/**
 * The search begins anew: until it is as good as the plan in hand, that one stands; either with the better of the two bounds. A bound holds for
 * the pieces that are placed: it is lent only where they are the same.
 */
export function better(held: AnyCutPlan, found: AnyCutPlan): AnyCutPlan {
  const fewer = leftOut(held) - leftOut(found);
  const isFound = fewer > 0 || (fewer === 0 && found.cost <= held.cost);
  const [one, other] = isFound ? [found, held] : [held, found];
  if (fewer !== 0 || other.bound <= one.bound || !sameLeftOut(held, found)) return one;
  const bound = Math.min(other.bound, one.cost);
  return { ...one, bound, proven: bound >= one.cost };
}
