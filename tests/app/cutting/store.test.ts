import { describe, expect, it } from 'vitest';
import { lock, planAnew } from '../../../app/cutting/acts';
import { putDown, takeUp } from '../../../app/cutting/hand';
import { createCutting } from '../../../app/cutting/store';
import type { Cutters } from '../../../app/effects/cutting';
import { createAppStore } from '../../../app/store/store';
import type { Order } from '../../../app/workers/messages';
import type { AnyCutPlan, CutBatch, SheetPlan } from '../../../src/vocabulary/cut-plan';
import { sampleJob } from '../sample';
import { batch, dearer, piece, plan, problem, strips } from './plans';

/** A board whose worker only writes down what it is asked. */
function board() {
  const orders: Exclude<Order, { say: 'ask' }>[] = [];
  const cutters: Cutters = {
    order: (order) => orders.push(order),
    ask: () => Promise.reject(new Error('not here')),
    close: () => undefined,
  };
  const cutting = createCutting(cutters);
  const app = createAppStore(sampleJob());
  const held = (id = 'mdf') => cutting.getState().held[id]!;
  const answer = (
    found: AnyCutPlan | undefined,
    stand: 'first' | 'bettering' | 'done' | 'time' = 'first',
    spent = 0,
    id = 'mdf',
  ) =>
    cutting.hear({
      say: 'plan',
      batch: id,
      revision: held(id).revision,
      stand,
      spent,
      ...(found ? { plan: found } : {}),
    });
  const asked = () => orders.filter((order) => order.say === 'plan');
  return { cutting, app, orders, asked, held, answer };
}

/** The same batch with one piece of a kind fewer. */
const fewer: CutBatch = {
  ...batch,
  problem: { ...problem, pieces: [{ ...problem.pieces[0]!, quantity: 2 }, problem.pieces[1]!] },
  marks: [[['A1'], ['A2']], [['B1']]],
};

describe('batches on the board', () => {
  it('are handed to the worker once, until their problem changes', () => {
    const { cutting, asked, answer, held } = board();
    cutting.take('job', [batch]);
    answer(plan);
    cutting.take('job', [{ ...batch, name: 'MDF of another name' }]);
    expect(asked()).toHaveLength(1);
    expect(held().batch.name).toBe('MDF of another name');
    expect(held().shown?.plan).toBe(plan);
    cutting.take('job', [fewer]);
    expect(asked()).toHaveLength(2);
    // Until there is another plan, the old one stays in sight.
    expect(held()).toMatchObject({ stand: 'waiting', shown: { plan } });
    answer(dearer);
    expect(held().shown).toMatchObject({ batch: fewer, plan: dearer });
    expect(held().before?.plan).toBe(plan);
  });

  it('get their plan back when an undo brings their problem back', () => {
    const { cutting, asked, answer, held } = board();
    cutting.take('job', [batch]);
    answer(dearer);
    answer(plan, 'done', 500);
    cutting.take('job', [fewer]);
    answer(dearer);
    cutting.take('job', [batch]);
    expect(held()).toMatchObject({ shown: { plan }, stand: 'stopped' });
    expect(asked()).toHaveLength(2);
  });

  it('keep the better plan, whatever comes late', () => {
    const { cutting, answer, held } = board();
    cutting.take('job', [batch]);
    answer(plan);
    answer(dearer, 'bettering', 300);
    expect(held()).toMatchObject({ stand: 'bettering', spent: 300, shown: { plan } });
    answer(undefined, 'time', 2000);
    expect(held()).toMatchObject({ stand: 'time', spent: 2000, shown: { plan } });
  });

  it('drop what is said of a problem they no longer have', () => {
    const { cutting, held } = board();
    cutting.take('job', [batch]);
    const old = held().revision;
    cutting.take('job', [fewer]);
    cutting.hear({ say: 'plan', batch: 'mdf', revision: old, stand: 'done', spent: 9, plan });
    cutting.hear({ say: 'trouble', batch: 'mdf', revision: old, why: 'late' });
    expect(held()).toMatchObject({ stand: 'waiting', shown: null });
  });

  it('go when the job has none of the stuff any more, and the worker is told', () => {
    const { cutting, orders } = board();
    cutting.take('job', [batch]);
    cutting.take('typed', [{ ...batch, id: 'typed' }]);
    cutting.take('job', []);
    expect(Object.keys(cutting.getState().held)).toEqual(['typed']);
    expect(orders.at(-1)).toMatchObject({ say: 'forget', batch: 'mdf' });
  });

  it('start again where the worker has forgotten them', () => {
    const { cutting, asked, answer, held, orders } = board();
    cutting.take('job', [batch]);
    answer(plan, 'time', 2000);
    cutting.goOn('mdf', 1000);
    expect(orders.at(-1)).toMatchObject({ say: 'go on', ms: 1000 });
    cutting.put('mdf', held());
    cutting.goOn('mdf', 1000);
    expect(asked()).toHaveLength(2);
    answer(dearer);
    expect(held().shown?.plan).toBe(plan);
  });
});

