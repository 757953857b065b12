import { describe, expect, it } from 'vitest';
import { changeWords } from '../../../app/cutting/changed';
import { freshCopies, marksInOrder, placesByMark } from '../../../app/cutting/copies';
import { lettered, scaleOf, worded } from '../../../app/cutting/lay';
import { fetchLines, jobTotal } from '../../../app/cutting/order-list';
import { setUpWords } from '../../../app/cutting/setting-words';
import { toldCuts } from '../../../app/cutting/steps';
import { FIRST_LIST, readTyped } from '../../../app/cutting/typed';
import { costOf, goodness, pounds, sawWords, standWords } from '../../../app/cutting/words';
import { cutsOf, stagesWords } from '../../../src/cut';
import type { CutTree } from '../../../src/vocabulary/cut-plan';
import { batch, dearer, piece, plan, priced, problem } from './plans';

const say = (mm: number): string => String(Number(mm.toFixed(1)));

describe('how good a plan is', () => {
  it.each([
    [priced(20, 20), 'proven best'],
    [priced(20, 19.99), 'at most 0.1 % above the limit'],
    [priced(103, 100), 'at most 3 % above the limit'],
    [priced(103.01, 100), 'at most 3.1 % above the limit'],
    [priced(5, 0), 'no limit known yet'],
    [{ ...priced(0, 0), unplaced: [{ piece: 0, quantity: 1, why: 'no stock left' as const }] }, 'nothing can be cut'],
  ])('is never said to be better than it is known to be', (one, words) => expect(goodness(one)).toBe(words));

  it('costs money, or stuff where there are no prices', () => {
    expect(pounds(9641)).toBe('£96.41');
    expect(costOf('sheets', true)(39.1)).toBe('cost 39.1');
    expect(costOf('sheets', false)(5_953_600)).toBe('5.95 m²');
    expect(costOf('bars', false)(16_800)).toBe('16.8 m');
  });

  it('says what the search is doing', () => {
    const held = {
      batch,
      key: '',
      revision: 1,
      shown: null,
      before: null,
      spent: 1234,
      allowed: 2000,
      locked: [],
      done: false,
      unlocked: false,
    };
    expect(standWords({ ...held, stand: 'bettering' })).toBe('being bettered: 1.2 of 2.0 s');
    expect(standWords({ ...held, stand: 'failed', why: 'no memory' })).toBe('could not be planned: no memory');
    expect(standWords({ ...held, stand: 'done', done: true })).toBe('cut');
  });
});

describe('the whole job', () => {
  const shown = { batch, plan, copies: freshCopies(plan) };
  const dear = { ...shown, plan: { ...plan, cost: 30, bound: 25, proven: false } };

  it('has one total, as good as it is known to be', () => {
    const total = jobTotal([{ shown }, { shown: dear }, { shown: null }]);
    expect(total).toMatchObject({ cost: 50, bound: 45, proven: false, open: 1 });
    expect(goodness(total)).toBe('at most 11.2 % above the limit');
    expect(goodness(jobTotal([{ shown }, { shown }]))).toBe('proven best');
  });

  it('says what to fetch for each stuff, and what of it is cut already', () => {
    expect(fetchLines(shown, [], say, pounds)).toEqual(['2 sheets 1000 × 500 at £0.10']);
    expect(fetchLines(shown, [1], say)).toEqual(['2 sheets 1000 × 500 (1 cut already)']);
    const racked = {
      ...shown,
      batch: { ...batch, from: [{ offcut: 'O1' }] },
      plan: { ...plan, used: [{ stock: 0, count: 1 }] },
    };
    expect(fetchLines(racked, [], say, pounds)).toEqual(['offcut O1 from the rack']);
  });
});

