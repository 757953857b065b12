import { describe, expect, it } from 'vitest';
import type { AnyCutPlan, BarPlan, SheetPlan } from '../../../src/vocabulary/cut-plan';
import type { BarProblem, CutProblem, SheetProblem } from '../../../src/vocabulary/cut-problem';
import { verify } from './index';
import { BAR_PLAN, BARS, SHEET_PLAN, SHEETS } from './planted';

/** What is written where: paths into `{ problem, plan }`. `undefined` takes away; a function makes the new value from the old. */
type Edits = Readonly<Record<string, unknown>>;
type Planted = readonly [name: string, edits: Edits, found: RegExp];

interface Pair {
  readonly problem: CutProblem;
  readonly plan: AnyCutPlan;
}

/** The same with the faults in it. Copied by way of JSON, so that nothing is the same thing in two places. */
function planted(good: Pair, edits: Edits): Pair {
  const copy = JSON.parse(JSON.stringify(good)) as Pair;
  for (const [path, value] of Object.entries(edits)) {
    const steps = path.split('/');
    const last = steps.pop() ?? '';
    const inner = steps.reduce(
      (at, step) => at[step] as Record<string, unknown>,
      copy as unknown as Record<string, unknown>,
    );
    inner[last] = typeof value === 'function' ? value(inner[last]) : value;
  }
  return copy;
}

const reversed = (list: readonly unknown[]): unknown => [...list].reverse();
const shortened = (list: readonly unknown[]): unknown => list.slice(0, -1);
const twice = (list: readonly unknown[]): unknown => [...list, list.at(-1)];
const TREE = 'plan/sheets/0/tree';
const STRIP = `${TREE}/parts/0`;
const LISTED = 'plan/sheets/0/pieces';
const EMPTY = {
  stock: 0,
  pieces: [],
  stages: 0,
  tree: { kind: 'left', x: 5, y: 5, length: 990, width: 590, reusable: true },
};

