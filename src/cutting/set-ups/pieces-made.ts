import type { Part } from '../../vocabulary/part';
import { isMoulded } from '../take-off/blocks';
import { hundredth, leftOn } from '../take-off/sawn';
import type { Block, PlannedBatch } from './saws';
import { SAME } from './tree-cuts';

/** A strip that is moulded before blocks are cut off it, or one moulded part; mm. */
export interface Strip {
  readonly marks: readonly string[];
  readonly length: number;
  readonly first: Part;
}

/** What becomes of the pieces of the batches. */
export interface Made {
  readonly strips: readonly Strip[];
  /** Of each strip, the blocks that are cut off it. */
  readonly blocks: readonly (readonly Block[])[];
  /** Parts whose ends are still to be cut: those out of sheets, and bars that were cut square. */
  readonly uncutEnds: readonly Part[];
  /** Some panels are sawn larger than they are in the end, by so much on each side, mm at most; 0: none. */
  readonly oversize: number;
}

/** @param kerf of the saw that parts the blocks, mm; absent: that of the batch */
export function piecesMade(planned: readonly PlannedBatch[], parts: readonly Part[], kerf?: number): Made {
  const by = new Map(parts.map((part) => [part.mark, part]));
  const strips: Strip[] = [];
  const blocks: Block[][] = [];
  const uncut = new Set<Part>();
  const seen = new Set<string>();
  let oversize = 0;
  for (const { batch } of planned) {
    const { problem } = batch;
    problem.pieces.forEach((piece, p) => {
      for (const marks of batch.marks[p] ?? []) {
        const own = marks.flatMap((mark) => by.get(mark) ?? []);
        if (problem.kind === 'sheets' && own.length === 1)
          oversize = Math.max(oversize, (piece.length - sawnLength(own[0])) / 2);
        if (problem.kind === 'sheets' || !('ends' in piece && piece.ends)) for (const part of own) uncut.add(part);
        const key = marks.join(' ');
        if (problem.kind !== 'sheets' || own.length === 0 || seen.has(key) || !own.every(isMoulded)) continue;
        // What is glued up of several layers is moulded once.
        seen.add(key);
        strips.push({ marks, length: piece.length, first: own[0] });
        const cut = blocksOf(own, piece.length, kerf ?? problem.kerf);
        if (cut.length > 0)
          blocks.push(cut.map(({ mark, length }) => ({ batch: batch.id, strip: marks, marks: [mark], length })));
      }
    });
  }
  const slanted = [...uncut].filter(({ ends }) => ends.some(({ kind }) => kind !== 'square'));
  return { strips, blocks, uncutEnds: slanted, oversize: oversize > SAME ? hundredth(oversize) : 0 };
}

/** With what is left on to be scribed, mm. */
const sawnLength = (part: Part): number => hundredth(part.size.length + leftOn(part).length);

/** Blocks cut off a strip in order; a strip as long as its blocks leaves the last one uncut. */
function blocksOf(parts: readonly Part[], strip: number, kerf: number): readonly { mark: string; length: number }[] {
  const all = parts.map((part) => ({ mark: part.mark, length: sawnLength(part) }));
  const spare = strip - all.reduce((sum, { length }) => sum + length, 0) - (all.length - 1) * kerf;
  return Math.abs(spare) <= SAME ? all.slice(0, -1) : all;
}
