import type { AnyCutPlan } from '../../src/vocabulary/cut-plan';

const leftOut = ({ unplaced }: AnyCutPlan): number => unplaced.reduce((sum, { quantity }) => sum + quantity, 0);

const sameLeftOut = (a: AnyCutPlan, b: AnyCutPlan): boolean =>
  JSON.stringify(a.unplaced.map(({ piece, quantity }) => [piece, quantity])) ===
  JSON.stringify(b.unplaced.map(({ piece, quantity }) => [piece, quantity]));

/** The search begins anew: until it is as good as the plan in hand, that one stands, with the better of the two bounds. */
export function better(held: AnyCutPlan, found: AnyCutPlan): AnyCutPlan {
  const fewer = leftOut(held) - leftOut(found);
  if (fewer > 0 || (fewer === 0 && found.cost <= held.cost)) return found;
  // A bound holds for the pieces that are placed: it is lent only where they are the same.
  if (fewer < 0 || found.bound <= held.bound || !sameLeftOut(held, found)) return held;
  const bound = Math.min(found.bound, held.cost);
  return { ...held, bound, proven: bound >= held.cost };
}
