import { describe, expect, it } from 'vitest';
import { lock } from '../../../app/cutting/acts';
import { putDown, takeUp } from '../../../app/cutting/hand';
import type { CutBatch, SheetPlan } from '../../../src/vocabulary/cut-plan';
import { board, fewer } from './board';
import { batch, dearer, plan, problem } from './plans';

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

  it('go on being bettered when an undo brings back what was still being bettered', () => {
    const { cutting, asked, answer, held } = board();
    cutting.take('job', [batch]);
    answer(dearer, 'bettering', 300);
    cutting.take('job', [fewer]);
    cutting.take('job', [batch]);
    expect(held()).toMatchObject({ shown: { plan: dearer }, stand: 'waiting', spent: 0 });
    expect(asked()).toHaveLength(3);
    answer(plan, 'done', 100);
    expect(held()).toMatchObject({ shown: { plan }, stand: 'done' });
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

describe('what stood before', () => {
  it('is nothing at the first opening, and what was there when it is gone on with', () => {
    const { cutting, answer, held } = board();
    cutting.take('job', [batch]);
    answer(dearer);
    answer(plan, 'time', 2000);
    expect(held().before).toBeNull();
    const stood = held().shown;
    cutting.goOn('mdf', 1000);
    expect(held().before).toBe(stood);
  });

  it('is nothing of another job', () => {
    const { cutting, answer, held } = board();
    cutting.take('job', [batch]);
    answer(plan, 'done');
    cutting.forget('job');
    cutting.take('job', [fewer]);
    expect(held()).toMatchObject({ shown: null, before: null });
    answer(dearer);
    expect(held().before).toBeNull();
  });

  it('is nothing of another typed list, and of the same one what it was', () => {
    const { cutting, answer, held } = board();
    const typed: CutBatch = { ...batch, id: 'typed', marks: [[], []] };
    cutting.take('typed', [typed]);
    answer(plan, 'done', 0, 'typed');
    cutting.take('typed', [{ ...typed, problem: { ...problem, kerf: 2 } }]);
    expect(held('typed').before?.plan).toBe(plan);
    cutting.take('typed', [{ ...typed, problem: { ...problem, pieces: [{ length: 90, width: 90, quantity: 3 }] } }]);
    expect(held('typed')).toMatchObject({ shown: null, before: null, unlocked: false });
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
