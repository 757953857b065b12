import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { startBars } from '../../../src/cutting/bars';
import { quickest } from '../../../src/cutting/bars/first';
import { fullBars } from '../../../src/cutting/bars/full';
import { fillTable } from '../../../src/cutting/bars/full/fill-table';
import { fillAt, fillsWithin, listFills, WIDTH } from '../../../src/cutting/bars/full/fills';
import { type Ledger, ledgerOf } from '../../../src/cutting/bars/ledger';
import { taskOf } from '../../../src/cutting/bars/task';
import { type LpSolver, loadLp } from '../../../src/cutting/lp';
import type { BarPlan } from '../../../src/vocabulary/cut-plan';
import type { BarProblem } from '../../../src/vocabulary/cut-problem';
import { SEED } from '../../base/seed';
import { faultsOf } from './check';
import { evenBars } from './even';

let lp: LpSolver;
beforeAll(async () => {
  lp = await loadLp();
});

const CAPACITY = 40;

/** Sizes that fall, and how many are left of each. */
const anyLeft = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 1, max: CAPACITY }), fc.integer({ min: 0, max: 3 })), {
    selector: ([size]) => size,
    minLength: 1,
    maxLength: 8,
  })
  .map((kinds) => [...kinds].sort((a, b) => b[0] - a[0]))
  .map((kinds) => ({ sizes: kinds.map(([size]) => size), left: kinds.map(([, n]) => n) }));

/** Every choice of pieces that comes to the capacity, by trying all. */
function allFills(sizes: readonly number[], left: readonly number[], kind = 0, room = CAPACITY): number[][] {
  if (room === 0) return [[]];
  if (kind === sizes.length) return [];
  const fills: number[][] = [];
  for (let n = 0; n <= left[kind] && n * sizes[kind] <= room; n++)
    for (const rest of allFills(sizes, left, kind + 1, room - n * sizes[kind]))
      fills.push([...Array.from({ length: n }, () => kind), ...rest]);
  return fills;
}

function ended<T>(way: Generator<void, T>): T {
  for (;;) {
    const { done, value } = way.next();
    if (done) return value;
  }
}

const listed = (fills: Uint16Array): string[] =>
  Array.from({ length: fills.length / WIDTH }, (_, i) => fillAt(fills, i * WIDTH).join()).sort();

const keys = (fills: readonly (readonly number[])[]): string[] => fills.map((fill) => fill.join()).sort();

/** The plan after so many steps, or at the end. */
function bestOf(problem: BarProblem, steps: number): BarPlan {
  const search = startBars(problem, { seed: 1, lp });
  for (let n = 0; n < steps && search.step(); n++);
  search.dispose();
  return search.best;
}

