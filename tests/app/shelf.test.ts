import { readFileSync } from 'node:fs';
import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { openKeep } from '../../app/effects/keep';
import { type AppStore, createAppStore } from '../../app/store/store';
import { newJob, writeJob } from '../../src/flow';
import { setAt } from '../../src/job/edits';

const example = readFileSync(new URL('../../public/examples/corner-return.job.json', import.meta.url), 'utf8');
const exampleName = (JSON.parse(example) as { name: string }).name;

/** What one tab remembers; another tab has one of its own. */
let ownMemory: Map<string, string>;

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  ownMemory = new Map();
  vi.stubGlobal('sessionStorage', {
    getItem: (key: string) => ownMemory.get(key) ?? null,
    setItem: (key: string, value: string) => void ownMemory.set(key, value),
  });
  vi.stubGlobal('fetch', async () => new Response(example));
});

/** A page that has just loaded: the module's own memory is gone with the page before. */
async function load(): Promise<{ store: AppStore; shelf: typeof import('../../app/effects/shelf') }> {
  vi.resetModules();
  const shelf = await import('../../app/effects/shelf');
  const store = createAppStore(newJob('New job'));
  await shelf.startShelf(store);
  return { store, shelf };
}

const edit = async (store: AppStore, height: number) => {
  store.getState().edit('Height', (job) => setAt(job, '/unit/height', height));
  await vi.waitFor(() => expect(store.getState().keeping).toBe('kept'));
};

describe('the start of a page', () => {
  it('brings the example the first time, and keeps nothing until it is changed', async () => {
    const { store, shelf } = await load();
    expect(store.getState().document.name).toBe(exampleName);
    expect(store.getState().past).toEqual([]);
    expect(await shelf.keptDocuments()).toEqual([]);
  });

  it('starts on an empty job when the example can’t be fetched', async () => {
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('no network')));
    expect((await load()).store.getState().document.name).toBe('New job');
    vi.stubGlobal('fetch', async () => new Response('<!doctype html>', { status: 404 }));
    expect((await load()).store.getState().document.name).toBe('New job');
    vi.stubGlobal('fetch', async () => new Response('<!doctype html>'));
    expect((await load()).store.getState().document.name).toBe('New job');
  });

  it('brings back the work of this tab, even when another job was kept later', async () => {
    const first = await load();
    await edit(first.store, 1000);
    const mine = ownMemory;
    ownMemory = new Map();
    const other = await load();
    other.store.getState().open(newJob('Other'));
    await edit(other.store, 900);
    ownMemory = mine;
    const again = await load();
    expect(again.store.getState().document.unit.height).toBe(1000);
    expect(again.store.getState().documentId).toBe(first.store.getState().documentId);
  });

  it('brings back the latest work in a tab that has none of its own', async () => {
    const first = await load();
    await edit(first.store, 1000);
    ownMemory = new Map();
    const { store } = await load();
    expect(store.getState().document.unit.height).toBe(1000);
  });

  it('leaves kept work that can’t be read on the shelf, and says so', async () => {
    const keep = await openKeep();
    const base = { documentId: 'old', session: 's', name: 'Old', label: '', savedAt: 1, base: 0, spareId: 'x' };
    await keep.save({ ...base, text: writeJob(setAt(newJob('Old'), '/unit/height', -1)) });
    const { store } = await load();
    expect(store.getState().document.name).toBe(exampleName);
    expect(store.getState().notice?.lines?.[0]).toContain('/unit/height: ');
    await edit(store, 1000);
    expect((await keep.newest('old'))?.revision).toBe(1);
    keep.close();
  });

  it('works without a shelf, and says that nothing is kept', async () => {
    vi.stubGlobal('indexedDB', {
      open: () => {
        throw new DOMException('forbidden', 'SecurityError');
      },
    });
    const { store, shelf } = await load();
    expect(store.getState().notice?.tone).toBe('trouble');
    expect(store.getState().document.name).toBe(exampleName);
    store.getState().edit('Height', (job) => setAt(job, '/unit/height', 1000));
    expect(store.getState().document.unit.height).toBe(1000);
    expect(await shelf.keptDocuments()).toEqual([]);
  });
});

describe('what is taken from the shelf', () => {
  it('is an edit when it is an earlier version of the job on the board', async () => {
    const { store, shelf } = await load();
    await edit(store, 1000);
    await edit(store, 1010);
    const versions = await shelf.keptVersions(store.getState().documentId);
    expect(versions).toHaveLength(2);
    if (!versions[1]) throw new Error('The earlier version is gone.');
    shelf.takeFromShelf(store, versions[1]);
    expect(store.getState().document.unit.height).toBe(1000);
    store.getState().undo();
    expect(store.getState().document.unit.height).toBe(1010);
  });

  it('is opened when it is another job, and goes on as that job', async () => {
    const { store, shelf } = await load();
    await edit(store, 1000);
    const { documentId } = store.getState();
    store.getState().open(newJob('Other'));
    await edit(store, 900);
    const kept = (await shelf.keptDocuments()).find((entry) => entry.documentId === documentId);
    if (!kept) throw new Error('The first job is gone from the shelf.');
    shelf.takeFromShelf(store, kept);
    await edit(store, 1020);
    expect(store.getState().documentId).toBe(documentId);
    expect(await shelf.keptDocuments()).toHaveLength(2);
    expect((await shelf.keptVersions(documentId)).map(({ label }) => label)).toEqual(['Height', 'Opened', 'Height']);
  });
});
