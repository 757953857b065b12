import { describe, expect, it } from 'vitest';
import { lock, planAnew } from '../../../app/cutting/acts';
import { cutWords } from '../../../app/cutting/changed';
import { putDown, takeUp } from '../../../app/cutting/hand';
import { leftFor } from '../../../app/cutting/left-over';
import { cutsOf } from '../../../src/cut';
import type { CutBatch, SheetPlan } from '../../../src/vocabulary/cut-plan';
import type { SheetProblem } from '../../../src/vocabulary/cut-problem';
import { board, fewer } from './board';
import { batch, piece, plan, problem, strips } from './plans';

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

  it('is not proven any more without the sheet that was cut when it was proven', () => {
    const { cutting, app, asked, answer, held } = board();
    cutting.take('job', [batch]);
    answer(plan, 'done');
    lock(app, cutting, 'mdf', 1, true);
    lock(app, cutting, 'mdf', 1, false);
    expect(held().shown?.plan, 'proven of all of it').toMatchObject({ bound: 20, proven: true });
    lock(app, cutting, 'mdf', 1, true);
    planAnew(app, cutting, 'mdf');
    answer({
      ...rest,
      sheets: [strips([piece(1, 0, 0, 200, 500), piece(0, 200, 0, 400, 500), piece(0, 600, 0, 400, 500)])],
    });
    expect(held().shown?.plan).toMatchObject({ bound: 20, proven: true });
    lock(app, cutting, 'mdf', 0, false);
    expect(held()).toMatchObject({
      locked: [],
      stand: 'waiting',
      shown: { plan: { cost: 20, bound: 0, proven: false } },
    });
    expect(asked().at(-1), 'all of it is planned anew').toMatchObject({ problem });
    app.getState().undo();
    expect(held()).toMatchObject({ locked: [0], shown: { plan: { bound: 20, proven: true } } });
  });

  it('comes back whole with an undo, though its leftovers lie in the rack and the parts were others meanwhile', () => {
    const { cutting, app, answer, held } = board();
    const withRack = (one: CutBatch): CutBatch => ({
      ...one,
      problem: {
        ...problem,
        pieces: one.problem.pieces as SheetProblem['pieces'],
        stock: [...problem.stock, { length: 600, width: 500, price: 0, count: 1 }],
      },
      from: [...one.from, { offcut: 'O1' }],
    });
    cutting.take('job', [batch]);
    answer(plan, 'done');
    cutting.put('mdf', { ...held(), locked: [0, 1], done: true });
    const cut = held().shown;
    cutting.take('job', [withRack(batch)]);
    cutting.take('job', [withRack(fewer)]);
    expect(held().shown).not.toEqual(cut);
    cutting.take('job', [withRack(batch)]);
    expect(held()).toMatchObject({ shown: cut, locked: [0, 1], done: true, unlocked: false });
    // Once that is taken back it does not come again.
    cutting.put('mdf', { ...held(), locked: [], done: false });
    cutting.take('job', [withRack(fewer)]);
    cutting.take('job', [withRack(batch)]);
    expect(held()).toMatchObject({ locked: [], done: false });
    expect(app.getState().notice).toBeNull();
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

  it('stands when only the stock changes, and as far as it is still wanted when the parts do', () => {
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
    // Planned anew when that is asked for, the rest comes out of the offcut too.
    cutting.planAnew('mdf');
    expect(asked().at(-1)).toMatchObject({ problem: { stock: [{ price: 10 }, { offcut: true }] } });
    expect(held()).toMatchObject({ locked: [0], stand: 'waiting' });
    expect(held().newer).toBeUndefined();
    answer({ ...plan, sheets: [plan.sheets[1]!] }, 'done');
    expect(held()).toMatchObject({ locked: [0], shown: { plan: { sheets: plan.sheets } } });
    // A3 is no longer wanted, and it is not on the sheet that is cut.
    cutting.take('job', [fewer]);
    expect(held()).toMatchObject({ locked: [0], unlocked: false, stand: 'waiting' });
    expect(asked().at(-1)).toMatchObject({ problem: { pieces: [] } });
    const wider: CutBatch = {
      ...fewer,
      problem: { ...problem, pieces: [{ ...problem.pieces[0]!, length: 410, quantity: 2 }, problem.pieces[1]!] },
    };
    cutting.take('job', [wider]);
    // Of the sheet that is cut B1 serves still; what was A1 and A2 is left over, and two wider ones are asked for.
    expect(held()).toMatchObject({
      locked: [0],
      unlocked: true,
      shown: { plan: { cost: 10, sheets: [{ pieces: [{ piece: 1 }] }] } },
    });
    const { tree } = (held().shown!.plan as SheetPlan).sheets[0]!;
    expect(JSON.stringify(tree).match(/"left"/g)).toHaveLength(2);
    expect(asked().at(-1)).toMatchObject({ problem: { pieces: [{ length: 410, quantity: 2 }] } });
    const none: CutBatch = { ...wider, problem: { ...wider.problem, kerf: 4 } };
    cutting.take('job', [none]);
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

  it('stays when nothing on it is wanted any more: it is paid for, and what it leaves goes into the rack', () => {
    const { cutting, app, asked, answer, held } = board();
    cutting.take('job', [batch]);
    answer(plan, 'done');
    lock(app, cutting, 'mdf', 0, true);
    const [a, b] = problem.pieces;
    const longer: CutBatch = {
      ...batch,
      problem: {
        ...problem,
        pieces: [
          { ...a!, length: 410 },
          { ...b!, length: 180 },
        ],
      },
    };
    cutting.take('job', [longer]);
    expect(held()).toMatchObject({ locked: [0], shown: { plan: { cost: 10, sheets: [{ pieces: [] }] } } });
    expect(cutWords(held())).toMatch(/^Sheet 1 is cut already; nothing on it is wanted any more/);
    expect(asked().at(-1)).toMatchObject({ problem: { pieces: [{ quantity: 3 }, { quantity: 1 }] } });
    const more = [
      strips([piece(0, 0, 0, 410, 500), piece(0, 410, 0, 410, 500), piece(1, 820, 0, 180, 500)]),
      strips([piece(0, 0, 0, 410, 500)]),
    ];
    answer({ ...plan, sheets: more }, 'done');
    expect(held()).toMatchObject({ locked: [0], shown: { plan: { cost: 30, proven: true, sheets: [{}, {}, {}] } } });
    const left = leftFor(held().shown!, [], () => false, '');
    expect(left.map(({ length, width }) => [length, width])).toEqual([
      [590, 500],
      [400, 500],
      [400, 500],
      [200, 500],
    ]);
    // A piece moved by hand leaves it where it is.
    const hand = takeUp(held().shown!, 2, 0)!;
    if (hand.kind !== 'sheets') throw new Error('sheets are taken up as such');
    expect(putDown(app, cutting, 'mdf', { ...hand, to: { ...hand.to, x: 590 } })).toBeNull();
    expect(held()).toMatchObject({ locked: [0], shown: { plan: { cost: 30, sheets: [{ pieces: [] }, {}, {}] } } });
    expect(cutsOf(longer.problem, held().shown!.plan)).toHaveLength(3);
    // Changed once more it is still there; back as it was, it is what it was.
    cutting.take('job', [{ ...longer, problem: { ...longer.problem, pieces: [{ ...a!, length: 420 }, b!] } }]);
    expect(held()).toMatchObject({ locked: [0], shown: { plan: { sheets: [{ pieces: [] }] } } });
    cutting.take('job', [batch]);
    expect(held()).toMatchObject({ locked: [0], shown: { plan } });
  });

  it('comes back with its stuff when the job had no parts of it meanwhile', () => {
    const { cutting, app, answer, held } = board();
    cutting.take('job', [batch]);
    answer(plan, 'done');
    lock(app, cutting, 'mdf', 0, true);
    cutting.take('job', []);
    cutting.take('job', [fewer]);
    expect(held()).toMatchObject({ locked: [0], shown: { plan: { sheets: [{ pieces: [{}, {}, {}] }] } } });
    cutting.forget('job');
    cutting.take('job', [batch]);
    expect(held()).toMatchObject({ locked: [] });
  });

  it('is told to the rack once: what lies there is not left over again', () => {
    const soFar = { documentId: 'd', batch, plan, copies: [[0, 1, 0], [2]], locked: [0, 1], done: true };
    const { cutting, held } = board();
    cutting.take('job', [fewer], [soFar]);
    expect(held()).toMatchObject({ locked: [0, 1], done: false });
    // Only A3, which is not wanted any more, is left; the end of its sheet is in the rack.
    expect(leftFor(held().shown!, [], () => false, '')).toMatchObject([{ length: 400, width: 500 }]);
  });

  it('counts on a typed list by name and size', () => {
    const { cutting, app, answer, held } = board();
    const typed: CutBatch = { ...batch, id: 'typed', marks: [[], []] };
    cutting.take('typed', [typed]);
    answer(plan, 'done', 0, 'typed');
    lock(app, cutting, 'typed', 0, true);
    const [a, b] = problem.pieces;
    cutting.take('typed', [{ ...typed, problem: { ...problem, pieces: [{ ...a!, quantity: 1 }, b!] } }]);
    expect(held('typed')).toMatchObject({ locked: [0], shown: { plan: { sheets: [{ pieces: [{}, {}] }] } } });
  });

  it('is found again at the next visit', () => {
    const { cutting, asked, held } = board();
    const soFar = { documentId: 'd', batch, plan, copies: [[0, 1, 0], [2]], locked: [1], done: false };
    cutting.take('job', [batch], [soFar]);
    expect(held()).toMatchObject({ locked: [1], shown: { plan, copies: [[0, 1, 0], [2]] } });
    expect(asked()).toHaveLength(0);
  });
});
