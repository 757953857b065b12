import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_STEPS } from '../../app/store/history';
import { createAppStore } from '../../app/store/store';
import { isUnitAway } from '../../app/store/view';
import { addRun, removeRun, setAt, setElement } from '../../src/job/edits';
import { sampleJob } from './sample';

const fresh = () => createAppStore(sampleJob(), 'first');
type Store = ReturnType<typeof fresh>;
const setHeight = (store: Store, height: number, gesture?: string) =>
  store.getState().edit('Height', (job) => setAt(job, '/unit/height', height), gesture);

describe('edit, undo, redo', () => {
  it('goes there and back, and keeps the job it started from untouched', () => {
    const store = fresh();
    const start = store.getState().document;
    setHeight(store, 1050);
    expect(store.getState().document.unit.height).toBe(1050);
    expect(store.getState().previous).toBe(start);
    store.getState().undo();
    expect(store.getState().document).toEqual(start);
    expect(start).toEqual(sampleJob());
    store.getState().redo();
    expect(store.getState().document.unit.height).toBe(1050);
  });

  it('shares what an edit does not touch', () => {
    const store = fresh();
    const { tools, unit } = store.getState().document;
    setHeight(store, 1050);
    expect(store.getState().document.tools).toBe(tools);
    expect(store.getState().document.unit.plan).toBe(unit.plan);
  });

  it('changes the whole job at once, there and back', () => {
    const store = fresh();
    store.getState().edit('Name', (job) => ({ ...job, name: 'Long bar' }));
    expect(store.getState().document.name).toBe('Long bar');
    store.getState().undo();
    expect(store.getState().document).toEqual(sampleJob());
    store.getState().redo();
    expect(store.getState().document).toEqual({ ...sampleJob(), name: 'Long bar' });
  });

  it('leaves no step for an edit that changes nothing', () => {
    const store = fresh();
    const start = store.getState().document;
    setHeight(store, 1100);
    expect(store.getState().past).toEqual([]);
    expect(store.getState().document).toBe(start);
  });

  it('leaves no step when the recipe throws', () => {
    const store = fresh();
    const fail = () =>
      store.getState().edit('Bad', () => {
        throw new Error('stop');
      });
    expect(fail).toThrow('stop');
    expect(store.getState().document).toEqual(sampleJob());
    expect(store.getState().past).toEqual([]);
  });

  it('forgets what was undone once another edit is made', () => {
    const store = fresh();
    setHeight(store, 1050);
    store.getState().undo();
    setHeight(store, 1000);
    expect(store.getState().future).toEqual([]);
    store.getState().redo();
    expect(store.getState().document.unit.height).toBe(1000);
  });

  it('does nothing when there is nothing to undo or redo', () => {
    const store = fresh();
    store.getState().undo();
    store.getState().redo();
    expect(store.getState().document).toEqual(sampleJob());
  });

  it('undoes lists: adding and removing a run', () => {
    const store = fresh();
    store.getState().edit('Remove run', (job) => removeRun(job, 0));
    expect(store.getState().document.unit.plan.runs).toHaveLength(1);
    store.getState().undo();
    expect(store.getState().document).toEqual(sampleJob());
  });

  it('keeps no more steps than it says', () => {
    const store = fresh();
    for (let i = 0; i < MOST_STEPS + 5; i++) setHeight(store, 500 + i);
    expect(store.getState().past).toHaveLength(MOST_STEPS);
  });

  it('comes back to every job on the way, whatever the order of edits', () => {
    const anEdit = fc.oneof(
      fc.record({ kind: fc.constant('height' as const), value: fc.integer({ min: 300, max: 1500 }) }),
      fc.record({ kind: fc.constant('add' as const), value: fc.integer({ min: 300, max: 5000 }) }),
      fc.record({ kind: fc.constant('remove' as const), value: fc.nat(4) }),
      fc.record({ kind: fc.constant('room' as const), value: fc.integer({ min: 40, max: 400 }) }),
    );
    fc.assert(
      fc.property(fc.array(anEdit, { maxLength: 25 }), (edits) => {
        const store = fresh();
        const jobs = [store.getState().document];
        for (const { kind, value } of edits) {
          store.getState().edit(kind, (job) => {
            const { runs } = job.unit.plan;
            if (kind === 'height') return setAt(job, '/unit/height', value);
            if (kind === 'add') return addRun(job, runs.length, { length: value, over: 'frame', through: 'this' });
            if (kind === 'room') return setElement(job, 'pillar', 'width', value);
            return runs.length > 1 ? removeRun(job, value % runs.length) : job;
          });
          if (store.getState().document !== jobs.at(-1)) jobs.push(store.getState().document);
        }
        for (const job of jobs.slice(0, -1).reverse()) {
          store.getState().undo();
          expect(store.getState().document).toEqual(job);
        }
        for (const job of jobs.slice(1)) {
          store.getState().redo();
          expect(store.getState().document).toEqual(job);
        }
      }),
      { seed: 20260101, numRuns: 60 },
    );
  });
});