describe('what is cut already', () => {
  const rest: SheetPlan = { ...plan, cost: 10, bound: 10, used: [{ stock: 0, count: 1 }], sheets: [] };

  it('is left out of what the worker plans, comes first, and stays the parts that it is', () => {
    const { cutting, app, asked, answer, held } = board();
    cutting.take('job', [batch]);
    answer(plan, 'done');
    lock(app, cutting, 'mdf', 1, true);
    expect(held()).toMatchObject({ locked: [1] });
    expect(held().shown?.copies).toEqual([[0, 1, 0], [2]]);
    planAnew(app, cutting, 'mdf');
    const [, order] = asked();
    // A3 is on the sheet that is cut: two of a are left, and b.
    expect(order).toMatchObject({
      problem: {
        pieces: [
          { name: 'a', quantity: 2 },
          { name: 'b', quantity: 1 },
        ],
      },
    });
    answer({
      ...rest,
      sheets: [strips([piece(1, 0, 0, 200, 500), piece(0, 200, 0, 400, 500), piece(0, 600, 0, 400, 500)])],
    });
    expect(held().locked).toEqual([0]);
    expect(held().shown?.plan).toMatchObject({ cost: 20, proven: true, sheets: [{ pieces: [{ piece: 0 }] }, {}] });
    expect(held().shown?.copies).toEqual([[2], [0, 0, 1]]);
  });

  it('can be taken back, and done again with what was found meanwhile', () => {
    const { cutting, app, answer, held } = board();
    cutting.take('job', [batch]);
    answer(plan, 'done');
    lock(app, cutting, 'mdf', 1, true);
    expect(app.getState().past.at(-1)).toMatchObject({ label: 'Sheet 2 is cut' });
    const { document } = app.getState();
    planAnew(app, cutting, 'mdf');
    answer({
      ...rest,
      sheets: [strips([piece(1, 0, 0, 200, 500), piece(0, 200, 0, 400, 500), piece(0, 600, 0, 400, 500)])],
    });
    app.getState().undo();
    expect(held()).toMatchObject({ locked: [1], shown: { plan } });
    app.getState().undo();
    expect(held()).toMatchObject({ locked: [], shown: { plan } });
    app.getState().redo();
    app.getState().redo();
    expect(held()).toMatchObject({ locked: [0], stand: 'stopped' });
    // The job is none the other for it, and nothing is said to have changed in it.
    expect(app.getState()).toMatchObject({ document, previous: null });
  });

  it('stands when only the stock changes, and is given up with a word when the parts do', () => {
    const { cutting, app, asked, answer, held } = board();
    cutting.take('job', [batch]);
    answer(plan, 'done');
    lock(app, cutting, 'mdf', 0, true);
    const offcut = { length: 700, width: 500, price: 0, count: 1, offcut: true as const };
    cutting.take('job', [
      { ...batch, problem: { ...problem, stock: [...problem.stock, offcut] }, from: [...batch.from, { offcut: 'O1' }] },
    ]);
    expect(held()).toMatchObject({ locked: [0], shown: { plan } });
    expect(asked()).toHaveLength(1);
    // A3 is no longer wanted, and it is not on the sheet that is cut.
    cutting.take('job', [fewer]);
    expect(held()).toMatchObject({ locked: [0], unlocked: false, stand: 'waiting' });
    expect(asked().at(-1)).toMatchObject({ problem: { pieces: [] } });
    const wider: CutBatch = {
      ...fewer,
      problem: { ...problem, pieces: [{ ...problem.pieces[0]!, length: 410, quantity: 2 }, problem.pieces[1]!] },
    };
    cutting.take('job', [wider]);
    expect(held()).toMatchObject({ locked: [], unlocked: true, stand: 'waiting' });
  });

  it('counts for new parts too, and what it was cut from need not be in the rack any more', () => {
    const { cutting, app, asked, answer, held } = board();
    const offcut = { length: 1000, width: 500, price: 0, count: 1, offcut: true as const };
    const racked: CutBatch = {
      ...batch,
      problem: { ...problem, stock: [...problem.stock, offcut] },
      from: [...batch.from, { offcut: 'O1' }],
    };
    cutting.take('job', [racked]);
    const [first, second] = plan.sheets;
    answer({ ...plan, cost: 10, sheets: [first!, { ...second!, stock: 1 }] }, 'done');
    lock(app, cutting, 'mdf', 1, true);
    const more: CutBatch = {
      ...batch,
      problem: { ...problem, pieces: [problem.pieces[1]!, { ...problem.pieces[0]!, quantity: 4 }] },
      marks: [[['B1']], [['A1'], ['A4'], ['A2'], ['A3']]],
    };
    cutting.take('job', [more]);
    expect(held()).toMatchObject({
      locked: [0],
      shown: { plan: { cost: 0, sheets: [{ stock: 1, pieces: [{ piece: 1 }] }] }, copies: [[3]] },
    });
    expect(asked().at(-1)).toMatchObject({
      problem: { stock: [{ price: 10 }], pieces: [{ quantity: 1 }, { quantity: 3 }] },
    });
    answer({
      ...plan,
      cost: 20,
      sheets: [
        strips([piece(0, 0, 0, 200, 500), piece(1, 200, 0, 400, 500), piece(1, 600, 0, 400, 500)]),
        strips([piece(1, 0, 0, 400, 500)]),
      ],
    });
    expect(held().shown).toMatchObject({
      plan: { cost: 20, sheets: [{ stock: 1 }, { stock: 0 }, { stock: 0 }] },
      copies: [[3], [0, 0, 1], [2]],
    });
  });

  it('is found again at the next visit', () => {
    const { cutting, asked, held } = board();
    const soFar = { documentId: 'd', batch, plan, copies: [[0, 1, 0], [2]], locked: [1], done: false };
    cutting.take('job', [batch], [soFar]);
    expect(held()).toMatchObject({ locked: [1], shown: { plan, copies: [[0, 1, 0], [2]] } });
    expect(asked()).toHaveLength(0);
  });
});

