import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guillotineTable } from '../../../src/cutting/patterns/guillotine-table';
import { lyings, type ValuedPiece, type ValuedSheet } from '../../../src/cutting/patterns/valued';
import { SEED } from '../../base/seed';

const anySheet: fc.Arbitrary<ValuedSheet> = fc.record({
  length: fc.integer({ min: 4, max: 18 }),
  width: fc.integer({ min: 4, max: 18 }),
  pieces: fc.array(
    fc.record({
      length: fc.integer({ min: 2, max: 10 }),
      width: fc.integer({ min: 2, max: 10 }),
      value: fc.integer({ min: 0, max: 60 }),
      turnable: fc.boolean(),
    }),
    { minLength: 1, maxLength: 4 },
  ),
});

const most = (sheet: ValuedSheet): number => tableOf(sheet).fill(sheet.pieces.map(({ value }) => value));
const tableOf = (sheet: ValuedSheet) => guillotineTable(sheet, lyings(sheet), sheet.pieces.length);

/** Every cut at every whole number. */
function byEveryCut({ length, width, pieces }: ValuedSheet): number {
  const known = new Map<number, number>();
  const of = (l: number, w: number): number => {
    const key = l * 1000 + w;
    const before = known.get(key);
    if (before !== undefined) return before;
    let best = 0;
    for (const p of pieces) {
      if (p.length <= l && p.width <= w) best = Math.max(best, p.value);
      if (p.turnable && p.width <= l && p.length <= w) best = Math.max(best, p.value);
    }
    for (let x = 1; 2 * x <= l; x += 1) best = Math.max(best, of(x, w) + of(l - x, w));
    for (let y = 1; 2 * y <= w; y += 1) best = Math.max(best, of(l, y) + of(l, w - y));
    known.set(key, best);
    return best;
  };
  return of(length, width);
}

describe(`one sheet, edge to edge, any number of each piece (seed ${SEED})`, () => {
  it('is worth as much as by every cut at every place', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        expect(most(sheet)).toBe(byEveryCut(sheet));
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  it('says what pieces it used: they are worth what it says, and no larger than the sheet', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        const table = tableOf(sheet);
        const value = table.fill(sheet.pieces.map((p) => p.value));
        const counts = [...table.counts()];
        expect(counts.reduce((sum, n, i) => sum + n * sheet.pieces[i].value, 0)).toBe(value);
        const area = counts.reduce((sum, n, i) => sum + n * sheet.pieces[i].length * sheet.pieces[i].width, 0);
        expect(area).toBeLessThanOrEqual(sheet.length * sheet.width);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('the same table can be filled for other values', () => {
    const pieces: readonly ValuedPiece[] = [
      { length: 5, width: 3, value: 0 },
      { length: 2, width: 7, value: 0 },
    ];
    const table = tableOf({ length: 11, width: 10, pieces });
    // Six of the first: two side by side, three rows. Five of the second in one row, none above.
    expect(table.fill([1, 0])).toBe(6);
    expect(table.fill([0, 1])).toBe(5);
    // And with a row of the first above those: two more.
    expect(table.fill([1, 1])).toBe(7);
    expect(table.fill([1, 0])).toBe(6);
  });

  it('Beasley (1985), problem gcut1: 56460 with pieces as they lie, 58136 turned as one likes', () => {
    // Pieces as published with the OR-Library; worth their area. The second figure was worked out by an independent program.
    const sizes = GCUT1;
    const sheet = (turnable: boolean): ValuedSheet => ({
      length: 250,
      width: 250,
      pieces: sizes.map(([length, width]) => ({ length, width, value: length * width, turnable })),
    });
    expect(most(sheet(false))).toBe(56460);
    expect(most(sheet(true))).toBe(58136);
  });
});

const GCUT1: readonly (readonly [number, number])[] = [
  [167, 184],
  [114, 118],
  [167, 152],
  [83, 140],
  [70, 86],
  [143, 166],
  [120, 160],
  [66, 148],
  [87, 141],
  [69, 165],
];
