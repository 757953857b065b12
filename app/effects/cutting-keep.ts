import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { AnyCutPlan, CutBatch, Offcut } from '../../src/vocabulary/cut-plan';
import { byMark, type Exchange, type Exchanged, exchanged } from './rack';

/** How far a batch of a job has been cut: the plan by which it is cut, whatever is worked out anew meanwhile. */
export interface CutSoFar {
  readonly documentId: string;
  readonly batch: CutBatch;
  readonly plan: AnyCutPlan;
  /** Which copy of its piece each placed piece is, sheet by sheet or bar by bar. */
  readonly copies: readonly (readonly number[])[];
  /** Sheets or bars that are cut already, by their places in the plan. */
  readonly locked: readonly number[];
  /** All of it is cut, and its leftovers are in the rack. */
  readonly done: boolean;
}

interface Stores extends DBSchema {
  rack: { key: string; value: Offcut };
  /** By document and batch. */
  cut: { key: [string, string]; value: CutSoFar };
}

/** What the browser keeps for the saw: the joiner's own rack of offcuts, and how far jobs have been cut. */
export interface CuttingKeep {
  /** In the order of their marks. */
  rack(): Promise<readonly Offcut[]>;
  /** In one piece: all of it or, where it rejects, nothing. */
  exchange(exchange: Exchange): Promise<Exchanged>;
  cutOf(documentId: string): Promise<readonly CutSoFar[]>;
  keepCut(soFar: CutSoFar): Promise<void>;
  dropCut(documentId: string, batch: string): Promise<void>;
  close(): void;
}

const everyBatch = (documentId: string): IDBKeyRange => IDBKeyRange.bound([documentId], [documentId, []]);

async function exchange(db: IDBPDatabase<Stores>, wanted: Exchange): Promise<Exchanged> {
  const work = db.transaction('rack', 'readwrite');
  const rack = work.objectStore('rack');
  const done = exchanged(await rack.getAll(), wanted);
  await Promise.all([...done.out.map(({ mark }) => rack.delete(mark)), ...done.in.map((offcut) => rack.put(offcut))]);
  await work.done;
  return done;
}

/** Opens it. Rejects where the browser has no database, or forbids it. A database of its own: pages from before it need not make way. */
export async function openCuttingKeep(name = 'counterwright cutting'): Promise<CuttingKeep> {
  const db = await openDB<Stores>(name, 1, {
    upgrade(fresh) {
      fresh.createObjectStore('rack', { keyPath: 'mark' });
      fresh.createObjectStore('cut');
    },
    blocking: (_current, _wanted, event) => (event.target as IDBDatabase).close(),
  });
  return {
    rack: async () => (await db.getAll('rack')).sort(byMark),
    exchange: (wanted) => exchange(db, wanted),
    cutOf: (documentId) => db.getAll('cut', everyBatch(documentId)),
    keepCut: async (soFar) => {
      await db.put('cut', soFar, [soFar.documentId, soFar.batch.id]);
    },
    dropCut: (documentId, batch) => db.delete('cut', [documentId, batch]),
    close: () => db.close(),
  };
}

/** The same for this visit only, where the browser keeps nothing. */
export function memoryKeep(): CuttingKeep {
  const rack = new Map<string, Offcut>();
  const cut = new Map<string, CutSoFar>();
  const keyOf = (documentId: string, batch: string): string => JSON.stringify([documentId, batch]);
  return {
    rack: async () => [...rack.values()].sort(byMark),
    exchange: async (wanted) => {
      const done = exchanged([...rack.values()], wanted);
      for (const { mark } of done.out) rack.delete(mark);
      for (const offcut of done.in) rack.set(offcut.mark, offcut);
      return done;
    },
    cutOf: async (documentId) => [...cut.values()].filter((one) => one.documentId === documentId),
    keepCut: async (soFar) => void cut.set(keyOf(soFar.documentId, soFar.batch.id), soFar),
    dropCut: async (documentId, batch) => void cut.delete(keyOf(documentId, batch)),
    close: () => undefined,
  };
}
