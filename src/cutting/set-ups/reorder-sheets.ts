import type { CutTree, Parted, SheetPlan } from '../../vocabulary/cut-plan';
import type { SheetProblem } from '../../vocabulary/cut-problem';
import { piecesOf } from './freed';
import { schedule } from './schedule';
import { stagesOf } from './stages';
import { beyondParts, SAME, sideOf, type TreeCuts, treeCuts } from './tree-cuts';
import { dialOf, needsOf, type Task, together, type Work } from './work';

export interface PlannedSheets {
  readonly problem: SheetProblem;
  readonly plan: SheetPlan;
}

/** The plans with the parts of each panel in the order in which they would be cut, could they be cut in any. */
export function reorderedSheets(planned: readonly PlannedSheets[], patience?: number): readonly SheetPlan[] {
  const times = settingsWanted(planned);
  const trees = planned.map(({ plan }) => plan.sheets.map(({ tree }) => prepared(tree, times)));
  const cuts = trees.map((own) => own.map(treeCuts));
  const flat = cuts.flat();
  const { order } = schedule(together(flat.map(workOf)), patience);
  // When each part of a node is cut, in the order of all work.
  const when = new Map<Parted, number[]>();
  const drawn = flat.flatMap((own) => own.cuts);
  order.forEach((task, n) => {
    const { node, part } = drawn[task];
    const known = when.get(node) ?? node.parts.map(() => Number.POSITIVE_INFINITY);
    known[part] = n;
    when.set(node, known);
  });
  return planned.map(({ problem, plan }, p) => ({
    ...plan,
    sheets: plan.sheets.map((sheet, s) => {
      const old = trees[p][s];
      const tree = laidOut(old, when, problem.kerf, old.x, old.y);
      return { ...sheet, tree, pieces: piecesOf(tree), stages: stagesOf(tree) };
    }),
  }));
}

type Times = (way: Parted['way'], part: CutTree) => number;

/** How often a panel's side is cut to a length anywhere in the plans. */
function settingsWanted(planned: readonly PlannedSheets[]): Times {
  const counts = new Map<string, number>();
  const keyOf = (way: Parted['way'], part: CutTree): string => `${way} ${Math.round(sideOf(part, way) * 100)}`;
  const count = (tree: CutTree): void => {
    if (tree.kind !== 'cut') return;
    for (const part of tree.parts) {
      if (part.kind !== 'left') counts.set(keyOf(tree.way, part), (counts.get(keyOf(tree.way, part)) ?? 0) + 1);
      count(part);
    }
  };
  for (const { plan } of planned) for (const { tree } of plan.sheets) count(tree);
  return (way, part) => counts.get(keyOf(way, part)) ?? 0;
}

/** What is left lies last. Where the parts fill their panel, the last needs no cut: let it be one whose setting nobody else wants. */
function prepared(tree: CutTree, times: Times): CutTree {
  if (tree.kind !== 'cut') return tree;
  const { way } = tree;
  const parts = tree.parts.map((part) => prepared(part, times));
  const wanted = parts.filter(({ kind }) => kind !== 'left');
  const left = parts.filter(({ kind }) => kind === 'left');
  if (left.length === 0 && wanted.length > 1 && beyondParts(tree) <= SAME) {
    const rank = (part: CutTree): number => times(way, part) * 1e6 + sideOf(part, way);
    const last = wanted.reduce((a, b) => (rank(b) < rank(a) ? b : a));
    wanted.push(...wanted.splice(wanted.indexOf(last), 1));
  }
  const { kind, x, y, length, width } = tree;
  return { kind, x, y, length, width, way, parts: [...wanted, ...left] };
}

/** The cuts of a tree, those of a node free to be made in any order, but for what is left. */
function workOf({ cuts, lines, first }: TreeCuts): Work {
  const tasks = cuts.map(({ node, part, opens }): Task => {
    const like = node.parts[part].kind === 'left' ? undefined : 0;
    return { needs: needsOf({ [dialOf(node.way)]: sideOf(node.parts[part], node.way) }), opens, like };
  });
  return {
    tasks,
    lines: lines.map(({ cuts: own, opens }) => ({ tasks: own, opens })),
    start: first === undefined ? [] : [first],
  };
}

/** A tree from a new corner on, each node's parts in the order in which they are cut and a kerf apart. */
function laidOut(
  tree: CutTree,
  when: ReadonlyMap<Parted, readonly number[]>,
  kerf: number,
  x: number,
  y: number,
): CutTree {
  if (tree.kind === 'piece') {
    const { kind, length, width, piece, turned } = tree;
    return { kind, x, y, length, width, piece, turned };
  }
  if (tree.kind === 'left') {
    const { kind, length, width, reusable } = tree;
    return { kind, x, y, length, width, reusable };
  }
  const { kind, length, width, way, parts } = tree;
  const times = when.get(tree);
  const order = parts.map((_, i) => i);
  if (times) order.sort((a, b) => (times[a] === times[b] ? a - b : times[a] - times[b]));
  let at = 0;
  const laid = order.map((i) => {
    const own = way === 'across' ? laidOut(parts[i], when, kerf, x + at, y) : laidOut(parts[i], when, kerf, x, y + at);
    at += sideOf(parts[i], way) + kerf;
    return own;
  });
  return { kind, x, y, length, width, way, parts: laid };
}
