import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundOf } from '../../../src/cutting/sheets/bound';
import { scaled } from '../../../src/cutting/sheets/scaled';
import { startSheets } from '../../../src/cutting/sheets/search';
import { startWasteFree } from '../../../src/cutting/sheets/waste-free';
import type { SheetPlan } from '../../../src/vocabulary/cut-plan';
import type { SheetPiece, SheetProblem, SheetStock } from '../../../src/vocabulary/cut-problem';
import { SEED } from '../../base/seed';
import { verify } from '../verifier';
import { cutUp, type Sides } from './cut-up';
import { piece, sheetProblem } from './problems';

/** Pieces that a sheet was cut into, with a kerf between them. */
function problemOf(sheet: Sides, parts: readonly Sides[], kerf: number, turnable: boolean): SheetProblem {
  const trim = 5;
  return sheetProblem(
    parts.map(([l, w]) => piece(l - kerf, w - kerf, 1, { turnable })),
    { kerf, trim, stock: [{ length: sheet[0] - kerf + 2 * trim, width: sheet[1] - kerf + 2 * trim, price: 7 }] },
  );
}

function searched(problem: SheetProblem, steps: number): SheetPlan {
  const search = startSheets(problem, { seed: 1 });
  for (let i = 0; i < steps && !search.best.proven && search.step(); i++);
  expect(verify(problem, search.best)).toEqual([]);
  return search.best;
}

/** Whether pieces fill a rectangle with cuts from edge to edge, by trying every way to share them out: shares no idea with the search. */
function fills([length, width]: Sides, pieces: readonly SheetPiece[]): boolean {
  const area = (some: readonly SheetPiece[]): number => some.reduce((sum, { length: l, width: w }) => sum + l * w, 0);
  if (area(pieces) !== length * width) return false;
  if (pieces.length === 1) {
    const [{ length: l, width: w, turnable }] = pieces;
    return (l === length && w === width) || (turnable === true && w === length && l === width);
  }
  for (let share = 1; share < 2 ** (pieces.length - 1); share++) {
    const [one, other] = [0, 1].map((which) => pieces.filter((_, i) => ((share >> i) & 1) === which));
    const [x, y] = [area(one) / width, area(one) / length];
    if (fills([x, width], one) && fills([length - x, width], other)) return true;
    if (fills([length, y], one) && fills([length, width - y], other)) return true;
  }
  return false;
}

/** Whether pieces can be cut from a rectangle from edge to edge, by trying every cut and every way to share them out. */
function canBeCut([length, width]: Sides, pieces: readonly SheetPiece[]): boolean {
  if (pieces.length === 0) return true;
  if (pieces.reduce((sum, { length: l, width: w }) => sum + l * w, 0) > length * width) return false;
  if (pieces.length === 1) {
    const [{ length: l, width: w, turnable }] = pieces;
    return (l <= length && w <= width) || (turnable === true && w <= length && l <= width);
  }
  for (let share = 1; share < 2 ** (pieces.length - 1); share++) {
    const [one, rest] = [1, 0].map((which) => pieces.filter((_, i) => ((share >> i) & 1) === which));
    for (let x = 1; x < length; x++) if (canBeCut([x, width], one) && canBeCut([length - x, width], rest)) return true;
    for (let y = 1; y < width; y++) if (canBeCut([length, y], one) && canBeCut([length, width - y], rest)) return true;
  }
  return false;
}

/** The least that a choice of sheets costs from which all can be cut, or `upTo` if none below costs less. */
function leastByTrying(pieces: readonly SheetPiece[], stock: readonly SheetStock[], upTo: number): number {
  let least = upTo;
  const go = (left: readonly SheetPiece[], used: readonly number[], cost: number): void => {
    if (cost >= least) return;
    if (left.length === 0) least = cost;
    else
      stock.forEach(({ length, width, price, count = 9 }, s) => {
        if (used[s] >= count || cost + price >= least) return;
        for (let share = 1; share < 2 ** left.length; share++) {
          const [one, rest] = [1, 0].map((which) => left.filter((_, i) => ((share >> i) & 1) === which));
          if (canBeCut([length, width], one)) go(rest, used.with(s, used[s] + 1), cost + price);
        }
      });
  };
  go(
    pieces,
    stock.map(() => 0),
    0,
  );
  return least;
}

