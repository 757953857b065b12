import fc from 'fast-check';
import type { SheetPiece, SheetProblem, SheetStock } from '../../../src/vocabulary/cut-problem';

/** One sheet of 100 × 60 for 10, as many as one likes; whole millimetres, no kerf, no trim. */
export const PLAIN: SheetProblem = {
  kind: 'sheets',
  kerf: 0,
  trim: 0,
  stock: [{ length: 100, width: 60, price: 10 }],
  pieces: [],
  leastOffcut: { length: 20, width: 10 },
};

export const sheetProblem = (
  pieces: readonly SheetPiece[],
  more: Partial<Omit<SheetProblem, 'kind' | 'pieces'>> = {},
): SheetProblem => ({ ...PLAIN, ...more, pieces });

export const piece = (length: number, width: number, quantity = 1, more: Partial<SheetPiece> = {}): SheetPiece => ({
  length,
  width,
  quantity,
  ...more,
});

const side = (least: number, most: number): fc.Arbitrary<number> => fc.integer({ min: least, max: most });

const anyPiece = fc.record({
  length: side(8, 70),
  width: side(8, 55),
  quantity: side(1, 4),
  turnable: fc.boolean(),
});

const anyStock: fc.Arbitrary<SheetStock> = fc.record({
  length: side(75, 140),
  width: side(75, 120),
  price: side(1, 30),
});

/** Problems whose pieces all go on any sheet. */
export const anyWhole: fc.Arbitrary<SheetProblem> = fc.record({
  kind: fc.constant('sheets' as const),
  kerf: fc.constantFrom(0, 1, 0.5),
  trim: fc.constantFrom(0, 1.5),
  stock: fc.array(anyStock, { minLength: 1, maxLength: 3 }),
  pieces: fc.array(anyPiece, { minLength: 1, maxLength: 8 }),
});
