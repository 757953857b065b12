import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it } from 'vitest';
import { autosave, NOT_KEPT, PARTED } from '../../app/effects/autosave';
import { type Keep, MOST_VERSIONS, openKeep } from '../../app/effects/keep';
import { type AppStore, createAppStore } from '../../app/store/store';
import { setAt } from '../../src/job/edits';
import type { Job } from '../../src/vocabulary/job';
import { sampleJob } from './sample';

let shelf = 0;
const open: Keep[] = [];
const onShelf = async (): Promise<Keep> => {
  const keep = await openKeep(`shelf ${shelf}`);
  open.push(keep);
  return keep;
};

afterEach(() => {
  for (const keep of open.splice(0)) keep.close();
  shelf += 1;
});

interface Tab {
  readonly store: AppStore;
  readonly keep: Keep;
  readonly settled: () => Promise<void>;
  readonly hasRead: (id: string, revision: number) => void;
  readonly remembered: string[];
}

let clock = 0;
/** A tab that has loaded whatever the shelf holds of a document. */
async function tab(session: string, documentId = 'bar'): Promise<Tab> {
  const keep = await onShelf();
  const found = await keep.newest(documentId);
  const job = found ? (JSON.parse(found.text) as Job) : sampleJob();
  const store = createAppStore(job, documentId);
  const remembered: string[] = [];
  const { settled, hasRead } = autosave(store, {
    keep,
    session,
    write: (j) => JSON.stringify(j),
    now: () => ++clock,
    ...(found ? { found } : {}),
    remember: (id) => remembered.push(id),
  });
  return { store, keep, settled, hasRead, remembered };
}

const setHeight = ({ store }: Tab, height: number, gesture?: string) =>
  store.getState().edit(`Height ${height}`, (job) => setAt(job, '/unit/height', height), gesture);
const heightOf = async (keep: Keep, id: string) => {
  const kept = await keep.newest(id);
  return kept && (JSON.parse(kept.text) as Job).unit.height;
};

describe('autosave', () => {
  it('keeps every committed edit, and what was undone', async () => {
    const one = await tab('s1');
    setHeight(one, 1000);
    setHeight(one, 1010);
    one.store.getState().undo();
    await one.settled();
    expect(await heightOf(one.keep, 'bar')).toBe(1000);
    const heights = (await one.keep.versions('bar')).map((v) => (JSON.parse(v.text) as Job).unit.height);
    expect(heights).toEqual([1000, 1010, 1000]);
    expect(one.store.getState().keeping).toBe('kept');
    expect(one.remembered.at(-1)).toBe('bar');
  });

  it('keeps nothing of a job that was only looked at', async () => {
    const one = await tab('s1');
    one.store.getState().select('A-ST-1');
    await one.settled();
    expect(await one.keep.documents()).toEqual([]);
  });

  it('waits for the end of a gesture', async () => {
    const one = await tab('s1');
    setHeight(one, 1000, 'drag');
    setHeight(one, 1001, 'drag');
    await one.settled();
    expect(await one.keep.documents()).toEqual([]);
    one.store.getState().endGesture();
    await one.settled();
    expect(await heightOf(one.keep, 'bar')).toBe(1001);
    expect(await one.keep.versions('bar')).toHaveLength(1);
  });

  it('keeps only the last versions', async () => {
    const one = await tab('s1');
    for (let i = 0; i < MOST_VERSIONS + 7; i++) setHeight(one, 500 + i);
    await one.settled();
    const versions = await one.keep.versions('bar');
    expect(versions).toHaveLength(MOST_VERSIONS);
    expect(versions[0]?.label).toBe(`Height ${500 + MOST_VERSIONS + 6}`);
  });

  it('goes on with the same document after a reload', async () => {
    const one = await tab('s1');
    setHeight(one, 1000);
    await one.settled();
    const again = await tab('s2');
    expect(again.store.getState().document.unit.height).toBe(1000);
    setHeight(again, 1020);
    await again.settled();
    expect(again.store.getState().documentId).toBe('bar');
    expect(await heightOf(again.keep, 'bar')).toBe(1020);
    expect(await again.keep.documents()).toHaveLength(1);
  });

  it('keeps an opened job at once, under its own id', async () => {
    const one = await tab('s1');
    setHeight(one, 1000);
    one.store.getState().open(sampleJob('Other'), 'other');
    await one.settled();
    const names = (await one.keep.documents()).map((kept) => kept.name);
    expect(names.sort()).toEqual(['Bar', 'Other']);
    expect(await heightOf(one.keep, 'bar')).toBe(1000);
  });

  it('says so when the browser refuses', async () => {
    const one = await tab('s1');
    one.keep.close();
    setHeight(one, 1000);
    await one.settled();
    expect(one.store.getState().keeping).toBe('failed');
    expect(one.store.getState().notice).toEqual({ tone: 'trouble', text: NOT_KEPT });
    expect(one.store.getState().document.unit.height).toBe(1000);
  });
});

