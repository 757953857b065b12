import type { BarPlan, CutBar, PlacedOnBar } from '../../vocabulary/cut-plan';
import type { BarProblem } from '../../vocabulary/cut-problem';
import { barWork, cutsOfBar } from './bar-cuts';
import { endsOf } from './planes';
import { schedule } from './schedule';
import { type Task, together, type Work } from './work';

export interface PlannedBars {
  readonly problem: BarProblem;
  readonly plan: BarPlan;
}

/** A bar's cuts; those of pieces with the same ends may be exchanged. */
interface BarTasks {
  readonly work: Work;
  /** For each task, which of the bar's pieces is cut off; −1: none. */
  readonly pieces: readonly number[];
}

/** The plans with pieces that have the same ends in the order in which they would be cut, could they be exchanged. */
export function reorderedBars(planned: readonly PlannedBars[], patience?: number): readonly BarPlan[] {
  const bars = planned.map(({ problem, plan }) => plan.bars.map((bar) => tasksOf(problem, bar)));
  const flat = bars.flat();
  const { order } = schedule(together(flat.map(({ work }) => work)), patience);
  const of = flat.flatMap(({ pieces }, bar) => pieces.map((piece) => ({ bar, piece })));
  const cutOrder = flat.map(() => [] as number[]);
  for (const task of order) if (of[task].piece >= 0) cutOrder[of[task].bar].push(of[task].piece);
  let at = 0;
  return planned.map(({ plan }) => ({
    ...plan,
    bars: plan.bars.map((bar) => laidOut(bar, cutOrder[at++])),
  }));
}

function tasksOf(problem: BarProblem, bar: CutBar): BarTasks {
  const { cuts } = cutsOfBar(problem, bar);
  const { tasks, lines, start } = barWork(cuts);
  const classes = new Map<string, number>();
  const places = new Map(bar.pieces.map((piece, i) => [piece, i]));
  const pieces = cuts.map(({ frees, what }) => {
    const [freed] = frees;
    return what === 'piece' && freed?.kind === 'piece' ? (places.get(freed.piece) ?? -1) : -1;
  });
  const alike = tasks.map((task, i): Task => {
    if (pieces[i] < 0) return task;
    const { piece, turn } = bar.pieces[pieces[i]];
    const key = JSON.stringify([turn, endsOf(problem.pieces[piece].ends, turn)]);
    if (!classes.has(key)) classes.set(key, classes.size);
    return { needs: task.needs, opens: task.opens, like: classes.get(key) };
  });
  return { work: { tasks: alike, lines, start }, pieces };
}

/** The pieces in a new order, as far apart as those were that lay in their places: the ends there are the same. */
function laidOut(bar: CutBar, order: readonly number[]): CutBar {
  const { pieces } = bar;
  // A piece that needs no cut of its own stays last.
  const all = [...order, ...pieces.map((_, i) => i).filter((i) => !order.includes(i))];
  const laid: PlacedOnBar[] = [];
  all.forEach((own, slot) => {
    const before = laid.at(-1);
    const gap = slot === 0 ? 0 : pieces[slot].at - pieces[slot - 1].at - pieces[slot - 1].length;
    laid.push({ ...pieces[own], at: before ? before.at + before.length + gap : pieces[0].at });
  });
  return { ...bar, pieces: laid };
}
