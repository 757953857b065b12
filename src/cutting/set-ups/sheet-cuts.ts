import type { CutSheet, CutTree } from '../../vocabulary/cut-plan';
import type { SheetProblem } from '../../vocabulary/cut-problem';
import type { Freed, SheetCut, SheetCuts } from '../../vocabulary/set-up';
import { freedOf } from './freed';
import { schedule } from './schedule';
import { heldBy, type PartCut, SAME, sideOf, treeCuts } from './tree-cuts';
import { trimCuts, trimOf } from './trims';
import { dialOf, type Line, needsOf, type Task, type Work } from './work';

/** A sheet's cuts, numbered from 0 as they are drawn, and what must come before what. */
export interface DrawnCuts {
  readonly cuts: readonly Omit<SheetCut, 'number'>[];
  readonly work: Work;
  readonly whole: Freed | undefined;
}

/**
 * The cuts of a sheet in the order in which they are worked: the long edges and then the ends squared, then all cuts through the whole sheet,
 * then all through what those set free, and so on, so that the sheet is turned once for each stage; within a stage such that the fence is
 * moved seldom, and larger pieces first.
 */
export function cutsOfSheet(problem: SheetProblem, sheet: CutSheet): SheetCuts {
  const { cuts, whole } = drawnSheet(problem, sheet);
  const { order } = sheetOrder(problem, sheet);
  return { kind: 'sheet', stock: sheet.stock, cuts: order.map((i, n) => ({ number: n + 1, ...cuts[i] })), whole };
}

/** For each cut in the order of the work, its number as drawn. */
export function sheetOrder(problem: SheetProblem, sheet: CutSheet): { readonly order: readonly number[] } {
  const { cuts, work } = drawnSheet(problem, sheet);
  const most = cuts.reduce((level, cut) => Math.max(level, cut.level), 0);
  const order: number[] = [];
  for (let level = 0; level <= most; level++) {
    // Lines of one level don't wait for one another; what they open lies in the next.
    const own = work.lines.filter((line) => line.tasks.length > 0 && cuts[line.tasks[0]].level === level);
    const numbers = own.flatMap((line) => line.tasks);
    const renumbered = new Map(numbers.map((task, i) => [task, i]));
    const lines = own.map(({ tasks }): Line => ({ tasks: tasks.map((t) => renumbered.get(t) ?? 0), opens: [] }));
    const tasks = numbers.map((task): Task => ({ needs: work.tasks[task].needs, opens: [] }));
    order.push(...schedule({ tasks, lines, start: lines.map((_, i) => i) }).order.map((i) => numbers[i]));
  }
  return { order };
}

/** The cuts as drawn. */
export function drawnSheet(problem: SheetProblem, { stock, tree }: CutSheet): DrawnCuts {
  const trims = trimCuts(problem, stock, tree);
  const inTree = treeCuts(tree);
  const { kerf, trim, longestCut = Number.POSITIVE_INFINITY } = { ...problem, trim: trimOf(problem, stock) };
  const cuts = [...trims, ...inTree.cuts.map((cut) => partCut(cut, tree, { kerf, trim, longestCut }))];
  const shift = trims.length;
  // The trims are a line of their own before all others.
  const openFirst = inTree.first === undefined ? [] : [inTree.first + 1];
  const tasks = cuts.map(({ way, fence }, i): Task => {
    const needs = needsOf({ [dialOf(way)]: fence });
    return { needs, opens: i < shift ? [] : inTree.cuts[i - shift].opens.map((line) => line + 1) };
  });
  const lines: Line[] = [
    { tasks: trims.map((_, i) => i), opens: openFirst },
    ...inTree.lines.map((line) => ({
      tasks: line.cuts.map((cut) => cut + shift),
      opens: line.opens.map((opened) => opened + 1),
    })),
  ];
  return {
    cuts,
    work: { tasks, lines, start: [0] },
    whole: cuts.length === 0 ? freedOf(heldBy(tree)) : undefined,
  };
}

interface Saw {
  readonly kerf: number;
  readonly trim: number;
  readonly longestCut: number;
}

function partCut({ node, part, level, frees }: PartCut, root: CutTree, saw: Saw): Omit<SheetCut, 'number'> {
  const { kerf, trim, longestCut } = saw;
  const { x, y, length, width } = node.parts[part];
  const across = node.way === 'across';
  // What is left over may be off by a tooth; what lies beyond it may not, and bears on the fence if it is the last.
  const last = node.parts[part + 1];
  const beyond = node.parts[part].kind === 'left' && frees.length > 1 && last?.kind !== 'left' ? last : undefined;
  const panel = across
    ? { x, y: node.y, length: node.x + node.length - x, width: node.width }
    : { x: node.x, y, length: node.length, width: node.y + node.width - y };
  const edgeOf = (gap: number): SheetCut['against']['edge'] =>
    gap > SAME ? 'cut' : trim > SAME ? 'trimmed' : 'bought';
  const low = { side: 'low', edge: edgeOf(across ? x - root.x : y - root.y) } as const;
  const far = across ? root.x + root.length - node.x - node.length : root.y + root.width - node.y - node.width;
  const end = across ? x + length : y + width;
  const made = beyond ? (across ? beyond.x : beyond.y) : end;
  const cutLength = across ? node.width : node.length;
  return {
    what: across ? 'cross-cut' : 'rip',
    way: node.way,
    panel,
    fence: sideOf(beyond ?? { length, width }, node.way),
    against: beyond ? { side: 'high', edge: edgeOf(far) } : low,
    line: across
      ? { x1: made, y1: node.y, x2: made, y2: node.y + node.width }
      : { x1: node.x, y1: made, x2: node.x + node.length, y2: made },
    kerf: across
      ? { x: end, y: node.y, length: kerf, width: node.width }
      : { x: node.x, y: end, length: node.length, width: kerf },
    length: cutLength,
    tooLong: cutLength > longestCut + SAME,
    frees: frees.map(freedOf),
    level,
  };
}
