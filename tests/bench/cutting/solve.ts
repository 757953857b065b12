import { type LpSolver, startCutting } from '../../../src/cut';
import type { AnyCutPlan } from '../../../src/vocabulary/cut-plan';
import type { CutProblem } from '../../../src/vocabulary/cut-problem';
import { verify } from '../../cutting/verifier/index';

export interface Solved {
  readonly plan: AnyCutPlan;
  /** ms until there was a whole plan, until the last one that costs less, and until nothing was left to do or the time was over. */
  readonly first: number;
  readonly found: number;
  readonly ended: number;
  readonly steps: number;
  readonly longestStep: number;
}

/** What the tables need: how long at most, how to solve, and where faults go. */
export interface Bench {
  readonly folder: string;
  readonly seconds: number;
  readonly lp: LpSolver;
  /** Every answer is verified; what is wrong with one is said at once, and counted. */
  readonly faults: string[];
}

const SEED = 1;

/** Searches until the cost is proven, nothing is left to better or the time is over, and verifies the answer. */
export function solve(id: string, problem: CutProblem, bench: Bench, seconds = bench.seconds): Solved {
  const from = performance.now();
  const search = startCutting(problem, { seed: SEED, lp: bench.lp });
  let { best } = search;
  const first = performance.now() - from;
  let [found, now, longestStep, steps] = [first, first, 0, 0];
  for (let more = !best.proven; more && now < seconds * 1000; ) {
    more = search.step();
    steps += 1;
    const then = performance.now() - from;
    longestStep = Math.max(longestStep, then - now);
    now = then;
    if (search.best.cost < best.cost) found = now;
    best = search.best;
    if (best.proven) break;
  }
  for (const fault of verify(problem, best)) {
    bench.faults.push(`${id}: ${fault}`);
    process.stdout.write(`FAULT ${id}: ${fault}\n`);
  }
  return { plan: best, first, found, ended: now, steps, longestStep };
}
