import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutsOf } from '../../../src/cutting/set-ups/index';
import type { SheetProblem } from '../../../src/vocabulary/cut-problem';
import { SEED } from '../../base/seed';
import { verify } from '../verifier/index';
import { stagesOf } from '../verifier/tree';
import { anySheets } from './random-plans';
import { replay, sorted } from './replayed';
import { left, on, plan, problem } from './worked';

describe('the cuts of a sheet', () => {
  it('worked by hand: trims, three rips, cross-cuts by their stop, a last rip', () => {
    expect(verify(problem, plan)).toEqual([]);
    const [{ cuts }] = cutsOf(problem, plan);
    const told = cuts.map(({ number, what, fence, against, line }) => [
      number,
      what,
      fence,
      `${against.side} ${against.edge}`,
      [line.x1, line.y1, line.x2, line.y2],
    ]);
    expect(told).toEqual([
      [1, 'trim', undefined, 'high bought', [0, 10, 2440, 10]],
      [2, 'trim', 1200, 'low trimmed', [0, 1210, 2440, 1210]],
      [3, 'trim', undefined, 'high bought', [10, 10, 10, 1210]],
      [4, 'trim', 2420, 'low trimmed', [2430, 10, 2430, 1210]],
      [5, 'rip', 400, 'low trimmed', [10, 410, 2430, 410]],
      [6, 'rip', 400, 'low cut', [10, 814, 2430, 814]],
      [7, 'rip', 300, 'low cut', [10, 1118, 2430, 1118]],
      [8, 'cross-cut', 1200, 'low trimmed', [1210, 414, 1210, 814]],
      [9, 'cross-cut', 1000, 'low trimmed', [1010, 818, 1010, 1118]],
      [10, 'cross-cut', 800, 'low trimmed', [810, 10, 810, 410]],
      [11, 'cross-cut', 800, 'low cut', [1614, 10, 1614, 410]],
      [12, 'cross-cut', 800, 'low cut', [2418, 10, 2418, 410]],
      [13, 'cross-cut', 700, 'low cut', [1714, 818, 1714, 1118]],
      [14, 'cross-cut', 600, 'low cut', [1814, 414, 1814, 814]],
      [15, 'rip', 280, 'low cut', [1014, 1098, 1714, 1098]],
    ]);
  });

  it('say what comes off, and what is left with the last', () => {
    const [{ cuts }] = cutsOf(problem, plan);
    const kinds = (n: number): readonly string[] => cuts[n - 1].frees.map(({ kind }) => kind);
    expect([1, 2, 3].map(kinds)).toEqual([['waste'], ['waste'], ['waste']]);
    expect(kinds(4)).toEqual(['waste', 'panel']);
    expect(kinds(5)).toEqual(['panel']);
    expect(kinds(7)).toEqual(['panel', 'left']);
    expect(kinds(11)).toEqual(['piece']);
    expect(kinds(12)).toEqual(['piece', 'left']);
    expect(kinds(13)).toEqual(['panel', 'left']);
    expect(kinds(15)).toEqual(['piece', 'left']);
    const [first] = cuts;
    expect([first.takes, first.length, first.kerf]).toEqual([10, 2440, { x: 0, y: 6, length: 2440, width: 4 }]);
  });

  it('set what is wanted, not what is left over before it', () => {
    const one: SheetProblem = { ...problem, pieces: [{ length: 1000, width: 1200, quantity: 1 }] };
    const sheet = { kind: 'cut', x: 10, y: 10, length: 2420, width: 1200, way: 'across' } as const;
    const parts = [left(10, 10, 1416, 1200), on(0, 1430, 10, 1000, 1200)];
    const moved = { stock: 0, tree: { ...sheet, parts }, pieces: [on(0, 1430, 10, 1000, 1200)], stages: 1 };
    const [{ cuts }] = cutsOf(one, { ...plan, sheets: [moved] });
    expect(verify(one, { ...plan, sheets: [moved] })).toEqual([]);
    expect(cuts.at(-1)).toMatchObject({
      fence: 1000,
      against: { side: 'high', edge: 'trimmed' },
      line: { x1: 1430, x2: 1430 },
      kerf: { x: 1426, length: 4 },
    });
    expect(cuts.at(-1)?.frees.map(({ kind }) => kind)).toEqual(['left', 'piece']);
  });

  it('longer than the saw cuts are marked', () => {
    const [{ cuts }] = cutsOf({ ...problem, longestCut: 1300 }, plan);
    expect(cuts.filter(({ tooLong }) => tooLong).map(({ number }) => number)).toEqual([1, 2, 5, 6, 7]);
    expect(cutsOf(problem, plan)[0].cuts.some(({ tooLong }) => tooLong)).toBe(false);
  });

  it('of a piece as large as the sheet are none', () => {
    const whole = on(0, 0, 0, 2440, 1220);
    const one: SheetProblem = { ...problem, trim: 0, pieces: [{ length: 2440, width: 1220, quantity: 1 }] };
    const sheets = [{ stock: 0, tree: whole, pieces: [whole], stages: 0 }];
    expect(cutsOf(one, { ...plan, sheets })).toEqual([
      { kind: 'sheet', stock: 0, cuts: [], whole: { kind: 'piece', piece: whole } },
    ]);
  });

  it(`made one after the other give exactly the pieces, each once, and turn the sheet once a stage (SEED=${SEED})`, () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 31 - 1 }), (seed) => {
        const some = anySheets(seed);
        expect(verify(some.problem, some.plan)).toEqual([]);
        cutsOf(some.problem, some.plan).forEach(({ cuts, whole }, i) => {
          const free = replay(some.problem, some.plan.sheets[i].stock, cuts);
          const all = whole?.kind === 'piece' ? [whole.piece, ...free] : free;
          expect(sorted(all)).toEqual(sorted(some.plan.sheets[i].pieces));
          expect(cuts.map(({ number }) => number)).toEqual(cuts.map((_, n) => n + 1));
          const turns = cuts.filter(({ level, way }, n) => level > 1 && way !== cuts[n - 1].way).length;
          expect(turns).toBeLessThanOrEqual(stagesOf(some.plan.sheets[i].tree, false));
        });
      }),
      { numRuns: 25, seed: SEED },
    );
  });
});
