import { describe, expect, it } from 'vitest';
import { scaled } from '../../../src/cutting/sheets/scaled';
import { stagesOf, tidied } from '../../../src/cutting/sheets/tidy';
import { toPlan } from '../../../src/cutting/sheets/to-plan';
import { verify } from '../verifier';
import { cutCell, pieceCell } from './cells';
import { piece, sheetProblem } from './problems';

describe('a way of cutting as a plan', () => {
  // Usable 90 × 50; with a kerf of 2 in here 92 × 52.
  const problem = sheetProblem([piece(40, 30, 2), piece(20, 30, 1, { turnable: true })], { kerf: 2, trim: 5 });
  const to = scaled(problem);

  it('is in mm from the corner of the sheet, a kerf between parts, and what is left told', () => {
    // A strip of 30 with two of 40 in it (42 + 42 of 92: 8 left, of which a kerf goes), and one turned below it, 20 of its 30 along y.
    const strip = cutCell('across', 92, 32, pieceCell(0, 42, 32), pieceCell(0, 42, 32));
    const below = cutCell('across', 92, 20, pieceCell(1, 32, 20));
    const narrow = scaled(sheetProblem([piece(40, 30, 2), piece(30, 18, 1, { turnable: true })], { kerf: 2, trim: 5 }));
    const plan = toPlan(narrow, [{ sheet: 0, cell: cutCell('along', 92, 52, strip, below) }], 10);
    expect(verify(narrow.problem as typeof problem, plan)).toEqual([]);
    expect(plan).toMatchObject({ cost: 10, bound: 10, proven: true, unplaced: [], used: [{ stock: 0, count: 1 }] });
    expect(plan.sheets[0]).toMatchObject({
      stages: 2,
      tree: {
        way: 'along',
        x: 5,
        y: 5,
        length: 90,
        width: 50,
        parts: [
          {
            way: 'across',
            parts: [
              { kind: 'piece', x: 5, length: 40 },
              { kind: 'piece', x: 47, length: 40 },
              { kind: 'left', x: 89, y: 5, length: 6, width: 30, reusable: false },
            ],
          },
          {
            way: 'across',
            y: 37,
            parts: [
              { kind: 'piece', width: 18 },
              { x: 37, length: 58, width: 18, reusable: true },
            ],
          },
        ],
      },
    });
  });

  it('says what is missing, and why', () => {
    const scarce = scaled(
      sheetProblem(
        [piece(90, 50, 2), piece(200, 10), piece(90, 40, 1, { together: 'a' }), piece(80, 40, 1, { together: 'a' })],
        {
          stock: [{ length: 100, width: 60, price: 10, count: 3 }],
        },
      ),
    );
    const one = { sheet: 0, cell: pieceCell(0, 100, 60) };
    expect(toPlan(scarce, [one, one], 0).unplaced).toEqual([
      { piece: 1, quantity: 1, why: 'larger than any stock' },
      { piece: 2, quantity: 1, why: 'its set fits no stock' },
      { piece: 3, quantity: 1, why: 'its set fits no stock' },
    ]);
    const against = scaled(sheetProblem([piece(50, 90)], { stock: [{ length: 100, width: 60, price: 10, count: 3 }] }));
    expect(toPlan(against, [], 0).unplaced).toEqual([
      { piece: 0, quantity: 1, why: 'fits no stock with the grain, stages and longest cut given' },
    ]);
    const few = scaled(sheetProblem([piece(90, 50, 2)], { stock: [{ length: 100, width: 60, price: 10, count: 1 }] }));
    expect(toPlan(few, [one], 10).unplaced).toEqual([{ piece: 0, quantity: 1, why: 'no stock left' }]);
  });

  it('is tidied: cuts of one way in one, what is left in one part and last, a kerf not mentioned', () => {
    const untidy = cutCell(
      'across',
      92,
      52,
      { kind: 'left', length: 4, width: 52 },
      cutCell('across', 88, 52, pieceCell(0, 42, 52), { kind: 'left', length: 2, width: 52 }, pieceCell(0, 42, 50)),
    );
    expect(tidied(untidy, to)).toEqual({
      kind: 'cut',
      way: 'across',
      length: 92,
      width: 52,
      parts: [
        cutCell('along', 42, 52, pieceCell(0, 42, 32), { kind: 'left', length: 42, width: 20 }),
        cutCell('along', 42, 50, pieceCell(0, 42, 32), { kind: 'left', length: 42, width: 18 }),
        { kind: 'left', length: 8, width: 52 },
      ],
    });
    const sawdust = cutCell('along', 42, 34, pieceCell(0, 42, 32), { kind: 'left', length: 42, width: 2 });
    expect(tidied(sawdust, to)).toEqual(cutCell('along', 42, 34, pieceCell(0, 42, 32)));
  });

  it('counts every change of direction, but a last trim only where trims are not free', () => {
    const trim = cutCell('along', 42, 40, pieceCell(0, 42, 32), { kind: 'left', length: 42, width: 8 });
    const two = cutCell('across', 92, 40, trim, pieceCell(0, 42, 40));
    expect(stagesOf(trim, false)).toBe(1);
    expect(stagesOf(trim, true)).toBe(0);
    expect(stagesOf(two, false)).toBe(2);
    expect(stagesOf(two, true)).toBe(1);
  });

  it('keeps the sizes of pieces where nothing is exact', () => {
    const odd = sheetProblem([piece(100 / 3, 20, 3)], { kerf: 0.1 / 3 });
    const inexact = scaled(odd);
    const { length, width } = inexact.kinds[0];
    const all = cutCell('across', 100_034, 60_034, ...[0, 1].map(() => pieceCell(0, length, width)));
    const plan = toPlan(inexact, [{ sheet: 0, cell: all }], 0);
    expect(plan.sheets[0].pieces.map((one) => one.length)).toEqual([100 / 3, 100 / 3]);
  });
});