describe(`full bars (seed ${SEED})`, () => {
  it('of up to four pieces are all listed, once each; and those that what is left allows are kept', () => {
    fc.assert(
      fc.property(anyLeft, fc.infiniteStream(fc.integer({ min: 0, max: 3 })), ({ sizes, left }, less) => {
        const all = ended(listFills(sizes, left, CAPACITY, 1e6));
        expect(listed(all)).toEqual(keys(allFills(sizes, left).filter((fill) => fill.length <= WIDTH)));
        const after = left.map((n) => Math.min(n, less.next().value));
        const then = allFills(sizes, after).filter((fill) => fill.length <= WIDTH);
        expect(listed(fillsWithin(all, after))).toEqual(keys(then));
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('that are worth the most are found by table, whatever the prices', () => {
    fc.assert(
      fc.property(anyLeft, fc.infiniteStream(fc.integer({ min: -20, max: 20 })), ({ sizes, left }, price) => {
        const values = sizes.map(() => price.next().value);
        const worth = (fill: readonly number[]): number => fill.reduce((sum, kind) => sum + values[kind], 0);
        const all = allFills(sizes, left);
        const found = fillTable(sizes, CAPACITY)(values, left);
        const known = new Set(keys(all));
        expect(found.every((fill) => known.has(fill.join()))).toBe(true);
        const most = all.reduce((best, fill) => Math.max(best, worth(fill)), 0);
        expect(found.length === 0 ? 0 : worth(found[0])).toBe(most);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('tell only of whole ways of cutting: every piece once, no bar overfull, and proven only without any waste', () => {
    fc.assert(
      fc.property(
        fc.nat(1e6),
        fc.integer({ min: 2, max: 14 }),
        fc.integer({ min: 60, max: 900 }),
        (seed, bars, length) => {
          const problem = evenBars(seed, bars, length, 3);
          const task = taskOf(problem);
          const ledger = ledgerOf(task, quickest(task));
          ended(fullBars(task, ledger, lp, seed));
          const { bars: cut, missing } = ledger.best;
          expect(missing.every((n) => n === 0)).toBe(true);
          const left = task.kinds.map(({ copies }) => copies.length);
          for (const { times } of cut) for (const [kind, n] of times) left[kind] -= n;
          expect(left.every((n) => n === 0)).toBe(true);
          for (const { times } of cut)
            expect(times.reduce((sum, [kind, n]) => sum + n * task.kinds[kind].size, 0)).toBeLessThanOrEqual(length);
          expect(ledger.done()).toBe(cut.length === bars);
        },
      ),
      { seed: SEED, numRuns: 25 },
    );
  });

  it('are in every best way of cutting where it comes out even, and the whole search finds it', () => {
    fc.assert(
      fc.property(fc.nat(1e6), fc.integer({ min: 2, max: 9 }), (seed, bars) => {
        const problem = evenBars(seed, bars, 400, 2);
        const best = bestOf(problem, 2000);
        expect(faultsOf(problem, best)).toEqual([]);
        expect(best).toMatchObject({ cost: bars, proven: true });
        expect(bestOf(problem, 2000)).toEqual(best);
      }),
      { seed: SEED, numRuns: 25 },
    );
  });

  it('are found for 202 pieces that came from 65 bars', () => {
    // Without looking for full bars it takes 285 steps; with it, 67.
    const problem = evenBars(8, 65, 2400, 7);
    const best = bestOf(problem, 150);
    expect(faultsOf(problem, best)).toEqual([]);
    expect(best).toMatchObject({ cost: 65, proven: true });
  });

  /** Whatever is offered holds every piece once, in so many bars. */
  function offersWhole(capacity: number, quantities: ReadonlyMap<number, number>, number: number, seed: number): void {
    const pieces = [...quantities].map(([length, quantity]) => ({ length, quantity }));
    const task = taskOf({ kind: 'bars', kerf: 0, trim: 0, stock: [{ length: capacity, price: 1 }], pieces });
    const every = task.kinds.map(({ copies }) => copies.length);
    const ledger: Ledger = {
      ...ledgerOf(task, quickest(task)),
      below: () => Number.POSITIVE_INFINITY,
      offer({ bars }) {
        const left = [...every];
        for (const { times } of bars) for (const [kind, n] of times) left[kind] -= n;
        expect(left.every((n) => n === 0)).toBe(true);
        expect(bars).toHaveLength(number);
      },
    };
    ended(fullBars(task, ledger, lp, seed));
  }

  it('are not chosen oftener than there are pieces for all of them', () => {
    // Fills of which each had pieces enough, and together they had not.
    const told = '1×2 5×2 17×3 23×1 29×1 10×4 2×2 3×2 4×2 8×1 31×1 25×1 11×1 7×2 13×3 6×2 18×2 14×2 16×1 21×1';
    offersWhole(46, new Map(told.split(' ').map((one) => one.split('×').map(Number) as [number, number])), 9, 2202);
  });

  it('are offered with every piece once, however poor the first plan was', () => {
    const cutBar = fc.record({
      capacity: fc.integer({ min: 8, max: 48 }),
      cuts: fc.array(fc.array(fc.double({ min: 0, max: 0.7, noNaN: true }), { minLength: 1, maxLength: 3 }), {
        minLength: 2,
        maxLength: 10,
      }),
    });
    fc.assert(
      fc.property(cutBar, fc.nat(1000), ({ capacity, cuts }, seed) => {
        const quantities = new Map<number, number>();
        const put = (length: number): void => void quantities.set(length, (quantities.get(length) ?? 0) + 1);
        for (const shares of cuts) {
          let room = capacity;
          for (const share of shares) {
            const length = Math.min(room - 1, 1 + Math.floor(share * room));
            if (length < 1) continue;
            put(length);
            room -= length;
          }
          put(room);
        }
        offersWhole(capacity, quantities, cuts.length, seed);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('are not where pieces come out even but cannot lie so', () => {
    const problem: BarProblem = {
      kind: 'bars',
      kerf: 0,
      trim: 0,
      stock: [{ length: 1000, price: 1 }],
      pieces: [{ length: 600, quantity: 5 }],
    };
    expect(bestOf(problem, 2000)).toMatchObject({ cost: 5, bound: 5, proven: true });
  });
});
