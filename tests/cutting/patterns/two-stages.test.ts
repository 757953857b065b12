import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type LpSolver, loadLp } from '../../../src/cutting/lp';
import { twoStages } from '../../../src/cutting/patterns/two-stages';
import type { ValuedSheet } from '../../../src/cutting/patterns/valued';
import { SEED } from '../../base/seed';

let lp: LpSolver;
beforeAll(async () => {
  lp = await loadLp();
});

const anySheet: fc.Arbitrary<ValuedSheet> = fc.record({
  length: fc.integer({ min: 6, max: 24 }),
  width: fc.integer({ min: 6, max: 20 }),
  pieces: fc.array(
    fc.record({
      length: fc.integer({ min: 3, max: 14 }),
      width: fc.integer({ min: 3, max: 12 }),
      value: fc.integer({ min: 0, max: 60 }),
      most: fc.integer({ min: 1, max: 2 }),
      turnable: fc.boolean(),
    }),
    { minLength: 1, maxLength: 4 },
  ),
});

/** Every way to put pieces into strips along x, one after the other. */
function byEveryStrip({ length, width, pieces }: ValuedSheet): number {
  const left = pieces.map((p) => p.most ?? 0);
  let best = 0;
  const lie = (piece: number, turned: boolean): [number, number] =>
    turned ? [pieces[piece].width, pieces[piece].length] : [pieces[piece].length, pieces[piece].width];
  const go = (room: number, inStrip: number, high: number, value: number): void => {
    best = Math.max(best, value);
    pieces.forEach((p, i) => {
      if (left[i] === 0) return;
      for (const turned of p.turnable ? [false, true] : [false]) {
        const [x, y] = lie(i, turned);
        left[i] -= 1;
        if (x <= inStrip && y <= high) go(room, inStrip - x, high, value + p.value);
        // A new strip, as high as this piece.
        if (x <= length && y <= room) go(room - y, length - x, y, value + p.value);
        left[i] += 1;
      }
    });
  };
  go(width, 0, 0, 0);
  return best;
}

const turnedSheet = ({ length, width, pieces }: ValuedSheet): ValuedSheet => ({
  length: width,
  width: length,
  pieces: pieces.map((p) => ({ ...p, length: p.width, width: p.length })),
});

describe(`one sheet in two stages, limited numbers (seed ${SEED})`, () => {
  it('is worth as much as by every way to fill strips, along and across', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        const along = twoStages(sheet, 'along', lp);
        expect(along.proven).toBe(true);
        expect(along.value).toBe(byEveryStrip(sheet));
        expect(twoStages(turnedSheet(sheet), 'across', lp).value).toBe(along.value);
      }),
      { seed: SEED, numRuns: 10 },
    );
  });

  it('its strips fit, hold no more than there are, and are worth what it says', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        const { strips, value } = twoStages(sheet, 'along', lp);
        const used = sheet.pieces.map(() => 0);
        for (const strip of strips) {
          let long = 0;
          for (const { piece, turned, count } of strip.pieces) {
            const { length, width } = sheet.pieces[piece];
            long += count * (turned ? width : length);
            expect(turned ? length : width).toBeLessThanOrEqual(strip.high);
            if (turned) expect(sheet.pieces[piece].turnable).toBe(true);
            used[piece] += count;
          }
          expect(long).toBeLessThanOrEqual(sheet.length);
        }
        expect(strips.reduce((sum, { high }) => sum + high, 0)).toBeLessThanOrEqual(sheet.width);
        sheet.pieces.forEach((p, i) => {
          expect(used[i]).toBeLessThanOrEqual(p.most!);
        });
        expect(used.reduce((sum, n, i) => sum + n * sheet.pieces[i].value, 0)).toBe(value);
      }),
      { seed: SEED, numRuns: 10 },
    );
  });

  it('Oliveira & Ferreira (1990), OF1: 2713 with the first cuts along, 2660 across; Cung, Hifi & Le Cun (2000), CHL5: 363 and 344', () => {
    for (const [sheet, along, across] of PUBLISHED) {
      expect(twoStages(sheet, 'along', lp)).toMatchObject({ value: along, proven: true });
      expect(twoStages(sheet, 'across', lp)).toMatchObject({ value: across, proven: true });
    }
  });

  it('nothing fits: nothing is worth anything', () => {
    const sheet = { length: 5, width: 5, pieces: [{ length: 6, width: 1, value: 3, most: 2 }] };
    expect(twoStages(sheet, 'along', lp)).toEqual({ value: 0, proven: true, strips: [] });
  });
});

/** Length, width, most, value of each piece. */
type Row = readonly [number, number, number, number];
const sheetOf = (length: number, width: number, rows: readonly Row[]): ValuedSheet => ({
  length,
  width,
  pieces: rows.map(([l, w, most, value]) => ({ length: l, width: w, most, value })),
});

const PUBLISHED: readonly (readonly [ValuedSheet, number, number])[] = [
  [
    sheetOf(70, 40, [
      [29, 5, 1, 145],
      [9, 39, 4, 351],
      [55, 9, 1, 495],
      [31, 15, 1, 465],
      [11, 16, 2, 176],
      [23, 21, 3, 483],
      [29, 14, 4, 406],
      [16, 19, 3, 304],
      [9, 36, 2, 324],
      [22, 4, 2, 88],
    ]),
    2713,
    2660,
  ],
  [
    sheetOf(20, 20, [
      [14, 2, 1, 28],
      [1, 5, 1, 5],
      [20, 4, 2, 80],
      [12, 3, 3, 36],
      [11, 8, 2, 88],
      [11, 6, 2, 66],
      [7, 9, 1, 63],
      [17, 5, 1, 85],
      [7, 14, 2, 98],
      [1, 7, 3, 7],
    ]),
    363,
    344,
  ],
];
