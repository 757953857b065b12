import { openDesk } from '../../../app/workers/desk';
import type { Answer, Order } from '../../../app/workers/messages';
import type { AnyCutPlan } from '../../../src/vocabulary/cut-plan';
import type { CutProblem } from '../../../src/vocabulary/cut-problem';
import { priced, problem } from './plans';

type PlanAnswer = Answer & { readonly say: 'plan' };

interface Told {
  /** Plans that the search comes to, one a step; it is done after the last. */
  readonly way?: readonly AnyCutPlan[];
  /** What a step takes, ms. */
  readonly step?: number;
  readonly lp?: () => Promise<never>;
  readonly first?: AnyCutPlan | ((problem: CutProblem) => AnyCutPlan);
}

/** A desk in a world whose clock goes only as steps take time. */
export function desk({ way = [], step = 10, lp, first = priced(30, 10) }: Told = {}) {
  const firstOf = typeof first === 'function' ? first : () => first;
  let clock = 0;
  let turns: (() => void)[] = [];
  const posted: Answer[] = [];
  /** When each answer was given, ms. */
  const times: number[] = [];
  const solvers: unknown[] = [];
  let given = 0;
  let rests = 0;
  const { hear } = openDesk({
    post: (answer) => {
      posted.push(answer);
      times.push(clock);
    },
    now: () => clock,
    turn: () => new Promise((resolve) => turns.push(resolve)),
    rest: async (ms) => {
      clock += ms;
      rests += 1;
    },
    loadLp: lp ?? (async () => 'solver' as never),
    firstPlan: firstOf,
    startCutting(asked, how) {
      solvers.push(how.lp);
      let at = 0;
      return {
        get best() {
          return way[Math.min(at, way.length) - 1] ?? firstOf(asked);
        },
        step() {
          clock += step;
          at += 1;
          return at < way.length;
        },
        dispose() {
          given += 1;
        },
      };
    },
    answer: () => ({ what: 'rearranged', planned: [] }),
  });
  /** Lets the work go on for some turns. */
  const go = async (times: number): Promise<void> => {
    for (let i = 0; i < times; i += 1) {
      await Promise.resolve().then(() => undefined);
      await new Promise((resolve) => setImmediate(resolve));
      const now = turns;
      turns = [];
      for (const turn of now) turn();
    }
    await new Promise((resolve) => setImmediate(resolve));
  };
  const plans = (): readonly PlanAnswer[] => posted.filter((one): one is PlanAnswer => one.say === 'plan');
  return { hear, posted, times, plans, solvers, go, clock: () => clock, rests: () => rests, givenBack: () => given };
}

export const order = (batch: string, revision: number, ms = 2000): Order => ({
  say: 'plan',
  batch,
  revision,
  problem,
  seed: 1,
  ms,
});
export const never = Array.from({ length: 100_000 }, (_, i) => priced(29 - i * 1e-4, 10));
