import type { CutTree, Parted } from '../../vocabulary/cut-plan';

/** Lengths nearer than this are the same, mm: far below a saw's tooth, far above the noise of sums. */
export const SAME = 1e-3;

/** A cut that takes part number `part` off what is left of a node. */
export interface PartCut {
  readonly node: Parted;
  readonly part: number;
  /** How many nodes lie above, plus one: 1 goes through the whole sheet. */
  readonly level: number;
  /** What is free after it: the part itself, and the last one where that needs no cut. */
  readonly frees: readonly CutTree[];
  /** Numbers of the lines that may begin when it is done. */
  readonly opens: readonly number[];
}

/** The cuts of one node, in the order of its parts. */
export interface NodeLine {
  readonly cuts: readonly number[];
  /** Lines that may begin when all of them are done. */
  readonly opens: readonly number[];
}

export interface TreeCuts {
  /** As drawn: the cuts of a node, then those within its first part, and so on. */
  readonly cuts: readonly PartCut[];
  readonly lines: readonly NodeLine[];
  /** The line to begin with; undefined where no cut is needed. */
  readonly first: number | undefined;
}

/** The side of a rectangle that cuts of this way part. */
export const sideOf = (
  { length, width }: { readonly length: number; readonly width: number },
  way: Parted['way'],
): number => (way === 'across' ? length : width);

/** What is left of a node beyond its last part, mm: sawdust, which still asks for a cut where there is any. */
export function beyondParts({ parts, way, ...node }: Parted): number {
  const last = parts.at(-1);
  if (!last) return sideOf(node, way);
  return way === 'across' ? node.x + node.length - last.x - last.length : node.y + node.width - last.y - last.width;
}

/** Whether a node's last part is what remains after the others, and needs no cut of its own. */
const lastIsFree = (node: Parted): boolean => node.parts.at(-1)?.kind === 'left' || beyondParts(node) <= SAME;

/** What a rectangle is when it lies on the saw: nodes that need no cut are what they hold. */
export function heldBy(tree: CutTree): CutTree {
  if (tree.kind !== 'cut') return tree;
  const { x, y, length, width, parts } = tree;
  if (parts.length === 0) return { kind: 'left', x, y, length, width, reusable: false };
  return parts.length === 1 && lastIsFree(tree) ? heldBy(parts[0]) : tree;
}

/** All the cuts of a tree, and what must come before what. */
export function treeCuts(tree: CutTree): TreeCuts {
  const cuts: PartCut[] = [];
  const lines: { cuts: number[]; opens: number[] }[] = [];

  function line(node: Parted, level: number): number {
    const own = { cuts: [] as number[], opens: [] as number[] };
    const number = lines.push(own) - 1;
    const held = node.parts.map(heldBy);
    const free = lastIsFree(node);
    const last = node.parts.length - 1;
    const opens = held.map(() => [] as number[]);
    held.forEach((part, i) => {
      if (i === last && free) return;
      const frees = i === last - 1 && free ? [part, held[last]] : [part];
      own.cuts.push(cuts.push({ node, part: i, level, frees, opens: opens[i] }) - 1);
    });
    held.forEach((part, i) => {
      if (part.kind === 'cut') (i === last && free ? own.opens : opens[i]).push(line(part, level + 1));
    });
    return number;
  }

  const root = heldBy(tree);
  return { cuts, lines, first: root.kind === 'cut' ? line(root, 1) : undefined };
}
