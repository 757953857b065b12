import type { CutBatch } from '../../src/vocabulary/cut-plan';
import type { CutProblem } from '../../src/vocabulary/cut-problem';
import { marksOf } from './copies';

/** A copy of a piece that is wanted. */
export interface Target {
  readonly piece: number;
  readonly copy: number;
}

/** What makes two pieces one and the same for the saw. */
const sizeKey = ({ pieces }: CutProblem, piece: number): string => {
  const { name: _, quantity: __, together: ___, ...size } = pieces[piece] ?? { name: '' };
  return JSON.stringify(Object.entries(size).sort(([a], [b]) => a.localeCompare(b)));
};

const markKey = (marks: readonly string[], problem: CutProblem, piece: number): string =>
  `${marks.join(' ')} ${sizeKey(problem, piece)}`;

const nameKey = (problem: CutProblem, piece: number): string =>
  `${problem.pieces[piece]?.name ?? ''} ${sizeKey(problem, piece)}`;

/** Nobody has marked its pieces: it was typed, and not made from a job. */
export const isTyped = ({ marks }: CutBatch): boolean => marks.every((copies) => copies.length === 0);

/** Which copy a piece of an older batch would be: by its marks and size; on a typed list by name and size, one copy after the other. */
export function wantedOf(
  batch: CutBatch,
): (old: CutBatch, piece: number, copy: number | undefined) => Target | undefined {
  const marked = new Map<string, Target>();
  const named = new Map<string, Target[]>();
  for (const [piece, { quantity }] of batch.problem.pieces.entries()) {
    const all = batch.marks[piece] ?? [];
    for (const [copy, marks] of all.entries()) marked.set(markKey(marks, batch.problem, piece), { piece, copy });
    if (all.length > 0) continue;
    const key = nameKey(batch.problem, piece);
    const copies = Array.from({ length: quantity }, (_, copy) => ({ piece, copy }));
    named.set(key, [...(named.get(key) ?? []), ...copies]);
  }
  return (old, piece, copy) => {
    const marks = marksOf(old, piece, copy);
    return marks.length > 0
      ? marked.get(markKey(marks, old.problem, piece))
      : named.get(nameKey(old.problem, piece))?.shift();
  };
}

/**
 * Whether a batch is what another one has become. Batches of a job are known by their stuff; a typed list is another one when no piece of it
 * stood in the one before.
 */
export function isSameList(old: CutBatch, batch: CutBatch): boolean {
  if (!isTyped(old) || !isTyped(batch)) return true;
  const keys = new Set(old.problem.pieces.map((_, piece) => nameKey(old.problem, piece)));
  return batch.problem.pieces.some((_, piece) => keys.has(nameKey(batch.problem, piece)));
}

/** Whether what two plans cost can be compared: those of a typed list only while its pieces are the same. */
export const isComparable = (old: CutBatch, batch: CutBatch): boolean =>
  !isTyped(old) ||
  !isTyped(batch) ||
  (old.problem.kind === batch.problem.kind &&
    JSON.stringify(old.problem.pieces) === JSON.stringify(batch.problem.pieces));
