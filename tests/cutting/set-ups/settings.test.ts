import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstBars } from '../../../src/cutting/bars/index';
import { cutsOf, reorderForSettings, reorderTogether, settingsOf } from '../../../src/cutting/set-ups/index';
import { fewest, schedule } from '../../../src/cutting/set-ups/schedule';
import { movesOf, needsOf, type Task, together, type Work } from '../../../src/cutting/set-ups/work';
import type { AnyCutPlan, CutBatch, CutTree } from '../../../src/vocabulary/cut-plan';
import type { BarProblem, CutProblem, SheetProblem } from '../../../src/vocabulary/cut-problem';
import type { SawSetUp, Settings } from '../../../src/vocabulary/set-up';
import { SEED } from '../../base/seed';
import { planned } from '../by-hand/planned';
import { verify } from '../verifier/index';
import { anySheets, chance } from './random-plans';
import { replay } from './replayed';
import { on, plan as worked, problem as workedProblem } from './worked';

/** The tests needn't look long for a better order. */
const QUICK = { patience: 5000 };
const seeds = fc.integer({ min: 0, max: 2 ** 31 - 1 });
const batchOf = (problem: CutProblem, id = 'b'): CutBatch => ({ id, name: id, problem, marks: [], from: [] });
const alone = (problem: CutProblem, plan: AnyCutPlan): Settings =>
  settingsOf([{ batch: batchOf(problem), plan }], [], QUICK);

/** Bars of few lengths, some mitred, that may be turned in one way or another. */
function anyBars(seed: number): BarProblem {
  const pick = chance(seed);
  const ends = [
    undefined,
    [
      [1, 0],
      [-1, 0],
    ],
    [
      [0, 0],
      [0.5, 0],
    ],
    [
      [0, 0.3],
      [0, 0],
    ],
  ] as const;
  const turns = [[], ['swung'], ['rolled', 'swung', 'tumbled']] as const;
  return {
    kind: 'bars',
    kerf: 3,
    trim: [0, 10][pick(2)],
    section: { width: 40, thickness: 15, turns: turns[pick(3)] },
    stock: [
      { length: 2400, price: 5 },
      { length: 3600, price: 7 },
    ],
    pieces: Array.from({ length: 2 + pick(5) }, () => ({
      length: 200 + 50 * pick(12),
      quantity: 1 + pick(4),
      ends: ends[pick(4)],
    })),
  };
}

/** The cuts of all set-ups in turn. */
const inOrder = (setUps: readonly SawSetUp[]) => setUps.flatMap(({ cuts, at }) => cuts.map((cut) => ({ ...cut, at })));
const movesIn = (setUps: readonly SawSetUp[]): number => setUps.reduce((sum, { move }) => sum + move.length, 0);

function leftIn(tree: CutTree): readonly string[] {
  if (tree.kind === 'piece') return [];
  return tree.kind === 'cut' ? tree.parts.flatMap(leftIn) : [`${tree.length.toFixed(3)} ${tree.width.toFixed(3)}`];
}

describe('cuts gathered by setting', () => {
  it(`can be worked in that order, each once, the saw set as each needs it, and seldomer than as drawn (SEED=${SEED})`, () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const all = [anySheets(seed, 2), anySheets(seed + 1, 1)];
        const batches = all.map(({ problem, plan }, i) => ({ batch: batchOf(problem, `b${i}`), plan }));
        const { sheets, moves, movesAsDrawn } = settingsOf(batches, [], QUICK);
        expect(moves).toBeLessThanOrEqual(movesAsDrawn);
        expect(movesIn(sheets)).toBe(moves);
        all.forEach(({ problem, plan }, i) => {
          const lists = cutsOf(problem, plan);
          lists.forEach(({ cuts }, index) => {
            const own = inOrder(sheets).filter((one) => one.batch === `b${i}` && one.index === index);
            const made = own.map(({ cut, at }) => {
              const { fence, way } = cuts[cut - 1];
              if (fence !== undefined)
                expect(at[way === 'across' ? 'cross-cut stop' : 'rip fence']).toBeCloseTo(fence, 2);
              return cuts[cut - 1];
            });
            expect(own.map(({ cut }) => cut).sort((a, b) => a - b)).toEqual(cuts.map(({ number }) => number));
            replay(problem, plan.sheets[index].stock, made);
          });
        });
      }),
      { numRuns: 12, seed: SEED },
    );
  });

  it(`of bars follow one another on each bar (SEED=${SEED})`, () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const problem = anyBars(seed);
        const plan = firstBars(problem);
        expect(verify(problem, plan)).toEqual([]);
        const lists = cutsOf(problem, plan);
        const { lengths, moves, movesAsDrawn } = alone(problem, plan);
        expect(moves).toBeLessThanOrEqual(movesAsDrawn);
        expect(movesIn(lengths)).toBe(moves);
        lists.forEach(({ cuts, whole }, index) => {
          const own = inOrder(lengths).filter((one) => one.index === index);
          expect(own.map(({ cut }) => cut)).toEqual(cuts.map(({ number }) => number));
          own.forEach(({ cut, at }) => {
            const { stop, mitreDeg, tiltDeg } = cuts[cut - 1];
            if (stop !== undefined) expect(at['length stop']).toBeCloseTo(stop, 2);
            expect([at.mitre, at.tilt].map((deg) => deg ?? 90)).toEqual(
              [mitreDeg, tiltDeg].map((deg) => expect.closeTo(deg, 1)),
            );
          });
          const free = cuts.flatMap(({ frees }) => frees.flatMap((one) => (one.kind === 'piece' ? [one.piece] : [])));
          expect([...(whole ? [whole] : []), ...free]).toEqual(plan.bars[index].pieces);
        });
      }),
      { numRuns: 30, seed: SEED },
    );
  });

  it('worked by hand: two sheets alike are set as often as one', () => {
    // One sheet as drawn: fence 1200, stop 2420, fence 400 and 300, stop 800, 1200, 600, 1000, 700, fence 280: 10. The second begins anew.
    const two = { ...worked, sheets: [worked.sheets[0], worked.sheets[0]] };
    const { moves, movesAsDrawn } = alone(workedProblem, two);
    expect([moves, movesAsDrawn]).toEqual([10, 20]);
  });

  it('are named by the marks of what they cut off', () => {
    const problem: BarProblem = {
      kind: 'bars',
      kerf: 3,
      trim: 10,
      stock: [{ length: 2400, price: 5 }],
      pieces: [
        { length: 700, quantity: 2 },
        { length: 120, quantity: 1 },
      ],
    };
    const batch = { ...batchOf(problem), marks: [[['A-ST1'], ['A-ST2']], [['A-NG1']]] };
    const { lengths } = settingsOf([{ batch, plan: firstBars(problem) }]);
    const marked = lengths.map(({ at, cuts, care }) => [
      at['length stop'],
      cuts.flatMap(({ marks }) => marks),
      care.length,
    ]);
    // The rough ends first, and the far end by eye last, though nothing is moved for it; of a short piece there is a word of care.
    expect(marked).toEqual([
      [undefined, [], 0],
      [700, ['A-ST1', 'A-ST2'], 0],
      [120, ['A-NG1'], 1],
      [undefined, [], 0],
    ]);
  });
});

