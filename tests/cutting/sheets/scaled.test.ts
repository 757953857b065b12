import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaled } from '../../../src/cutting/sheets/scaled';
import { SEED } from '../../base/seed';
import { anyWhole, piece, sheetProblem } from './problems';

describe('a sheet problem in whole numbers', () => {
  it('has a kerf added to pieces and to what is usable of a sheet, and the trim taken off', () => {
    const to = scaled(sheetProblem([piece(30, 20)], { kerf: 3, trim: 5 }));
    expect(to).toMatchObject({ scale: 1, kerf: 3 });
    expect(to.sheets[0]).toMatchObject({ length: 93, width: 53, price: 10 });
    expect(to.kinds[0]).toMatchObject({ length: 33, width: 23, quantity: 1 });
  });

  it.each([
    [30, 1],
    [30.5, 10],
    [30.25, 100],
    [30.125, 1000],
    [25.4 / 64, 2560],
  ])('tells %s mm exactly', (length, scale) => {
    const to = scaled(sheetProblem([piece(length, 20)]));
    expect(to.scale).toBe(scale);
    expect(to.kinds[0].length / scale).toBeCloseTo(length, 9);
  });

  it('rounds pieces up and sheets down where nothing is exact', () => {
    const to = scaled(sheetProblem([piece(100 / 3, 20)], { stock: [{ length: 200 / 3, width: 60, price: 1 }] }));
    expect(to).toMatchObject({ scale: 1000, kinds: [{ length: 33_334 }], sheets: [{ length: 66_666 }] });
  });

  it('takes pieces that are alike together, whichever way round they are listed if they turn', () => {
    const turnable = { turnable: true };
    const pieces = [piece(30, 20, 2, turnable), piece(20, 30, 1, turnable), piece(20, 30), piece(30, 20, 4, turnable)];
    const { kinds } = scaled(sheetProblem(pieces));
    expect(kinds.map(({ length, quantity, turns }) => [length, quantity, turns])).toEqual([
      [30, 7, true],
      [20, 1, false],
    ]);
    expect(kinds[0].members).toMatchObject([
      { index: 0, count: 2, swapped: false },
      { index: 1, count: 1, swapped: true },
      { index: 3, count: 4, swapped: false },
    ]);
  });

  it('leaves out what lies on no sheet by itself: by its size, its grain, its stages, the longest cut', () => {
    const left = (pieces: Parameters<typeof sheetProblem>[0], more = {}): readonly number[] =>
      scaled(sheetProblem(pieces, more)).tooLarge;
    expect(left([piece(101, 20), piece(100, 60)])).toEqual([0]);
    expect(left([piece(20, 61), piece(20, 61, 1, { turnable: true })])).toEqual([0]);
    expect(left([piece(50, 30), piece(100, 30)], { stages: 1 })).toEqual([0]);
    expect(left([piece(50, 30)], { stages: 1, trimsFree: true })).toEqual([]);
    expect(left([piece(100, 30), piece(50, 60), piece(50, 30)], { longestCut: 60 })).toEqual([0]);
  });

  it(`does not mind the order of the lists (seed ${SEED})`, () => {
    const mixed = anyWhole.chain((problem) =>
      fc.record({
        problem: fc.constant(problem),
        pieces: fc.shuffledSubarray([...problem.pieces], { minLength: problem.pieces.length }),
        stock: fc.shuffledSubarray([...problem.stock], { minLength: problem.stock.length }),
      }),
    );
    const bare = (problem: typeof sheetProblem extends (...a: never[]) => infer P ? P : never): unknown => {
      const { kinds, sheets } = scaled(problem);
      return [...kinds, ...sheets].map(({ members: _, ...rest }) => rest);
    };
    fc.assert(
      fc.property(mixed, ({ problem, pieces, stock }) => {
        expect(bare({ ...problem, pieces, stock })).toEqual(bare(problem));
      }),
      { seed: SEED, numRuns: 50 },
    );
  });
});
