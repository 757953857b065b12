import type { BarPlan, CutBar, PlacedOnBar, Unplaced } from '../../vocabulary/cut-plan';
import { LEAST_BAR } from '../least-offcut';
import { type Cutting, costOf } from './cutting';
import { kerfFactor } from './ends';
import type { Task } from './task';

/** The plan of a way of cutting. `bound` as prices are counted in the task. */
export function planOf(task: Task, cutting: Cutting, bound: number): BarPlan {
  const next = task.kinds.map(() => 0);
  const from = task.sources.map((source) => source.from.map((one) => ({ ...one })));
  const bars = cutting.bars.map(({ source, times }) => {
    const shelf = from[source];
    const one = shelf.find(({ count }) => count > 0) ?? shelf[0];
    one.count--;
    return barOf(
      task,
      one.stock,
      times.flatMap(([kind, n]) => Array.from({ length: n }, () => task.kinds[kind].copies[next[kind]++])).flat(),
    );
  });
  const counts = new Map<number, number>();
  for (const { stock } of bars) counts.set(stock, (counts.get(stock) ?? 0) + 1);
  const cost = costOf(task, cutting.bars) / task.perMoney;
  const least = Math.min(cost, bound / task.perMoney);
  const proven = cost - least <= 1e-9 * Math.max(1, cost);
  return {
    kind: 'bars',
    cost,
    bound: proven ? cost : least,
    proven,
    used: [...counts].map(([stock, count]) => ({ stock, count })).sort((a, b) => a.stock - b.stock),
    unplaced: [...task.unplaced, ...lacking(task, next)],
    bars,
  };
}

/** What there was no stock left for, by piece. */
function lacking(task: Task, cut: readonly number[]): readonly Unplaced[] {
  const by = new Map<number, number>();
  task.kinds.forEach(({ copies }, kind) => {
    for (const piece of copies.slice(cut[kind]).flat()) by.set(piece, (by.get(piece) ?? 0) + 1);
  });
  return [...by]
    .map(([piece, quantity]) => ({ piece, quantity, why: 'no stock left' as const }))
    .sort((a, b) => a.piece - b.piece);
}

/** A bar with its pieces in the row that takes least, the longest of each sort of ends first. */
function barOf({ problem, layout }: Task, stock: number, pieces: readonly number[]): CutBar {
  const { ends } = layout;
  const classOfPose = new Map(ends.classes.flatMap(({ poses }, c) => poses.map((pose) => [pose, c] as const)));
  const waiting = ends.classes.map((): number[] => []);
  const sorted = [...pieces].sort((a, b) => problem.pieces[b].length - problem.pieces[a].length || a - b);
  for (const piece of sorted) waiting[ends.classOf[piece]].push(piece);
  const placed: PlacedOnBar[] = [];
  let at = layout.trim(stock);
  let last = -1;
  for (const pose of layout.row(pieces).poses) {
    const piece = waiting[classOfPose.get(pose) ?? 0].shift() ?? 0;
    const { length } = problem.pieces[piece];
    if (last >= 0) at += ends.gaps[last][pose];
    const { turn } = ends.poses[pose];
    placed.push(turn === undefined ? { piece, at, length } : { piece, at, length, turn });
    at += length;
    last = pose;
  }
  const start = at + problem.kerf * (last < 0 ? 1 : kerfFactor(ends.poses[last].right));
  const length = problem.stock[stock].length - layout.trim(stock) - start;
  const keeps = length >= (problem.leastOffcut ?? LEAST_BAR);
  return keeps ? { stock, pieces: placed, offcut: { at: start, length } } : { stock, pieces: placed };
}
