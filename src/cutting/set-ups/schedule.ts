import { type Rule, type Run, run } from './run';
import { movesOf, type Work } from './work';

/**
 * A setting for which nothing is left to wait is set at once: it must be set once more in any case, and what it frees can only help. Where
 * there is none, no rule is always the best.
 */
const RULES: readonly Rule[] = [
  ({ moves, blocked, ready }) => [moves, blocked, -ready],
  ({ moves, blocked, ready }) => [Math.min(blocked, 1), moves, blocked, -ready],
  ({ moves, blocked, ready }) => [moves, Math.min(blocked, 1), -ready, blocked],
  ({ moves, blocked, ready }) => [Math.min(blocked, 1), moves, -ready, blocked],
];

/** Settings weighed in all tries together: on a desk machine about a tenth of a second of work. */
export const PATIENCE = 200_000;

export interface Schedule {
  readonly order: readonly number[];
  readonly moves: number;
}

/**
 * An order of the work in which dials are moved seldom, each task after what must come before it, and never worse than the order in which
 * tasks are numbered (which must be one that can be worked). The best of a few greedy runs; then, turn by turn, the other settings that could
 * have been chosen there are tried to the end (pilot method; Duin & Voss, 1999), as long as the patience lasts.
 */
export function schedule(work: Work, patience = PATIENCE): Schedule {
  const numbered = work.tasks.map((_, i) => i);
  const first = { order: numbered, moves: movesOf(work, numbered) };
  if (work.tasks.length < 2) return first;
  const least = fewest(work);
  const tries = RULES.map((rule) => tried(work, rule, []));
  let best = tries.reduce((a, b) => (b.moves < a.moves ? b : a));
  let left = patience;
  for (let turn = 0; turn < best.others.length && best.moves > least; turn++) {
    for (const other of best.others[turn]) {
      // A try weighs the settings at every turn.
      left -= best.chosen.length * (least + 1);
      if (left < 0) return bestOf(best, first);
      const next = tried(work, best.rule, [...best.chosen.slice(0, turn), other]);
      if (next.moves < best.moves) best = next;
    }
  }
  return bestOf(best, first);
}

const bestOf = (best: Schedule, first: Schedule): Schedule =>
  best.moves <= first.moves ? { order: best.order, moves: best.moves } : first;

interface Try extends Run {
  readonly rule: Rule;
  readonly moves: number;
}

function tried(work: Work, rule: Rule, given: readonly number[]): Try {
  const { order, chosen, others } = run(work, rule, given);
  return { order, chosen, others, rule, moves: movesOf(work, order) };
}

/** No order moves the dials less often: each must be set to each of its values at least once. */
export function fewest({ tasks }: Pick<Work, 'tasks'>): number {
  const values = new Set<string>();
  for (const { needs } of tasks)
    needs.forEach((value, dial) => {
      if (value !== undefined) values.add(`${dial} ${value}`);
    });
  return values.size;
}
