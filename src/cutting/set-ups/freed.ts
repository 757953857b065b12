import type { CutTree, PlacedOnSheet } from '../../vocabulary/cut-plan';
import type { Freed } from '../../vocabulary/set-up';

/** What a rectangle of the plan is once it lies free. */
export function freedOf(tree: CutTree): Freed {
  if (tree.kind === 'piece') return { kind: 'piece', piece: tree };
  const { x, y, length, width } = tree;
  const rect = { x, y, length, width };
  if (tree.kind === 'left') return { kind: 'left', rect, reusable: tree.reusable };
  return { kind: 'panel', rect, pieces: piecesOf(tree) };
}

/** The pieces of a tree, in the order of its parts. */
export const piecesOf = (tree: CutTree): readonly PlacedOnSheet[] =>
  tree.kind === 'piece' ? [tree] : tree.kind === 'left' ? [] : tree.parts.flatMap(piecesOf);
