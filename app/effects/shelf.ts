import { readJob, writeJob } from '../../src/flow';
import { newId } from '../store/ids';
import type { AppStore } from '../store/store';
import { type Autosave, autosave } from './autosave';
import { EXAMPLES, openExample } from './examples';
import { issueLines } from './issue-lines';
import { type Keep, type Kept, openKeep } from './keep';

/** Where a tab remembers, across reloads, which document it has. */
const MINE = 'counterwright document';

let keep: Keep | undefined;
let saving: Autosave | undefined;

/** A page may be forbidden to remember; then a reload finds the newest job instead. */
function remember(documentId: string): void {
  try {
    sessionStorage.setItem(MINE, documentId);
  } catch {
    // Forbidden: see above.
  }
}

function remembered(): string | null {
  try {
    return sessionStorage.getItem(MINE);
  } catch {
    return null;
  }
}

async function lastKept(): Promise<Kept | undefined> {
  if (!keep) return undefined;
  const mine = remembered();
  return (mine === null ? undefined : await keep.newest(mine)) ?? (await keep.documents())[0];
}

/** A browser whose database has not opened by then (another tab holds an older one) is taken to keep nothing, ms. */
const PATIENCE = 4000;

/** The answer, or a rejection when it is too long in coming. */
function soon<T>(answer: Promise<T>): Promise<T> {
  const late = new Promise<never>((_, reject) => setTimeout(() => reject(new Error('too long in coming')), PATIENCE));
  return Promise.race([answer, late]);
}

/**
 * Brings back what this tab, or the last one, had on the board; at the very first start, the example. Every committed edit
 * is kept from then on. Never rejects: without a shelf the app works all the same, and says that nothing is kept.
 */
export async function startShelf(store: AppStore): Promise<void> {
  let kept: Kept | undefined;
  try {
    keep = await soon(openKeep());
    kept = await soon(lastKept());
  } catch {
    store
      .getState()
      .notify({ tone: 'trouble', text: 'This browser keeps no work between visits. Save the job to a file.' });
  }
  const read = kept && readJob(kept.text);
  if (kept && read?.ok) store.getState().open(read.value, kept.documentId);
  else {
    await openExample(store, EXAMPLES[0]);
    if (kept && read && !read.ok) {
      const lines = issueLines(read.issues);
      store
        .getState()
        .notify({ tone: 'trouble', text: `The kept job “${kept.name}” can’t be read. It stays on the shelf.`, lines });
    }
  }
  if (!keep) return;
  saving = autosave(store, {
    keep,
    session: newId(),
    write: writeJob,
    now: Date.now,
    ...(kept && read?.ok ? { found: kept } : {}),
    remember,
  });
}

/** The newest of every kept document, latest first; none without a shelf. */
export const keptDocuments = async (): Promise<readonly Kept[]> => (keep ? keep.documents() : []);

/** Versions of one document, latest first. */
export const keptVersions = async (documentId: string): Promise<readonly Kept[]> =>
  keep ? keep.versions(documentId) : [];

/** Puts a kept job on the board: another document as it is, an earlier version of this one as an edit that can be undone. */
export function takeFromShelf(store: AppStore, kept: Kept): void {
  const { documentId, edit, open, notify } = store.getState();
  const read = readJob(kept.text);
  if (!read.ok) {
    const lines = issueLines(read.issues);
    notify({ tone: 'trouble', text: `The kept job “${kept.name}” can’t be read.`, lines });
  } else if (kept.documentId === documentId) {
    edit('Back to an earlier version', () => read.value);
  } else {
    saving?.hasRead(kept.documentId, kept.revision);
    open(read.value, kept.documentId);
  }
}
