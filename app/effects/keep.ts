import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** A job as the browser keeps it: the text of a job file, and who wrote it when. */
export interface Kept {
  readonly documentId: string;
  /** Rises by one with every save of the document. */
  readonly revision: number;
  /** The page that wrote it; a page gets a new session each time it loads. */
  readonly session: string;
  readonly name: string;
  /** The edit that led here, in words. */
  readonly label: string;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  readonly text: string;
}

interface Shelves extends DBSchema {
  /** The newest of each document. */
  heads: { key: string; value: Kept };
  /** The last few of each document. */
  versions: { key: [string, number]; value: Kept };
}

/** What a page hands in: the revision it started from, and an id to use when the document has moved on without it. */
export interface Save extends Omit<Kept, 'revision'> {
  readonly base: number;
  readonly spareId: string;
}

export interface Saved {
  readonly documentId: string;
  readonly revision: number;
  /** Another page had written a newer revision, so this one was put under `spareId`. */
  readonly parted: boolean;
}

/** The browser's own shelf of jobs. */
export interface Keep {
  save(entry: Save): Promise<Saved>;
  newest(documentId: string): Promise<Kept | undefined>;
  /** The newest of every document, latest first. */
  documents(): Promise<Kept[]>;
  /** The versions of one document, latest first. */
  versions(documentId: string): Promise<Kept[]>;
  close(): void;
}

/** Versions kept of each document. */
export const MOST_VERSIONS = 20;

const everyRevision = (documentId: string): IDBKeyRange =>
  IDBKeyRange.bound([documentId, 0], [documentId, Number.MAX_SAFE_INTEGER]);

/**
 * Puts one entry on the shelf, in a single transaction, so that of two pages with the same document only one can be
 * the next revision; the other gets a document of its own.
 */
async function save(db: IDBPDatabase<Shelves>, entry: Save): Promise<Saved> {
  const { base, spareId, ...rest } = entry;
  const work = db.transaction(['heads', 'versions'], 'readwrite');
  const heads = work.objectStore('heads');
  const versions = work.objectStore('versions');
  const head = await heads.get(entry.documentId);
  const parted = head !== undefined && head.revision !== base && head.session !== entry.session;
  const documentId = parted ? spareId : entry.documentId;
  const revision = parted ? 1 : Math.max(head?.revision ?? 0, base) + 1;
  const kept: Kept = { ...rest, documentId, revision };
  await Promise.all([heads.put(kept), versions.put(kept, [documentId, revision])]);
  const keys = await versions.getAllKeys(everyRevision(documentId));
  await Promise.all(keys.slice(0, Math.max(0, keys.length - MOST_VERSIONS)).map((key) => versions.delete(key)));
  await work.done;
  return { documentId, revision, parted };
}

/** Opens the shelf. Rejects where the browser has no database, or forbids it. */
export async function openKeep(name = 'counterwright'): Promise<Keep> {
  const db = await openDB<Shelves>(name, 1, {
    upgrade(fresh) {
      fresh.createObjectStore('heads', { keyPath: 'documentId' });
      fresh.createObjectStore('versions');
    },
    // A newer page in another tab wants to change the shelf: this one must not stand in its way.
    blocking: (_current, _wanted, event) => (event.target as IDBDatabase).close(),
  });
  return {
    save: (entry) => save(db, entry),
    newest: (documentId) => db.get('heads', documentId),
    documents: async () => (await db.getAll('heads')).sort((a, b) => b.savedAt - a.savedAt),
    versions: async (documentId) => (await db.getAll('versions', everyRevision(documentId))).reverse(),
    close: () => db.close(),
  };
}
