import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { accept, lock } from '../../../app/cutting/acts';
import { leftFor } from '../../../app/cutting/left-over';
import { NOT_KEPT, openRack, takenInWords } from '../../../app/cutting/rack';
import { keepSoFar } from '../../../app/cutting/so-far';
import { createCutting } from '../../../app/cutting/store';
import { memoryKeep, openCuttingKeep } from '../../../app/effects/cutting-keep';
import { byMark, exchanged, inverse } from '../../../app/effects/rack';
import { createAppStore } from '../../../app/store/store';
import type { BarPlan, CutBatch } from '../../../src/vocabulary/cut-plan';
import { sampleJob } from '../sample';
import { batch, plan, problem } from './plans';

const offcut = (mark: string, length = 600, width = 300) => ({ mark, material: 'mdf-12', length, width });

beforeEach(() => void vi.stubGlobal('indexedDB', new IDBFactory()));

describe('an exchange', () => {
  it('gives the next free marks, and not those that are just leaving', () => {
    const there = [offcut('O2'), offcut('O9'), offcut('shelf end')];
    const done = exchanged(there, {
      out: ['O9', 'O77'],
      in: [{ material: 'mdf-12', length: 1 }, offcut('X'), { material: 'mdf-12', length: 2 }],
    });
    expect(done.out).toEqual([offcut('O9')]);
    expect(done.in.map(({ mark }) => mark)).toEqual(['O10', 'X', 'O11']);
    expect(inverse(done)).toEqual({ out: ['O10', 'X', 'O11'], in: [offcut('O9')] });
  });

  it('marks anew what has the mark of another, there or handed in before it, and puts nothing in twice', () => {
    const there = [offcut('O1'), offcut('O2')];
    const done = exchanged(there, {
      in: [offcut('O1'), offcut('O2', 700), offcut('O5'), offcut('O5', 800), offcut('O5')],
    });
    expect(done.out).toEqual([]);
    expect(done.in).toEqual([offcut('O6', 700), offcut('O5'), offcut('O7', 800)]);
    expect(takenInWords(done)).toEqual({
      tone: 'info',
      text: 'Put into the rack: 3 offcuts.',
      lines: ['There already: O1, O5.', 'Marked anew, for another has the mark: O2 is now O6, O5 is now O7.'],
    });
    // What leaves has its mark to give.
    expect(exchanged(there, { out: ['O1'], in: [offcut('O1', 500)] })).toMatchObject({
      in: [offcut('O1', 500)],
      anew: [],
    });
  });

  it('lists by number, then by the alphabet', () => {
    const marks = ['b', 'O10', 'O2', 'a'].map((mark) => ({ mark }));
    expect([...marks].sort(byMark).map(({ mark }) => mark)).toEqual(['O2', 'O10', 'a', 'b']);
  });
});

describe.each([
  ['the browser’s rack', () => openCuttingKeep()],
  ['a rack for this visit', async () => memoryKeep()],
])('%s', (_, open) => {
  it('holds what is put in, until it is taken out', async () => {
    const keep = await open();
    await keep.exchange({
      in: [
        { material: 'mdf-12', length: 600 },
        { material: 'mdf-12', length: 700 },
      ],
    });
    await keep.exchange({ out: ['O1'], in: [{ material: 'oak', length: 800, note: 'end' }] });
    expect(await keep.rack()).toEqual([
      { mark: 'O2', material: 'mdf-12', length: 700 },
      { mark: 'O3', material: 'oak', length: 800, note: 'end' },
    ]);
    keep.close();
  });

  it('holds how far each job is cut', async () => {
    const keep = await open();
    const soFar = { documentId: 'd1', batch, plan, copies: [[0]], locked: [0], done: false };
    await keep.keepCut(soFar);
    await keep.keepCut({ ...soFar, documentId: 'd2' });
    await keep.keepCut({ ...soFar, done: true });
    expect(await keep.cutOf('d1')).toEqual([{ ...soFar, done: true }]);
    await keep.dropCut('d1', 'mdf');
    expect(await keep.cutOf('d1')).toEqual([]);
    expect(await keep.cutOf('d2')).toHaveLength(1);
    keep.close();
  });
});

it('two pages put into one rack without taking one another’s marks', async () => {
  const [one, other] = [await openCuttingKeep(), await openCuttingKeep()];
  await Promise.all([one, other, one].map((keep) => keep.exchange({ in: [{ material: 'mdf-12', length: 600 }] })));
  expect((await one.rack()).map(({ mark }) => mark)).toEqual(['O1', 'O2', 'O3']);
  one.close();
  other.close();
});

/** A board on which one batch has its plan: two sheets, of which one is an offcut; 600 × 500 is left. */
async function board(open = openCuttingKeep) {
  const app = createAppStore({ ...sampleJob('Bar'), name: 'Bar' });
  const cutting = createCutting({
    hire: () => undefined,
    order: () => undefined,
    ask: () => Promise.reject(new Error('not here')),
    close: () => undefined,
  });
  const rack = openRack(app, cutting, open);
  keepSoFar(app, cutting, rack);
  const racked: CutBatch = {
    ...batch,
    problem: { ...problem, stock: [...problem.stock, { length: 1000, width: 500, price: 0, count: 1, offcut: true }] },
    from: [...batch.from, { offcut: 'O1' }],
  };
  await rack.exchange({ in: [offcut('O1', 1000, 500), offcut('O4')] });
  app.setState({ documentId: 'bar' });
  cutting.setState({ documentId: 'bar' });
  cutting.take('job', [racked]);
  const found = { ...plan, cost: 10, sheets: [plan.sheets[0]!, { ...plan.sheets[1]!, stock: 1 }] };
  cutting.hear({
    say: 'plan',
    batch: 'mdf',
    revision: cutting.getState().held.mdf!.revision,
    stand: 'done',
    spent: 0,
    plan: found,
  });
  return { app, cutting, rack, marks: () => cutting.getState().rack.map(({ mark }) => mark) };
}