it('a last trim that is free is no stage, and is named by itself', () => {
  const [sheet] = plan.sheets;
  const { length, width } = { length: 400, width: 450 };
  const trimmed = {
    kind: 'cut' as const,
    way: 'along' as const,
    x: 0,
    y: 0,
    length: 400,
    width: 500,
    parts: [piece(0, 0, 0, length, width), { kind: 'left' as const, x: 0, y: 450, length, width: 50, reusable: false }],
  };
  const tree = { ...sheet!.tree, parts: [trimmed, piece(0, 400, 0, 400, 500)] } as CutTree;
  expect(stagesWords({ tree, stages: 2 })).toBe('2 stages');
  expect(stagesWords({ tree, stages: 2 }, true)).toBe('1 stage and a last trim');
  expect(stagesWords(sheet!, true)).toBe('1 stage');
  expect(stagesWords({ tree: trimmed, stages: 1 }, true)).toBe('a last trim');
  expect(sawWords(problem, say)).toBe('kerf 0, trim 0 off each edge');
});

describe('what has changed', () => {
  const shown = (one: typeof plan) => ({ batch, plan: one, copies: freshCopies(one) });
  it('is said in a line, and nothing where nothing has', () => {
    expect(changeWords({ shown: shown(plan), before: shown(dearer) }, (n) => `£${n}`)).toBe(
      'Against the plan that stood before: £10 less, 1 sheet fewer, 1 piece on another sheet.',
    );
    expect(changeWords({ shown: shown(plan), before: shown(plan) }, String)).toBe('');
    expect(changeWords({ shown: shown(plan), before: null }, String)).toBe('');
  });
});

describe('the cuts of a sheet', () => {
  const trimmed = { ...problem, trim: 10, stock: [{ length: 1020, width: 520, price: 10 }] };
  const moved = {
    ...plan,
    sheets: plan.sheets
      .slice(0, 1)
      .map((sheet) => ({ ...sheet, tree: shift(sheet.tree), pieces: sheet.pieces.map((one) => shift(one)) })),
  };
  function shift<T>(tree: T): T {
    const { x, y, parts } = tree as { x: number; y: number; parts?: readonly unknown[] };
    return { ...tree, x: x + 10, y: y + 10, ...(parts ? { parts: parts.map(shift) } : {}) };
  }
  it('are told in order with their settings and what is free, every part once', () => {
    const shown = { batch: { ...batch, problem: trimmed }, plan: moved, copies: freshCopies(moved) };
    const told = toldCuts(cutsOf(trimmed, moved)[0]!, shown, 0, say);
    expect(told.map(({ number }) => number)).toEqual(told.map((_, i) => i + 1));
    expect(told[0]!.what).toMatch(/^Trim the (upper|lower) edge: .*takes off 10/);
    expect(told.filter(({ what }) => what.startsWith('Trim'))).toHaveLength(4);
    expect(
      told.some(({ what }) =>
        /^Cross-cut: stop at 400, the \w+ edge \((trimmed before|just cut)\) against it; 500 long\.$/.test(what),
      ),
    ).toBe(true);
    expect(told.flatMap(({ marks }) => marks).sort()).toEqual(['A1', 'A2', 'B1']);
    expect(toldCuts(cutsOf(trimmed, moved)[0]!, shown, 0, say, 2, 5), 'a page of them').toEqual(told.slice(2, 5));
  });
});

it('marks are given out in the order of the plan, and found by it', () => {
  const copies = [[2, 0, 0], [1]];
  expect(marksInOrder(batch, plan, copies).marks).toEqual([[['A3'], ['A1'], ['A2']], [['B1']]]);
  expect(placesByMark(batch, plan, copies).get('A2')).toEqual({ sheet: 1, place: 0 });
});

