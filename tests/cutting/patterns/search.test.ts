import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type LpSolver, loadLp } from '../../../src/cutting/lp';
import { startPatterns } from '../../../src/cutting/patterns';
import type { Cell, Cells } from '../../../src/cutting/sheets/cell';
import { type Scaled, scaled } from '../../../src/cutting/sheets/scaled';
import { stagesOf, tidied } from '../../../src/cutting/sheets/tidy';
import { toPlan } from '../../../src/cutting/sheets/to-plan';
import type { SheetProblem } from '../../../src/vocabulary/cut-problem';
import { SEED } from '../../base/seed';
import { anyCutUp, anySheets } from './random-sheets';

let lp: LpSolver;
beforeAll(async () => {
  lp = await loadLp();
});

/** So many steps, and no more than so many once there is a plan. */
function searched(problem: SheetProblem, steps: number, after = steps, seed = 1) {
  const to = scaled(problem);
  const search = startPatterns(to, { lp, seed });
  const costs: number[] = [];
  for (let i = 0, more = after; i < steps && more > 0 && search.step(); i += 1) {
    costs.push(search.cost);
    if (search.best) more -= 1;
  }
  const { best, bound, cost } = search;
  search.dispose();
  return { to, best, bound, cost, costs };
}

/** Everything that is wrong with a cell as it is cut. */
function wrongIn(cell: Cell, to: Scaled): readonly string[] {
  if (cell.kind === 'left') return [];
  if (cell.kind === 'piece') {
    const { length, width, turns } = to.kinds[cell.piece];
    const [l, w] = cell.turned ? [width, length] : [length, width];
    return [
      ...(l !== cell.length || w !== cell.width ? [`piece ${cell.piece} is not ${cell.length} × ${cell.width}`] : []),
      ...(cell.turned && !turns ? [`piece ${cell.piece} may not turn`] : []),
    ];
  }
  const across = cell.way === 'across';
  const sides = cell.parts.map((p) => (across ? p.length : p.width));
  const room = across ? cell.length : cell.width;
  const cutLong = across ? cell.width : cell.length;
  return [
    ...(sides.reduce((a, b) => a + b, 0) > room ? ['parts are longer than what they are cut from'] : []),
    ...(cell.parts.some((p) => (across ? p.width : p.length) !== cutLong) ? ['a cut does not reach both edges'] : []),
    ...(cutLong > to.longestCut ? [`a cut of ${cutLong} is too long`] : []),
    ...cell.parts.flatMap((p) => wrongIn(p, to)),
  ];
}

function wrongWith(cells: Cells, to: Scaled): readonly string[] {
  const placed = to.kinds.map(() => 0);
  const used = to.sheets.map(() => 0);
  const count = (cell: Cell): void => {
    if (cell.kind === 'piece') placed[cell.piece] += 1;
    else if (cell.kind === 'cut') cell.parts.forEach(count);
  };
  const wrong = cells.flatMap(({ sheet, cell }) => {
    const tidy = tidied(cell, to);
    count(cell);
    used[sheet] += 1;
    const { length, width } = to.sheets[sheet];
    const stages = stagesOf(tidy, to.trimsFree);
    return [
      ...(tidy.length > length || tidy.width > width ? ['larger than the sheet'] : []),
      ...(stages > to.stages ? [`${stages} stages`] : []),
      ...wrongIn(tidy, to),
    ];
  });
  const more = (name: string, has: number, wanted: number): readonly string[] => [`${has} of ${name}, not ${wanted}`];
  return [
    ...wrong,
    ...to.kinds.flatMap(({ quantity }, k) => (placed[k] === quantity ? [] : more(`kind ${k}`, placed[k], quantity))),
    ...to.sheets.flatMap(({ count: there }, s) => (used[s] <= there ? [] : more(`sheet ${s}`, used[s], there))),
  ];
}

