import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Cell } from '../../../src/cutting/sheets/cell';
import { type Chance, chanceOf } from '../../../src/cutting/sheets/chance';
import { fewerCuts } from '../../../src/cutting/sheets/fewer-cuts';
import { firstCells } from '../../../src/cutting/sheets/first';
import { type Scaled, scaled } from '../../../src/cutting/sheets/scaled';
import { stagesOf, tidied } from '../../../src/cutting/sheets/tidy';
import { SEED } from '../../base/seed';
import { cutCell, leftCell, pieceCell, type Way } from './cells';
import { anyWhole, piece, sheetProblem } from './problems';

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

/** Whether every part reaches over the whole of what it is cut from, and all of them have room. */
function fits(cell: Cell): boolean {
  if (cell.kind !== 'cut') return true;
  const across = cell.way === 'across';
  const sum = cell.parts.reduce((all, { length, width }) => all + (across ? length : width), 0);
  return (
    sum <= (across ? cell.length : cell.width) &&
    cell.parts.every((part) => (across ? part.width === cell.width : part.length === cell.length) && fits(part))
  );
}

/** A rectangle cut up in tens by chance, one way and the other in turn: many parts are cut at the same places. Kinds are those of `TENS`. */
function grown(length: number, width: number, way: Way, chance: Chance, depth = 0): Cell {
  const side = way === 'along' ? width : length;
  if (side <= 10 || depth === 5 || (depth > 1 && chance.below(3) === 0)) {
    const kind = TENS.findIndex((one) => one.length === length && one.width === width);
    return kind < 0 || chance.below(4) === 0 ? leftCell(length, width) : pieceCell(kind, length, width);
  }
  const step = 10 * (1 + chance.below(Math.min(3, side / 10 - 1)));
  const other = way === 'along' ? 'across' : 'along';
  const again = chance.below(1000);
  const parts: Cell[] = [];
  for (let from = 0; from < side; from += step) {
    const size = Math.min(step, side - from);
    const own = chance.below(2) === 0 ? chanceOf(again) : chance;
    parts.push(
      way === 'along' ? grown(length, size, other, own, depth + 1) : grown(size, width, other, own, depth + 1),
    );
  }
  return cutCell(way, length, width, ...parts);
}
const TENS = [10, 20, 30, 40, 50, 60, 70, 80, 90, 100].flatMap((length) =>
  [10, 20, 30, 40, 50, 60].map((width) => ({ length, width })),
);

describe('fewer cuts', () => {
  // Two of 40 × 50 and one of 15 × 50 of a sheet of 100 × 60.
  const to = scaled(sheetProblem([piece(40, 50, 2), piece(15, 50)]));
  const column = (kind: number, length: number): Cell =>
    cutCell('along', length, 60, pieceCell(kind, length, 50), leftCell(length, 10));

  it('rips what is of one width through the whole sheet before it is cross-cut', () => {
    const columns = cutCell('across', 100, 60, column(0, 40), column(0, 40), column(1, 15), leftCell(5, 60));
    expect(fewerCuts(columns, to)).toEqual(
      cutCell(
        'along',
        100,
        60,
        cutCell('across', 100, 50, pieceCell(0, 40, 50), pieceCell(0, 40, 50), pieceCell(1, 15, 50), leftCell(5, 50)),
        leftCell(100, 10),
      ),
    );
  });

  it('leaves columns where the saw is too short for the rip', () => {
    const short = scaled(sheetProblem([piece(40, 50, 2), piece(15, 50)], { longestCut: 70 }));
    const columns = cutCell('across', 100, 60, column(0, 40), column(0, 40), column(1, 15), leftCell(5, 60));
    expect(fewerCuts(columns, short)).toEqual(columns);
  });

  it('leaves a large offcut beside them whole', () => {
    const one = scaled(sheetProblem([piece(15, 50, 2)]));
    const columns = cutCell('across', 100, 60, column(0, 15), column(0, 15), leftCell(70, 60));
    expect(fewerCuts(columns, one)).toEqual(columns);
  });

  it('keeps to the limit of stages where a last cut to size is free', () => {
    const limited = scaled(sheetProblem([piece(40, 50, 2), piece(15, 50)], { stages: 1, trimsFree: true }));
    const columns = cutCell('across', 100, 60, column(0, 40), column(0, 40), column(1, 15), leftCell(5, 60));
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
    const after = fewerCuts(cutCell('across', 3000, 60, ...columns), long);
    expect(after).toMatchObject({ way: 'along', parts: [{ way: 'across' }, leftCell(3000, 10)] });
    expect(cuts(after)).toBe(1000);
  });

  it(`holds the same pieces in whatever is cut up in tens, each part spanning what it is cut from (seed ${SEED})`, () => {
    // In the order of the list: places in it are what `grown` calls the kinds.
    const tens = scaled(sheetProblem(TENS.map(({ length, width }) => piece(length, width, 50))));
    const kindOf = TENS.map(({ length, width }) =>
      tens.kinds.findIndex((kind) => kind.length === length && kind.width === width),
    );
    const renamed = (cell: Cell): Cell => {
      if (cell.kind === 'cut') return { ...cell, parts: cell.parts.map(renamed) };
      return cell.kind === 'piece' ? { ...cell, piece: kindOf[cell.piece] } : cell;
    };
    let fewer = 0;
    fc.assert(
      fc.property(fc.nat(), fc.constantFrom<Way>('along', 'across'), (seed, way) => {
        const tidy = tidied(renamed(grown(100, 60, way, chanceOf(seed))), tens);
        const after = fewerCuts(tidy, tens);
        expect(fits(after)).toBe(true);
        expect(pieces(after)).toEqual(pieces(tidy));
        expect(cuts(after)).toBeLessThanOrEqual(cuts(tidy));
        expect(stagesOf(after, false)).toBeLessThanOrEqual(stagesOf(tidy, false));
        expect(largest(after, tens)).toBeGreaterThanOrEqual(largest(tidy, tens));
        if (cuts(after) < cuts(tidy)) fewer++;
      }),
      { seed: SEED, numRuns: 500 },
    );
    expect(fewer).toBeGreaterThan(0);
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