describe('plans in another order', () => {
  it('have strips where the fence wants them', () => {
    // 300 then 200 off one sheet, 200 then 300 off the other: three settings; in one order on both, two.
    const two: SheetProblem = {
      kind: 'sheets',
      kerf: 0,
      trim: 0,
      stock: [{ length: 1000, width: 600, price: 1 }],
      pieces: [
        { length: 1000, width: 300, quantity: 2 },
        { length: 1000, width: 200, quantity: 2 },
      ],
    };
    const strips = [
      [on(0, 0, 0, 1000, 300), on(1, 0, 300, 1000, 200)],
      [on(1, 0, 0, 1000, 200), on(0, 0, 200, 1000, 300)],
    ];
    const plan = planned(two, strips);
    const after = reorderForSettings(two, plan);
    expect(verify(two, after)).toEqual([]);
    expect([alone(two, plan).moves, alone(two, after).moves]).toEqual([3, 2]);
    expect(reorderForSettings(two, after)).toBe(after);
  });

  it(`cost, hold and leave the same, and are set no oftener (SEED=${SEED})`, () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { problem, plan } = anySheets(seed, 2);
        const [{ plan: after }] = reorderTogether([{ batch: batchOf(problem), plan }], QUICK.patience);
        if (after.kind !== 'sheets') throw new Error('another kind');
        expect(verify(problem, after)).toEqual([]);
        expect(alone(problem, after).moves).toBeLessThanOrEqual(alone(problem, plan).moves);
        after.sheets.forEach(({ tree, stages, pieces }, i) => {
          const before = plan.sheets[i];
          expect(stages).toBe(before.stages);
          expect([...leftIn(tree)].sort()).toEqual([...leftIn(before.tree)].sort());
          expect(pieces.map(({ piece }) => piece).sort()).toEqual(before.pieces.map(({ piece }) => piece).sort());
        });
        const bars = anyBars(seed);
        const first = firstBars(bars);
        const [{ plan: turned }] = reorderTogether([{ batch: batchOf(bars), plan: first }], QUICK.patience);
        expect(verify(bars, turned)).toEqual([]);
        expect(turned.cost).toBe(first.cost);
        expect(alone(bars, turned).moves).toBeLessThanOrEqual(alone(bars, first).moves);
      }),
      { numRuns: 12, seed: SEED },
    );
  });
});

describe('the order of set-ups', () => {
  /** Lines of few cuts of few settings, one opened by the other. */
  function anyWork(seed: number): Work {
    const pick = chance(seed);
    const line = (n: number): Work => ({
      tasks: Array.from({ length: n }, (): Task => ({ needs: needsOf({ 'rip fence': pick(4) }), opens: [] })),
      lines: [{ tasks: Array.from({ length: n }, (_, i) => i), opens: [] }],
      start: [0],
    });
    const { tasks, lines } = together([line(2), line(1 + pick(3)), line(1 + pick(3))]);
    // The last line begins when the first task is done.
    return { tasks: tasks.map((task, i) => (i === 0 ? { ...task, opens: [2] } : task)), lines, start: [0, 1] };
  }

  /** The least moves of any order, by trying all. */
  function least(work: Work): number {
    let best = Number.POSITIVE_INFINITY;
    const go = (order: readonly number[], open: readonly number[], place: readonly number[]): void => {
      if (order.length === work.tasks.length) best = Math.min(best, movesOf(work, order));
      for (const l of open) {
        const task = work.lines[l].tasks[place[l]];
        if (task === undefined) continue;
        go(
          [...order, task],
          [...open, ...work.tasks[task].opens],
          place.map((at, i) => (i === l ? at + 1 : at)),
        );
      }
    };
    go(
      [],
      work.start,
      work.lines.map(() => 0),
    );
    return best;
  }

  it(`is the best or one move from it on small work, and never below what must be (SEED=${SEED})`, () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const work = anyWork(seed);
        const { moves, order } = schedule(work);
        const best = least(work);
        expect(movesOf(work, order)).toBe(moves);
        expect(best).toBeGreaterThanOrEqual(fewest(work));
        expect(moves).toBeGreaterThanOrEqual(best);
        expect(moves).toBeLessThanOrEqual(best + 1);
      }),
      { numRuns: 60, seed: SEED },
    );
  });
});