describe(`search among patterns (seed ${SEED})`, () => {
  it('what it finds can be cut as the problem says, holds every piece, and costs no less than its bound', () => {
    let found = 0;
    let limited = 0;
    fc.assert(
      fc.property(anySheets({ sizes: 90, kinds: 6, quantity: 5 }), (problem) => {
        const { to, best, bound, cost, costs } = searched(problem, 60, 4);
        expect(costs).toEqual([...costs].sort((a, b) => b - a));
        expect(bound).toBeLessThanOrEqual(cost);
        if (!best) return;
        found += 1;
        if (problem.stages !== undefined) limited += 1;
        expect(wrongWith(best, to)).toEqual([]);
        expect(best.reduce((sum, { sheet }) => sum + to.sheets[sheet].price, 0)).toBeCloseTo(cost, 6);
        expect(
          toPlan(to, best, bound).unplaced.filter(
            ({ why }) => why === 'no stock left' || why === 'its set fits no stock',
          ),
        ).toEqual([]);
      }),
      { seed: SEED, numRuns: 30 },
    );
    expect(found).toBeGreaterThan(7);
    expect(limited).toBeGreaterThan(1);
  });

  it('two sheets cut up at random: seldom more than one more is needed, and often it is known that no fewer would do', () => {
    const cutUp = fc.sample(fc.tuple(anyCutUp(240, 120, 3), anyCutUp(240, 120, 3)), { seed: SEED, numRuns: 10 });
    let proven = 0;
    for (const cut of cutUp) {
      const problem: SheetProblem = {
        kind: 'sheets',
        kerf: 3,
        trim: 5,
        // A kerf for each piece, less the one at the edge.
        stock: [{ length: 240 + 7, width: 120 + 7, price: 10 }],
        pieces: cut
          .flat()
          .map(([l, w]) => ({ length: l - 3, width: w - 3, quantity: 1, turnable: true }))
          .filter(({ length, width }) => length > 0 && width > 0),
      };
      const { to, best, bound, cost } = searched(problem, 120, 3);
      expect(bound).toBeLessThanOrEqual(20);
      expect(best && wrongWith(best, to)).toEqual([]);
      expect(cost).toBeLessThanOrEqual(30);
      if (bound === cost) proven += 1;
    }
    expect(proven).toBeGreaterThan(2);
  });

  it('goes the same way every time, whatever the order of the lists', () => {
    fc.assert(
      fc.property(anySheets({ sizes: 120, kinds: 8, quantity: 4 }), (problem) => {
        const once = searched(problem, 12, 12, 7);
        const again = searched({ ...problem, pieces: [...problem.pieces].reverse() }, 12, 12, 7);
        expect([again.costs, again.best, again.bound]).toEqual([once.costs, once.best, once.bound]);
      }),
      { seed: SEED, numRuns: 10 },
    );
  });

  it('takes what it is offered when that is cheaper, and only when it is whole', () => {
    const problem: SheetProblem = {
      kind: 'sheets',
      kerf: 0,
      trim: 0,
      stages: 1,
      stock: [{ length: 100, width: 50, price: 4 }],
      pieces: [{ length: 50, width: 50, quantity: 2 }],
    };
    const to = scaled(problem);
    const search = startPatterns(to, { lp, seed: 1 });
    const piece: Cell = { kind: 'piece', piece: 0, turned: false, length: 50, width: 50 };
    const one: Cell = { kind: 'cut', way: 'across', length: 100, width: 50, parts: [piece] };
    search.offer([{ sheet: 0, cell: one }]);
    expect(search.best).toBeUndefined();
    search.offer([{ sheet: 0, cell: one }, { sheet: 0, cell: one }]); // biome-ignore format: one line
    expect(search.cost).toBe(8);
    search.offer([{ sheet: 0, cell: { ...one, parts: [piece, piece] } }]);
    expect(search.cost).toBe(4);
    expect(search.bound).toBe(4);
    expect(search.step()).toBe(false);
    search.dispose();
  });

  it('the check can fail', () => {
    const to = scaled({
      kind: 'sheets',
      kerf: 0,
      trim: 0,
      stages: 2,
      longestCut: 60,
      stock: [{ length: 100, width: 50, price: 4, count: 1 }],
      pieces: [{ length: 40, width: 20, quantity: 2 }],
    });
    const piece: Cell = { kind: 'piece', piece: 0, turned: true, length: 20, width: 40 };
    const cell: Cell = { kind: 'cut', way: 'along', length: 100, width: 50, parts: [piece] };
    const wrong = wrongWith([{ sheet: 0, cell }, { sheet: 0, cell }, { sheet: 0, cell }], to); // biome-ignore format: one line
    expect(new Set(wrong)).toEqual(
      new Set([
        'a cut does not reach both edges',
        'a cut of 100 is too long',
        'piece 0 may not turn',
        '3 of kind 0, not 2',
        '3 of sheet 0, not 1',
      ]),
    );
  });
});