const SHEET_FAULTS: readonly Planted[] = [
  ['a piece missing', { [LISTED]: shortened }, /piece 2: 0 placed and 0 not, of 1/],
  ['a piece not told', { 'plan/unplaced': [] }, /piece 3: 0 placed and 0 not, of 1/],
  ['a piece told twice', { 'plan/unplaced': twice }, /piece 3: 0 placed and 2 not, of 1/],
  ['a stranger', { 'plan/unplaced/0/piece': 9 }, /no piece 9/],
  ['an unknown stock', { 'plan/sheets/0/stock': 7 }, /no stock 7/],
  ['a number that is none', { 'plan/bound': Number.POSITIVE_INFINITY, 'plan/cost': Number.NaN }, /cost|bound/],
  ['a wrong cost', { 'plan/cost': 19 }, /cost is 20, not 19/],
  ['a bound above the cost', { 'plan/bound': 20.01 }, /above the cost/],
  ['a bound below nothing', { 'plan/bound': -1 }, /below nothing/],
  ['a proof that is none', { 'plan/proven': true }, /proven/],
  ['a miscount of stock', { 'plan/used/0/count': 2 }, /1 cut, 2 said/],
  ['more than there is', { 'problem/stock/0/count': 0 }, /there are 0/],
  ['a false excuse', { 'problem/pieces/3/length': 200 }, /not larger than stock 0/],
  ['stock left', { 'problem/pieces/3/length': 200, 'plan/unplaced/0/why': 'no stock left' }, /there is stock left/],
  ['too large for what is left', { 'plan/unplaced/0/why': 'no stock left' }, /is larger than any stock/],
  ['a set where none is', { 'plan/unplaced/0/why': 'its set fits no stock' }, /of no set/],
  ['an empty sheet', { 'plan/used/0/count': 2, 'plan/sheets/1': EMPTY }, /1 is paid for and gives nothing/],
  ['a set parted', { 'plan/used/0/count': 2, 'plan/sheets': twice }, /set 'doors' lies on 2/],
  ['another kerf', { 'problem/kerf': 4 }, /begins at 308, not at 309/],
  ['another trim', { 'problem/trim': 6 }, /not the sheet within its trimmed edges/],
  ['too much sawdust', { [`${STRIP}/parts`]: shortened }, /187 are left after the last part/],
  ['parts beyond', { [`${TREE}/width`]: 500 }, /reach beyond/],
  ['a part too short', { [`${STRIP}/length`]: 980 }, /does not span/],
  ['a part aside', { [`${STRIP}/x`]: 6 }, /does not span/],
  ['parts out of order', { [`${TREE}/parts`]: reversed }, /begins at 308, not at 5/],
  ['nothing parted', { [TREE]: (tree: object) => ({ ...tree, parts: [tree] }) }, /parts nothing/],
  ['a stage too many', { 'problem/stages': 2 }, /3 stages, 2 allowed/],
  ['stages miscounted', { 'plan/sheets/0/stages': 2 }, /3 stages, 2 said/],
  ['a cut too long', { 'problem/longestCut': 989 }, /a cut of 990, the longest is 989/],
  [
    'a piece across the grain',
    { 'problem/pieces/2/turnable': false, 'problem/pieces/3/turnable': undefined },
    /piece 2 lies across/,
  ],
  ['another size', { 'problem/pieces/0/width': 301 }, /another size/],
  ['a list that is not the tree', { [`${LISTED}/0/x`]: 5.01 }, /not the tree's/],
  ['pieces too close', { [`${LISTED}/1/x`]: 407.99 }, /pieces 0 and 0 are not a kerf apart/],
  ['a piece outside', { [`${LISTED}/0/x`]: 4.99 }, /outside the trimmed sheet/],
  [
    'a leftover called useful',
    { 'problem/leastOffcut': { length: 605, width: 100 } },
    /604 × 287 is said to be reusable/,
  ],
  ['a leftover called useless', { [`${STRIP}/parts/2/reusable`]: false }, /184 × 300 is said to be not reusable/],
  ['a leftover of nothing', { [`${STRIP}/parts/2/length`]: 0 }, /of no size/],
];

const BAR_FAULTS: readonly Planted[] = [
  ['a trapezoid too close', { 'plan/bars/0/pieces/1/at': 474.24 }, /apart, 4\.24\d+ needed/],
  ['a square kerf on a slant', { 'plan/bars/0/pieces/1/at': 473 }, /needed/],
  ['a trapezoid not turned', { 'plan/bars/0/pieces/1/turn': undefined }, /needed/],
  ['a turn that is not allowed', { 'plan/bars/0/pieces/1/turn': 'rolled' }, /may not be rolled/],
  ['no turn allowed', { 'problem/section/turns': ['tumbled'] }, /may not be swung/],
  ['square pieces too close', { 'plan/bars/1/pieces/1/at': 402.99 }, /apart, 3 needed/],
  ['pieces out of order', { 'plan/bars/1/pieces': reversed }, /needed/],
  ['a piece in the first trim', { 'problem/trim': 10.01 }, /begins in the trim/],
  ['a piece in the last trim', { 'plan/bars/1/pieces/1/at': 450.01 }, /ends in the trim/],
  ['another length', { 'plan/bars/1/pieces/0/length': 399 }, /is 399, not 400/],
  ['an offcut under the saw', { 'plan/bars/0/offcut/at': 1702 }, /free from 1703/],
  ['an offcut in the trim', { 'plan/bars/0/offcut/length': 688 }, /ends in the trim/],
  ['an offcut too short', { 'problem/leastOffcut': 700 }, /can't be used again/],
  ['an offcut not told', { 'plan/bars/0/offcut': undefined }, /an offcut of 687 is not told/],
  ['a set placed in part', { 'plan/bars/1/pieces': shortened }, /piece 3: 0 placed/],
  ['a stock used twice', { 'plan/bars': twice }, /2 cut, there are 1/],
];

/** Worked by hand: which turn lets a bevel nest with itself. */
const bevelled = (turn: 'rolled' | 'swung' | 'tumbled'): Pair => {
  const problem: BarProblem = {
    kind: 'bars',
    kerf: 0,
    trim: 0,
    section: { width: 40, thickness: 20, turns: ['rolled', 'swung', 'tumbled'] },
    stock: [{ length: 200, price: 1 }],
    // Both ends lean 45° out from the back, a trapezoid 100 long at the back and 60 on the face: two fill 180 when one shows its other side.
    pieces: [
      {
        length: 100,
        quantity: 2,
        ends: [
          [0, 1],
          [0, -1],
        ],
      },
    ],
  };
  const placed = [
    { piece: 0, at: 0, length: 100 },
    { piece: 0, at: 80, length: 100, turn },
  ];
  const plan: BarPlan = {
    kind: 'bars',
    cost: 1,
    bound: 1,
    proven: true,
    used: [{ stock: 0, count: 1 }],
    unplaced: [],
    bars: [{ stock: 0, pieces: placed }],
  };
  return { problem, plan };
};

const faultsOf = ({ problem, plan }: Pair): string => verify(problem, plan).join('; ');

describe('the verifier', () => {
  it('finds nothing wrong with plans worked by hand', () => {
    expect(verify(SHEETS, SHEET_PLAN)).toEqual([]);
    expect(verify(BARS, BAR_PLAN)).toEqual([]);
  });

  it('counts a last cut to size only where it must', () => {
    const free: SheetProblem = { ...SHEETS, trimsFree: true, stages: 2 };
    const [sheet] = SHEET_PLAN.sheets;
    expect(verify(free, SHEET_PLAN)).toEqual([]);
    expect(verify({ ...free, stages: 1 }, SHEET_PLAN)).toEqual(['sheet 0: 2 stages, 1 allowed']);
    expect(verify(free, { ...SHEET_PLAN, sheets: [{ ...sheet, stages: 2 }] })).toEqual(['sheet 0: 3 stages, 2 said']);
  });

  it('knows which turns change the face of a bar', () => {
    expect(faultsOf(bevelled('rolled'))).toBe('');
    expect(faultsOf(bevelled('tumbled'))).toBe('');
    // Swung it still lies on its back: long there as the other is.
    expect(faultsOf(bevelled('swung'))).toMatch(/-20 apart, 0 needed/);
  });

  it.each(SHEET_FAULTS)('finds in sheets %s', (_, edits, found) => {
    expect(faultsOf(planted({ problem: SHEETS, plan: SHEET_PLAN satisfies SheetPlan }, edits))).toMatch(found);
  });

  it.each(BAR_FAULTS)('finds in bars %s', (_, edits, found) => {
    expect(faultsOf(planted({ problem: BARS, plan: BAR_PLAN }, edits))).toMatch(found);
  });

  it('finds a set placed in part', () => {
    const rest = [...BAR_PLAN.unplaced, { piece: 3, quantity: 1, why: 'no stock left' as const }];
    const pair = planted({ problem: BARS, plan: BAR_PLAN }, { 'plan/bars/1/pieces': shortened, 'plan/unplaced': rest });
    expect(faultsOf(pair)).toContain("set 'pair' is placed in part");
  });

  it('refuses a plan of another kind', () => {
    const empty: BarPlan = { ...BAR_PLAN, bars: [], used: [], unplaced: [] };
    expect(verify(SHEETS, empty)).toEqual(['a plan of bars for a problem of sheets']);
  });
});