describe('gestures', () => {
  it('makes one step of a drag, however many moves it has', () => {
    const store = fresh();
    const start = store.getState().document;
    for (let h = 1000; h < 1200; h++) setHeight(store, h, 'drag 1');
    store.getState().endGesture();
    const { past } = store.getState();
    expect(past).toHaveLength(1);
    expect(store.getState().previous).toBe(start);
    store.getState().undo();
    expect(store.getState().document).toEqual(start);
    store.getState().redo();
    expect(store.getState().document.unit.height).toBe(1199);
  });

  it('joins moves that touch different places', () => {
    const store = fresh();
    setHeight(store, 1000, 'g');
    store.getState().edit('Depth', (job) => setAt(job, '/unit/depth', 500), 'g');
    store.getState().edit('Run', (job) => removeRun(job, 1), 'g');
    expect(store.getState().past).toHaveLength(1);
    store.getState().undo();
    expect(store.getState().document).toEqual(sampleJob());
    store.getState().redo();
    expect(store.getState().document.unit).toMatchObject({ height: 1000, depth: 500 });
    expect(store.getState().document.unit.plan.runs).toHaveLength(1);
  });

  it('begins a new step after the gesture has ended, even with the same key', () => {
    const store = fresh();
    setHeight(store, 1000, 'g');
    store.getState().endGesture();
    setHeight(store, 1010, 'g');
    expect(store.getState().past).toHaveLength(2);
  });

  it('begins a new step for another key, and after undo', () => {
    const store = fresh();
    setHeight(store, 1000, 'a');
    setHeight(store, 1010, 'b');
    expect(store.getState().past).toHaveLength(2);
    store.getState().undo();
    setHeight(store, 1020, 'a');
    expect(store.getState().past).toHaveLength(2);
  });

  it('takes a cancelled gesture back without a trace', () => {
    const store = fresh();
    setHeight(store, 1050);
    setHeight(store, 1000, 'g');
    setHeight(store, 900, 'g');
    store.getState().cancelGesture();
    expect(store.getState().document.unit.height).toBe(1050);
    expect(store.getState().past).toHaveLength(1);
    expect(store.getState().future).toEqual([]);
    store.getState().cancelGesture();
    expect(store.getState().past).toHaveLength(1);
  });

  it('still tells what the last edit changed when a gesture after it is cancelled', () => {
    const store = fresh();
    const start = store.getState().document;
    setHeight(store, 1050);
    const changed = store.getState().document;
    setHeight(store, 1000, 'g');
    setHeight(store, 900, 'g');
    expect(store.getState().previous).toBe(changed);
    store.getState().cancelGesture();
    expect(store.getState().document).toBe(changed);
    expect(store.getState().previous).toBe(start);
  });

  it('begins anew with another gesture: what the one before laid by is not given back', () => {
    const store = fresh();
    setHeight(store, 1050);
    store.getState().undo();
    setHeight(store, 1000, 'a');
    const afterFirst = store.getState().document;
    setHeight(store, 900, 'b');
    store.getState().cancelGesture();
    expect(store.getState().document).toBe(afterFirst);
    expect(store.getState().previous).toEqual(sampleJob());
    expect(store.getState().future).toEqual([]);
  });

  it('leaves what was undone before a cancelled gesture to be done again', () => {
    const store = fresh();
    setHeight(store, 1050);
    setHeight(store, 1100);
    store.getState().undo();
    setHeight(store, 1000, 'g');
    setHeight(store, 900, 'g');
    store.getState().cancelGesture();
    store.getState().redo();
    expect(store.getState().document.unit.height).toBe(1100);
    // An edit that is kept leaves nothing to be done again.
    store.getState().undo();
    setHeight(store, 1000, 'g');
    store.getState().endGesture();
    expect(store.getState().future).toEqual([]);
  });
});

describe('opening and looking', () => {
  it('clears history, selection and run when another job is opened', () => {
    const store = fresh();
    setHeight(store, 1000);
    store.getState().select('A-ST-1', 'A');
    store.getState().open(sampleJob('Other'));
    const { past, future, document, documentId, view, previous } = store.getState();
    expect([past, future, previous]).toEqual([[], [], null]);
    expect(document.name).toBe('Other');
    expect(documentId).not.toBe('first');
    expect(view.selected).toBeNull();
    expect(view.run).toBe('');
    store.getState().undo();
    expect(store.getState().document.name).toBe('Other');
  });

  it('selects a part, with or without its run, and never touches the job or its history', () => {
    const store = fresh();
    const { document } = store.getState();
    store.getState().setRun('B');
    store.getState().select('A-ST-1');
    expect(store.getState().view).toMatchObject({ selected: 'A-ST-1', run: 'B' });
    store.getState().select('A-ST-2', 'A');
    expect(store.getState().view).toMatchObject({ selected: 'A-ST-2', run: 'A' });
    store.getState().select(null);
    expect(store.getState().view.selected).toBeNull();
    store.getState().setMode('framed');
    expect(store.getState().view.mode).toBe('framed');
    expect(store.getState().document).toBe(document);
    expect(store.getState().past).toEqual([]);
  });

  it('asks the camera again when the same look is wanted twice', () => {
    const store = fresh();
    store.getState().look('front');
    const { serial } = store.getState().view.camera;
    store.getState().look('front');
    expect(store.getState().view.camera).toEqual({ request: 'front', serial: serial + 1 });
  });

  it('has nothing of the unit to show while the lists stand before it, or its cutting with no part picked out', () => {
    const store = fresh();
    const away = () => isUnitAway(store.getState().view);
    const seen = (['unit', 'assembly', 'parts', 'cutting'] as const).map((pane) => {
      store.getState().setPane(pane);
      return !away();
    });
    expect(seen).toEqual([true, true, false, false]);
    store.getState().select('A-ST-1');
    expect(away()).toBe(false);
    store.getState().setPane('parts');
    expect(away()).toBe(true);
  });
});
