import fc from 'fast-check';
import type { BarPiece, BarProblem, BarStock, BarTurn, Slant } from '../../../src/vocabulary/cut-problem';

const lean = fc.constantFrom(0, 0, 0, 1, -1, 0.5, -0.4142);
const slant = fc.tuple(lean, fc.constantFrom(0, 0, 0, 0.3)) as fc.Arbitrary<Slant>;
const price = fc.integer({ min: 0, max: 30 }).map((n) => n / 2);

const stock = (most: number): fc.Arbitrary<BarStock> =>
  fc.record(
    {
      length: fc.integer({ min: 300, max: 1200 }),
      price,
      count: fc.integer({ min: 0, max: most }),
      trim: fc.constantFrom(0, 5),
      offcut: fc.constant(true as const),
    },
    { requiredKeys: ['length', 'price'] },
  );

const piece = (most: number, slanted: boolean): fc.Arbitrary<BarPiece> =>
  fc.record(
    {
      length: fc.oneof(
        fc.integer({ min: 150, max: 700 }),
        fc.integer({ min: 1500, max: 7000 }).map((n) => n / 10),
      ),
      quantity: fc.integer({ min: 1, max: most }),
      together: fc.constantFrom('frame', 'door'),
      ...(slanted ? { ends: fc.tuple(slant, slant) } : {}),
    },
    { requiredKeys: ['length', 'quantity'] },
  ) as fc.Arbitrary<BarPiece>;

/** Bars with anything on: limited stock, trims, sets, slanted ends. `pieces` different ones, of each so many at the most. */
export const anyBars = (pieces: number, most: number, slanted: boolean): fc.Arbitrary<BarProblem> =>
  fc.record({
    kind: fc.constant('bars' as const),
    kerf: fc.constantFrom(0, 2.5, 3, 4),
    trim: fc.constantFrom(0, 5, 10),
    section: fc.record({
      width: fc.constant(60),
      thickness: fc.constant(20),
      turns: fc.subarray<BarTurn>(['rolled', 'swung', 'tumbled']),
    }),
    stock: fc.array(stock(3), { minLength: 1, maxLength: 3 }),
    pieces: fc.array(piece(most, slanted), { minLength: 1, maxLength: pieces }),
  });