describe('a piece moved by hand', () => {
  it('is the part that it was, on another sheet, in one step to undo', () => {
    const { cutting, app, answer, held } = board();
    cutting.take('job', [batch]);
    answer(plan, 'done');
    const before = held().shown!;
    const hand = takeUp(before, 0, 0)!;
    if (hand.kind !== 'sheets') throw new Error('sheets are taken up as such');
    expect(putDown(app, cutting, 'mdf', { ...hand, to: { ...hand.to, sheet: 1, x: 402, y: 3 } })).toBeNull();
    const after = held();
    expect(after).toMatchObject({ stand: 'by hand', shown: { plan: { cost: 20 } } });
    const shown = after.shown!.plan as SheetPlan;
    // A1 lies beside A3 now; A2 and B1 are where they were.
    const at = (sheet: number) =>
      shown.sheets[sheet]!.pieces.map(({ x }, place) => [x, after.shown!.copies[sheet]![place]]);
    expect(at(1)).toEqual([
      [0, 2],
      [400, 0],
    ]);
    expect(at(0)).toEqual([
      [400, 1],
      [800, 0],
    ]);
    expect(app.getState().past.at(-1)?.label).toBe('Move A1');
    app.getState().undo();
    expect(held().shown).toEqual(before);
  });

  it('stays where it is when it can’t lie there, and says why', () => {
    const { cutting, app, answer, held } = board();
    cutting.take('job', [batch]);
    answer(plan, 'done');
    const shown = held().shown;
    const hand = takeUp(shown!, 1, 0)!;
    if (hand.kind !== 'sheets') throw new Error('sheets are taken up as such');
    expect(putDown(app, cutting, 'mdf', { ...hand, to: { ...hand.to, sheet: 0, x: 300, y: 0 } })).toMatch(/overlaps/);
    expect(putDown(app, cutting, 'mdf', { ...hand, to: { ...hand.to, turned: true } })).toMatch(/grain/);
    lock(app, cutting, 'mdf', 1, true);
    expect(putDown(app, cutting, 'mdf', { ...hand, to: { ...hand.to, x: 500 } })).toMatch(/cut already/);
    expect(held().shown).toBe(shown);
  });

  it('leaves marks and locks with their sheets when one is emptied', () => {
    const { cutting, app, answer, held } = board();
    cutting.take('job', [batch]);
    answer(dearer, 'done');
    lock(app, cutting, 'mdf', 2, true);
    cutting.setState({ sheet: 1, cut: 2 });
    const hand = takeUp(held().shown!, 0, 0)!;
    if (hand.kind !== 'sheets') throw new Error('sheets are taken up as such');
    expect(putDown(app, cutting, 'mdf', { ...hand, to: { ...hand.to, sheet: 1, x: 600 } })).toBeNull();
    expect(held()).toMatchObject({ locked: [1], shown: { plan: { cost: 20 }, copies: [[1, 0, 0], [2]] } });
    // What was the second sheet is the first now, and it is the one that is looked at.
    expect(cutting.getState()).toMatchObject({ sheet: 0, cut: 0 });
  });
});