const shares = (most: number): fc.Arbitrary<number[]> =>
  fc.array(fc.double({ min: 0.15, max: 0.85, noNaN: true }), { minLength: 3, maxLength: most });

describe(`sheets without waste (seed ${SEED})`, () => {
  it('puts what was cut from one sheet without waste back on one sheet', () => {
    fc.assert(
      fc.property(shares(34), fc.boolean(), fc.constantFrom(0, 3, 0.5), (at, turnable, kerf) => {
        const parts = cutUp([611, 437], at, 12);
        expect(searched(problemOf([611, 437], parts, kerf, turnable), 400)).toMatchObject({ cost: 7, proven: true });
      }),
      { seed: SEED, numRuns: 30 },
    );
  });

  it('agrees with trying every way to share out a few pieces, which may lie in a wheel', () => {
    const wheel: readonly Sides[] = [
      [60, 30],
      [40, 50],
      [60, 30],
      [40, 50],
    ];
    const some = fc.tuple(fc.boolean(), fc.boolean(), fc.double({ min: 0.2, max: 0.8, noNaN: true }), fc.nat(3));
    fc.assert(
      fc.property(some, ([inWheel, turnable, share, which]) => {
        // A wheel of 100 × 80 about a middle of 20 × 20, with one blade parted; or what is cut up from edge to edge.
        const blades = wheel.flatMap((blade, b) => (b === which ? cutUp(blade, [share], 5) : [blade]));
        const parts = inWheel ? [...blades, ...cutUp([20, 20], [share], 5)] : cutUp([100, 100], [share, 0.4, share], 5);
        const sides: Sides = [100, inWheel ? 80 : 100];
        const problem = sheetProblem(
          parts.map(([l, w]) => piece(l, w, 1, { turnable })),
          { stock: [{ length: sides[0], width: sides[1], price: 7 }] },
        );
        const to = scaled(problem);
        const search = startWasteFree(to, boundOf(to));
        for (let i = 0; i < 50 && search?.step(); i++);
        expect(search?.found !== undefined).toBe(fills(sides, problem.pieces));
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('never says that more must be spent than some way of cutting costs, whatever the sheets', () => {
    const side = (most: number) => fc.integer({ min: 1, max: most });
    const lot = fc.record({
      sheet: fc.tuple(fc.integer({ min: 3, max: 6 }), fc.integer({ min: 3, max: 5 })),
      other: fc.option(
        fc.record({ more: fc.tuple(fc.nat(2), fc.nat(2)), price: fc.integer({ min: 3, max: 14 }), count: side(2) }),
      ),
      number: side(2),
      sizes: fc.array(fc.tuple(side(6), side(5), fc.boolean()), { minLength: 12, maxLength: 24 }),
    });
    let raised = 0;
    fc.assert(
      fc.property(lot, ({ sheet: [length, width], other, number, sizes }) => {
        // Taken as long as they don't exceed the area of so many sheets: what fills it exactly is of interest.
        let room = number * length * width;
        const pieces = sizes.flatMap(([l, w, turnable]) => {
          if (l > length || w > width || l * w > room || room === 0) return [];
          room -= l * w;
          return [piece(l, w, 1, { turnable })];
        });
        if (room > 0 || pieces.length > 6) return;
        const [x, y] = other?.more ?? [0, 0];
        const more = other ? [{ length: length + x, width: width + y, price: other.price, count: other.count }] : [];
        const stock = [{ length, width, price: 10 }, ...more];
        const to = scaled(sheetProblem(pieces, { stock }));
        const search = startWasteFree(to, boundOf(to));
        while (search?.step());
        if (!search || search.bound <= boundOf(to)) return;
        raised++;
        expect(leastByTrying(pieces, stock, search.bound)).toBeGreaterThanOrEqual(search.bound - 1e-9);
      }),
      { seed: SEED, numRuns: 3000 },
    );
    expect(raised).toBeGreaterThan(0);
  });

  it('knows that a wheel about a middle can not be cut from one sheet from edge to edge', () => {
    const problem = sheetProblem([piece(60, 40, 2), piece(40, 60, 2), piece(20, 20)], {
      stock: [{ length: 100, width: 100, price: 7 }],
    });
    expect(searched(problem, 20)).toMatchObject({ cost: 14, bound: 14, proven: true });
  });
});
