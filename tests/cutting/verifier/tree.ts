import type { CutTree, Leftover, Parted, PlacedOnSheet } from '../../../src/vocabulary/cut-plan';
import type { SheetProblem } from '../../../src/vocabulary/cut-problem';
import { atLeast, NOISE, same } from './shared';

/** Common practice, no source. */
const LEAST_OFFCUT = { length: 300, width: 100 };

export function leavesOf(tree: CutTree): readonly PlacedOnSheet[] {
  if (tree.kind === 'cut') return tree.parts.flatMap(leavesOf);
  return tree.kind === 'piece' ? [tree] : [];
}

/** How often the direction of cutting changes, counting the first; `before`: the way of the cuts that made this part. */
export function stagesOf(tree: CutTree, trimsFree: boolean, before?: Parted['way']): number {
  if (tree.kind !== 'cut') return 0;
  if (trimsFree && onlyTrims(tree)) return 0;
  const inner = Math.max(0, ...tree.parts.map((part) => stagesOf(part, trimsFree, tree.way)));
  return inner + (tree.way === before ? 0 : 1);
}

/** A last cut that only brings one piece to its size. */
const onlyTrims = ({ parts }: Parted): boolean =>
  parts.every(({ kind }) => kind !== 'cut') && parts.filter(({ kind }) => kind === 'piece').length === 1;

export function treeFaults(problem: SheetProblem, tree: CutTree): string[] {
  if (tree.kind === 'piece') return [];
  if (tree.kind === 'left') return leftFaults(problem, tree);
  return [...partedFaults(problem, tree), ...tree.parts.flatMap((part) => treeFaults(problem, part))];
}

function leftFaults({ leastOffcut = LEAST_OFFCUT }: SheetProblem, left: Leftover): string[] {
  const fits = (length: number, width: number): boolean =>
    atLeast(length, leastOffcut.length) && atLeast(width, leastOffcut.width);
  const usable = fits(left.length, left.width) || fits(left.width, left.length);
  return [
    ...(left.length > NOISE && left.width > NOISE ? [] : ['a leftover of no size']),
    ...(usable === left.reusable
      ? []
      : [`a leftover of ${left.length} × ${left.width} is said to be ${left.reusable ? '' : 'not '}reusable`]),
  ];
}

/** Parts span the rectangle, in order, a kerf between; what is left after the last is no more than a kerf. */
function partedFaults({ kerf, longestCut = Number.POSITIVE_INFINITY }: SheetProblem, { way, parts, ...whole }: Parted) {
  // One set of words for both ways: `from` and `size` in the direction in which the parts follow, `side` and `span` across it.
  const seen = ({ x, y, length, width }: Omit<Parted, 'way' | 'parts' | 'kind'>) =>
    way === 'across'
      ? { from: x, size: length, side: y, span: width }
      : { from: y, size: width, side: x, span: length };
  const { from, size, side, span } = seen(whole);
  const faults: string[] = [];
  let next = from;
  for (const part of parts.map(seen)) {
    if (!same(part.side, side) || !same(part.span, span)) faults.push('a part does not span what is cut');
    if (!same(part.from, next)) faults.push(`a part begins at ${part.from}, not at ${next}`);
    next = part.from + part.size + kerf;
  }
  const rest = from + size - (next - kerf);
  if (rest < -NOISE) faults.push('parts reach beyond what is cut');
  if (rest > kerf + NOISE) faults.push(`${rest} are left after the last part, more than a kerf`);
  const cuts = parts.length - 1 + (rest > NOISE ? 1 : 0);
  if (cuts < 1) faults.push('a cut that parts nothing');
  if (!atLeast(longestCut, span)) faults.push(`a cut of ${span}, the longest is ${longestCut}`);
  return faults;
}
