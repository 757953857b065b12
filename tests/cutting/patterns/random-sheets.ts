import fc from 'fast-check';
import type { SheetProblem } from '../../../src/vocabulary/cut-problem';

/** A few kinds of pieces, one to three sheets, sizes small enough to be reckoned by brute force where that is wanted. */
export const anySheets = (limits: {
  readonly sizes: number;
  readonly kinds: number;
  readonly quantity: number;
}): fc.Arbitrary<SheetProblem> =>
  fc.record(
    {
      kind: fc.constant('sheets' as const),
      kerf: fc.integer({ min: 0, max: 3 }),
      trim: fc.integer({ min: 0, max: 4 }),
      stock: fc.array(
        fc.record(
          {
            length: fc.integer({ min: Math.ceil(limits.sizes / 2), max: limits.sizes }),
            width: fc.integer({ min: Math.ceil(limits.sizes / 3), max: limits.sizes }),
            price: fc.integer({ min: 1, max: 40 }),
            count: fc.integer({ min: 2, max: 9 }),
          },
          { requiredKeys: ['length', 'width', 'price'] },
        ),
        { minLength: 1, maxLength: 3 },
      ),
      pieces: fc.array(
        fc.record(
          {
            length: fc.integer({ min: 2, max: Math.floor(limits.sizes * 0.6) }),
            width: fc.integer({ min: 2, max: Math.floor(limits.sizes * 0.5) }),
            quantity: fc.integer({ min: 1, max: limits.quantity }),
            turnable: fc.boolean(),
          },
          { requiredKeys: ['length', 'width', 'quantity'] },
        ),
        { minLength: 1, maxLength: limits.kinds },
      ),
      stages: fc.integer({ min: 2, max: 4 }),
      trimsFree: fc.boolean(),
      longestCut: fc.integer({ min: Math.ceil(limits.sizes / 2), max: limits.sizes }),
    },
    { requiredKeys: ['kind', 'kerf', 'trim', 'stock', 'pieces'] },
  );

/** A sheet cut up at random, edge to edge: what comes of it fits on it. */
export const anyCutUp = (
  length: number,
  width: number,
  deepest = 4,
): fc.Arbitrary<readonly (readonly [number, number])[]> =>
  fc.infiniteStream(fc.nat({ max: 999 })).map((stream) => {
    const next = (below: number): number => (stream.next().value as number) % below;
    const cut = (l: number, w: number, deep: number): (readonly [number, number])[] => {
      if (deep === 0 || (l < 8 && w < 8)) return [[l, w]];
      const across = w < 8 || (l >= 8 && next(2) === 0);
      const side = across ? l : w;
      const at = 3 + next(side - 6);
      return across
        ? [...cut(at, w, deep - 1), ...cut(l - at, w, deep - 1)]
        : [...cut(l, at, deep - 1), ...cut(l, w - at, deep - 1)];
    };
    return cut(length, width, 1 + next(deepest));
  });
