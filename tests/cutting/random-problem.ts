import fc from 'fast-check';
import type { BarPiece, BarProblem, BarTurn, SheetPiece, SheetProblem } from '../../src/vocabulary/cut-problem';

/** How large and how varied random problems are. */
export interface Wanted {
  /** Kinds of pieces, and of stock, at most. */
  readonly kinds: number;
  readonly stocks: number;
  /** Of each kind of piece. */
  readonly copies: number;
  /** Everything on: sets, slants, offcuts of limited number, trims of their own, stages, longest cuts; pieces that fit nowhere. */
  readonly everything?: true;
  /** Bars have slanted ends. */
  readonly slants?: true;
}

const tenths = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 10, max: most * 10 }).map((n) => n / 10);
const halves = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 2, max: most * 2 }).map((n) => n / 2);
const option = <T>(one: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(one, { nil: undefined });

/** Mostly whole millimetres, sometimes tenths. */
const length = (least: number, most: number): fc.Arbitrary<number> =>
  fc.oneof(
    { weight: 4, arbitrary: fc.integer({ min: least, max: most }) },
    { weight: 1, arbitrary: tenths(least, most) },
  );

const KERF = fc.constantFrom(0, 3, 3.2, 8);
const TRIM = fc.constantFrom(0, 5, 12.5);
/** Few words for many pieces, so that sets have several. */
const SET = fc.constantFrom(undefined, undefined, undefined, 'a', 'b');
/** Plain angles as they are cut, and some that nobody cuts. */
const SLOPE = fc.constantFrom(0, 0, 0, 1, -1, Math.SQRT1_2, -Math.SQRT1_2, 0.25);
const TURNS: readonly BarTurn[] = ['rolled', 'swung', 'tumbled'];
/** Width and thickness of the section at most, mm: both ends, 45° across and out, take less than the shortest piece. */
const WIDEST = 40;
const SHORTEST = 200;

/** Bars of 1000 to 3000, and pieces from 200: the first stock is unlimited unless everything is on, and holds any piece that isn't too large on purpose. */
export const anyBars = ({ kinds, stocks, copies, everything, slants }: Wanted): fc.Arbitrary<BarProblem> => {
  const all = everything ?? false;
  const piece: fc.Arbitrary<BarPiece> = fc.record({
    length: length(SHORTEST, all ? 1100 : 900),
    quantity: fc.integer({ min: 1, max: copies }),
    together: all ? SET : fc.constant(undefined),
    ends: all || slants ? option(fc.tuple(fc.tuple(SLOPE, SLOPE), fc.tuple(SLOPE, SLOPE))) : fc.constant(undefined),
  });
  const other = fc.record({
    length: length(SHORTEST + 60, 3000),
    price: halves(0, 15),
    count: option(fc.integer({ min: 0, max: 3 })),
    trim: all ? option(TRIM) : fc.constant(undefined),
    offcut: fc.constant(undefined),
  });
  const first = fc.record({
    length: length(1000, 2400),
    price: halves(1, 10),
    count: all ? option(fc.integer({ min: 1, max: 4 })) : fc.constant(undefined),
  });
  return fc.record({
    kind: fc.constant('bars' as const),
    kerf: KERF,
    trim: TRIM,
    section: fc.record({
      width: length(10, WIDEST),
      thickness: length(10, WIDEST),
      turns: fc.subarray([...TURNS]),
    }),
    stock: fc.tuple(first, fc.array(other, { maxLength: stocks - 1 })).map(([one, more]) => [one, ...more]),
    pieces: fc.array(piece, { minLength: 1, maxLength: kinds }),
    leastOffcut: option(length(100, 800)),
  });
};

/** Sheets of about 1000 × 700, and pieces from a tenth of that to more than a half; the first stock is as with bars. */
export const anySheets = ({ kinds, stocks, copies, everything }: Wanted): fc.Arbitrary<SheetProblem> => {
  const all = everything ?? false;
  const piece: fc.Arbitrary<SheetPiece> = fc.record({
    length: length(80, all ? 1000 : 750),
    width: length(60, all ? 700 : 500),
    quantity: fc.integer({ min: 1, max: copies }),
    turnable: option(fc.boolean()),
    together: all ? SET : fc.constant(undefined),
  });
  const other = fc.record({
    length: length(200, 1200),
    width: length(150, 900),
    price: halves(0, 40),
    count: option(fc.integer({ min: 0, max: 3 })),
    trim: all ? option(TRIM) : fc.constant(undefined),
    offcut: fc.constant(undefined),
  });
  const first = fc.record({
    length: length(800, 1200),
    width: length(540, 800),
    price: halves(1, 40),
    count: all ? option(fc.integer({ min: 1, max: 4 })) : fc.constant(undefined),
  });
  return fc.record({
    kind: fc.constant('sheets' as const),
    kerf: KERF,
    trim: TRIM,
    stages: fc.constantFrom(undefined, undefined, 2, 3, 4),
    trimsFree: option(fc.boolean()),
    longestCut: all ? option(length(400, 1300)) : fc.constant(undefined),
    stock: fc.tuple(first, fc.array(other, { maxLength: stocks - 1 })).map(([one, more]) => [one, ...more]),
    pieces: fc.array(piece, { minLength: 1, maxLength: kinds }),
    leastOffcut: option(fc.record({ length: length(100, 500), width: length(50, 200) })),
  });
};