it('lettering is level where it can be, upright where it must be, and never over the edge', () => {
  expect(lettered(120, 40, 'A-P1', '782 × 732')).toMatchObject({
    lines: ['A-P1', '782 × 732'],
    turned: false,
    marked: true,
  });
  expect(lettered(30, 120, 'A-P1', '782 × 732')).toMatchObject({ lines: ['A-P1', '782 × 732'], turned: true });
  expect(lettered(40, 16, 'A-P1', '782 × 732')).toMatchObject({ lines: ['A-P1'], marked: true });
  expect(lettered(30, 16, 'A-P123456', '78')).toMatchObject({ lines: ['78'], marked: false });
  expect(lettered(32, 30, 'A-NG123456', '303.7')).toEqual({
    lines: ['303.7'],
    turned: false,
    marked: false,
    small: true,
  });
  expect(lettered(28, 30, 'A-NG123456', '303.7')).toMatchObject({ lines: ['303.7'], turned: true, small: true });
  expect(lettered(5, 10, 'A', '7')).toBeNull();
  expect(worded(10, 10, [['for the rack']])).toBeNull();
  const scale = scaleOf({ length: 2440, width: 1220 }, { width: 614, height: 400 });
  expect(scale * 2440).toBeCloseTo(610, 6);
});

describe('what a saw is set to', () => {
  it('says what stands at what, and squares only where they are set back', () => {
    expect(setUpWords({ at: { 'rip fence': 350 }, move: ['rip fence'] }, say)).toBe('rip fence 350');
    expect(setUpWords({ at: { mitre: -45, tilt: 0, 'length stop': 700.5 }, move: ['mitre'] }, say)).toBe(
      'turned 45° to the left, stop 700.5',
    );
    expect(setUpWords({ at: { mitre: 0, 'length stop': 700 }, move: ['mitre'] }, say)).toBe(
      'turned back to square, stop 700',
    );
    expect(setUpWords({ at: {}, move: [] }, say)).toBe('by eye');
  });
});

describe('a list typed without a job', () => {
  it('becomes a batch', () => {
    const read = readTyped({ ...FIRST_LIST, stages: '3', pieces: 'shelf, 782, 380, 6\n2 x 600 x 300 door' }, 'mm');
    if (!read.ok) throw new Error(read.lines.join());
    expect(read.batch.problem).toMatchObject({
      kind: 'sheets',
      kerf: 3,
      trim: 5,
      stages: 3,
      stock: [{ length: 2440, width: 1220 }],
      pieces: [
        { name: 'shelf', length: 782, width: 380, quantity: 6, turnable: true },
        { name: 'door', length: 600, width: 300, quantity: 2 },
      ],
    });
    expect(read.batch.marks).toEqual([[], []]);
  });

  it('is read in the job’s units', () => {
    const read = readTyped(
      {
        ...FIRST_LIST,
        kind: 'bars',
        kerf: '1/8',
        trim: '0',
        stock: [{ length: '8 ft', width: '', price: '12,5', count: '4' }],
        pieces: 'rail, 30 1/2, 3',
      },
      'inch',
    );
    if (!read.ok) throw new Error(read.lines.join());
    expect(read.batch.problem).toMatchObject({
      kerf: 3.175,
      stock: [{ length: 2438.4, price: 12.5, count: 4 }],
      pieces: [{ length: 774.7, quantity: 3 }],
    });
  });

  it('says line by line what can’t be read', () => {
    const read = readTyped(
      {
        ...FIRST_LIST,
        kerf: 'wide',
        stock: [{ length: '0', width: '1220', price: 'dear', count: '' }],
        pieces: 'shelf, 782, 380, 6\nshelf, long',
      },
      'mm',
    );
    if (read.ok) throw new Error('it was read');
    expect(read.lines).toHaveLength(4);
    expect(read.lines[0]).toMatch(/^Saw kerf: /);
    expect(read.lines[1]).toMatch(/^Stock 1, length: /);
    expect(read.lines[2]).toMatch(/^Stock 1, price: /);
    expect(read.lines[3]).toMatch(/^Line 2: /);
    const none = readTyped({ ...FIRST_LIST, stock: [], pieces: 'shelf, 782, 380, 6' }, 'mm');
    expect(none).toMatchObject({ ok: false });
  });
});