describe('a plan that is cut', () => {
  it('puts its leftovers into the rack and takes its offcuts out, and back again in one step', async () => {
    const { app, cutting, rack, marks } = await board();
    await accept(app, cutting, rack, 'mdf', () => false);
    expect(cutting.getState().rack).toEqual([
      offcut('O4'),
      { mark: 'O5', material: 'mdf-12', length: 600, width: 500, note: 'Bar' },
    ]);
    expect(cutting.getState().held.mdf).toMatchObject({ done: true, locked: [0, 1] });
    expect(app.getState().notice).toMatchObject({ text: 'Put into the rack: O5.', lines: ['Taken out of it: O1.'] });
    const { documentId } = app.getState();
    await vi.waitFor(async () => expect(await (await rack.keep()).cutOf(documentId)).toMatchObject([{ done: true }]));
    expect(app.getState().past).toHaveLength(1);
    app.getState().undo();
    expect(app.getState().notice, 'it is not in the rack any more').toBeNull();
    await vi.waitFor(() => expect(marks()).toEqual(['O1', 'O4']));
    expect(cutting.getState().held.mdf).toMatchObject({ done: false, locked: [] });
    await vi.waitFor(async () => expect(await (await rack.keep()).cutOf(documentId)).toEqual([]));
    app.getState().redo();
    await vi.waitFor(() => expect(marks()).toEqual(['O4', 'O5']));
    expect(cutting.getState().held.mdf).toMatchObject({ done: true });
  });

  it('puts its leftovers in once, however often it is pressed before the rack has answered', async () => {
    const { app, cutting, rack, marks } = await board();
    await Promise.all([1, 2].map(() => accept(app, cutting, rack, 'mdf', () => false)));
    expect(marks()).toEqual(['O4', 'O5']);
    expect(app.getState().past).toHaveLength(1);
  });

  it('can be told to the rack again when that did not work', async () => {
    const { app, cutting, rack, marks } = await board();
    await accept(app, cutting, { ...rack, exchange: async () => undefined }, 'mdf', () => false);
    expect(cutting.getState().held.mdf).toMatchObject({ done: false });
    await accept(app, cutting, rack, 'mdf', () => false);
    expect(marks()).toEqual(['O4', 'O5']);
  });

  it('is kept with its own job while another one is being opened', async () => {
    const { app, cutting, rack } = await board();
    app.setState({ documentId: 'another' });
    lock(app, cutting, 'mdf', 0, true);
    const keep = await rack.keep();
    await vi.waitFor(async () => expect(await keep.cutOf('bar')).toMatchObject([{ locked: [0] }]));
    expect(await keep.cutOf('another')).toEqual([]);
  });

  it('says which of its offcuts somebody has taken meanwhile', async () => {
    const { app, cutting, rack } = await board();
    await rack.change('Throw out O1', { out: ['O1'] });
    await accept(app, cutting, rack, 'mdf', () => false);
    expect(app.getState().notice?.lines).toEqual(['No longer there: O1.']);
    expect(app.getState().past.map(({ label }) => label)).toEqual(['Throw out O1', 'MDF is cut']);
  });

  it('works where the browser keeps nothing, and says so', async () => {
    const { app, marks } = await board(() => Promise.reject(new Error('forbidden')));
    // Who doesn't look at the cutting is not troubled with it.
    expect(app.getState().notice).toBeNull();
    app.getState().setPane('cutting');
    expect(app.getState().notice).toMatchObject({ tone: 'trouble', text: NOT_KEPT });
    expect(marks()).toEqual(['O1', 'O4']);
  });
});

it('what a bar leaves has a width only where the blank was made up to one', () => {
  const bars: CutBatch = {
    id: 'oak:650',
    name: 'Oak, 650 wide',
    problem: {
      kind: 'bars',
      kerf: 3,
      trim: 0,
      section: { width: 650, thickness: 40, turns: ['swung'] },
      stock: [{ length: 2400, price: 100 }],
      pieces: [{ length: 1000, quantity: 1 }],
    },
    marks: [[['T1']]],
    from: [{ item: 'oak' }],
  };
  const cut: BarPlan = {
    kind: 'bars',
    cost: 100,
    bound: 100,
    proven: true,
    used: [{ stock: 0, count: 1 }],
    unplaced: [],
    bars: [{ stock: 0, pieces: [{ piece: 0, at: 0, length: 1000 }], offcut: { at: 1003, length: 1396.96 } }],
  };
  const shown = { batch: bars, plan: cut, copies: [[0]] };
  expect(leftFor(shown, [], () => true, '')).toEqual([{ material: 'oak', length: 1396.9, width: 650 }]);
  expect(leftFor(shown, [], () => false, 'Bar')).toEqual([{ material: 'oak', length: 1396.9, note: 'Bar' }]);
});
