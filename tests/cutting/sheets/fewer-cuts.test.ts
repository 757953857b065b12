import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Cell } from '../../../src/cutting/sheets/cell';
import { fewerCuts } from '../../../src/cutting/sheets/fewer-cuts';
import { firstCells } from '../../../src/cutting/sheets/first';
import { type Scaled, scaled } from '../../../src/cutting/sheets/scaled';
import { stagesOf, tidied } from '../../../src/cutting/sheets/tidy';
import { SEED } from '../../base/seed';
import { anyWhole, piece, sheetProblem } from './problems';

const alone = (kind: number, length: number, width: number): Cell => ({
  kind: 'piece',
  piece: kind,
  length,
  width,
  turned: false,
});
const left = (length: number, width: number): Cell => ({ kind: 'left', length, width });
const cut = (way: 'along' | 'across', length: number, width: number, ...parts: Cell[]): Cell => ({
  kind: 'cut',
  way,
  length,
  width,
  parts,
});

function leaves(cell: Cell): Cell[] {
  return cell.kind === 'cut' ? cell.parts.flatMap(leaves) : [cell];
}
const cuts = (cell: Cell): number =>
  cell.kind === 'cut' ? cell.parts.reduce((sum, part) => sum + cuts(part), cell.parts.length - 1) : 0;
const pieces = (cell: Cell): string[] =>
  leaves(cell)
    .flatMap((one) => (one.kind === 'piece' ? [`${one.piece} ${one.turned}`] : []))
    .sort();
/** The largest leftover that is 20 × 10 at least, as in the problems here. */
const largest = (cell: Cell, { kerf, leastOffcut: [long, short] }: Scaled): number =>
  Math.max(
    0,
    ...leaves(cell).map(({ kind, length, width }) =>
      kind === 'left' && Math.max(length, width) >= long && Math.min(length, width) >= short
        ? (length - kerf) * (width - kerf)
        : 0,
    ),
  );

describe('fewer cuts', () => {
  // Two of 40 × 50 and one of 15 × 50 of a sheet of 100 × 60.
  const to = scaled(sheetProblem([piece(40, 50, 2), piece(15, 50)]));
  const column = (kind: number, length: number): Cell =>
    cut('along', length, 60, alone(kind, length, 50), left(length, 10));

  it('rips what is of one width through the whole sheet before it is cross-cut', () => {
    const columns = cut('across', 100, 60, column(0, 40), column(0, 40), column(1, 15), left(5, 60));
    expect(fewerCuts(columns, to)).toEqual(
      cut(
        'along',
        100,
        60,
        cut('across', 100, 50, alone(0, 40, 50), alone(0, 40, 50), alone(1, 15, 50), left(5, 50)),
        left(100, 10),
      ),
    );
  });

  it('leaves columns where the saw is too short for the rip', () => {
    const short = scaled(sheetProblem([piece(40, 50, 2), piece(15, 50)], { longestCut: 70 }));
    const columns = cut('across', 100, 60, column(0, 40), column(0, 40), column(1, 15), left(5, 60));
    expect(fewerCuts(columns, short)).toEqual(columns);
  });

  it('leaves a large offcut beside them whole', () => {
    const one = scaled(sheetProblem([piece(15, 50, 2)]));
    const columns = cut('across', 100, 60, column(0, 15), column(0, 15), left(70, 60));
    expect(fewerCuts(columns, one)).toEqual(columns);
  });

  it('keeps to the limit of stages where a last cut to size is free', () => {
    const limited = scaled(sheetProblem([piece(40, 50, 2), piece(15, 50)], { stages: 1, trimsFree: true }));
    const columns = cut('across', 100, 60, column(0, 40), column(0, 40), column(1, 15), left(5, 60));
    expect(fewerCuts(columns, limited)).toEqual(columns);
  });

  it('gathers a thousand columns as well', () => {
    const long = scaled(
      sheetProblem([piece(3, 50, 1000)], {
        stock: [{ length: 3000, width: 60, price: 10 }],
        leastOffcut: { length: 20, width: 10 },
      }),
    );
    const columns = Array.from({ length: 1000 }, () => column(0, 3));
    const after = fewerCuts(cut('across', 3000, 60, ...columns), long);
    expect(after).toMatchObject({ way: 'along', parts: [{ way: 'across' }, left(3000, 10)] });
    expect(cuts(after)).toBe(1000);
  });

  it(`holds the same pieces, with no more cuts and stages and no smaller offcut (seed ${SEED})`, () => {
    let fewer = 0;
    fc.assert(
      fc.property(anyWhole, (problem) => {
        const own = scaled(problem);
        for (const { cell } of firstCells(own)) {
          const tidy = tidied(cell, own);
          const after = fewerCuts(tidy, own);
          expect(tidied(after, own)).toEqual(after);
          expect(pieces(after)).toEqual(pieces(tidy));
          expect(cuts(after)).toBeLessThanOrEqual(cuts(tidy));
          expect(stagesOf(after, false)).toBeLessThanOrEqual(stagesOf(tidy, false));
          expect(largest(after, own)).toBeGreaterThanOrEqual(largest(tidy, own));
          if (cuts(after) < cuts(tidy)) fewer++;
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
    expect(fewer).toBeGreaterThan(0);
  });
});