describe('two tabs with the same job', () => {
  it('never overwrite each other: the later one goes on as its own document and says so', async () => {
    const first = await tab('s1');
    setHeight(first, 1000);
    await first.settled();
    const second = await tab('s2');
    setHeight(first, 1001);
    await first.settled();
    setHeight(second, 900);
    await second.settled();
    const own = second.store.getState().documentId;
    expect(own).not.toBe('bar');
    expect(second.store.getState().notice?.text).toBe(PARTED);
    expect(second.remembered.at(-1)).toBe(own);
    expect(await heightOf(first.keep, 'bar')).toBe(1001);
    expect(await heightOf(first.keep, own)).toBe(900);
    // and both go on undisturbed
    setHeight(first, 1002);
    setHeight(second, 901);
    await first.settled();
    await second.settled();
    expect(await heightOf(first.keep, 'bar')).toBe(1002);
    expect(await heightOf(first.keep, own)).toBe(901);
    expect(await first.keep.documents()).toHaveLength(2);
    expect(first.store.getState().notice).toBeNull();
  });

  it('loses no edit of either when several are on their way at once', async () => {
    const first = await tab('s1');
    const second = await tab('s2');
    for (let i = 0; i < 5; i++) {
      setHeight(first, 1000 + i);
      setHeight(second, 800 + i);
    }
    await Promise.all([first.settled(), second.settled()]);
    const ids = [first, second].map(({ store }) => store.getState().documentId);
    expect(new Set(ids).size).toBe(2);
    expect(await heightOf(first.keep, ids[0] as string)).toBe(1004);
    expect(await heightOf(first.keep, ids[1] as string)).toBe(804);
    expect(await first.keep.versions(ids[0] as string)).toHaveLength(5);
    expect(await first.keep.versions(ids[1] as string)).toHaveLength(5);
  });

  it('may take the other document from the shelf afterwards, and leaves its own as it was', async () => {
    const first = await tab('s1');
    setHeight(first, 1000);
    await first.settled();
    const second = await tab('s2');
    setHeight(first, 1001);
    await first.settled();
    setHeight(second, 900);
    await second.settled();
    const own = second.store.getState().documentId;
    const theirs = await second.keep.newest('bar');
    if (!theirs) throw new Error('The first document is gone from the shelf.');
    second.hasRead('bar', theirs.revision);
    second.store.getState().open(JSON.parse(theirs.text) as Job, 'bar');
    setHeight(second, 950);
    await second.settled();
    expect(second.store.getState().documentId).toBe('bar');
    expect(await heightOf(second.keep, own)).toBe(900);
    expect(await heightOf(second.keep, 'bar')).toBe(950);
    // now the first tab is the later one
    setHeight(first, 1002);
    await first.settled();
    expect(first.store.getState().documentId).not.toBe('bar');
    expect(await heightOf(first.keep, 'bar')).toBe(950);
  });
});
