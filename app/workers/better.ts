import type { AnyCutPlan } from '../../src/vocabulary/cut-plan';

const leftOut = ({ unplaced }: AnyCutPlan): number => unplaced.reduce((sum, { quantity }) => sum + quantity, 0);

/** The search begins anew: until it is as good as the plan in hand, that one stands, with the better of the two bounds. */
export function better(held: AnyCutPlan, found: AnyCutPlan): AnyCutPlan {
  const fewer = leftOut(held) - leftOut(found);
  if (fewer > 0 || (fewer === 0 && found.cost <= held.cost)) return found;
  if (fewer < 0 || found.bound <= held.bound) return held;
  const bound = Math.min(found.bound, held.cost);
  return { ...held, bound, proven: bound >= held.cost };
}
