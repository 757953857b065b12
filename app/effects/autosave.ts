import type { Job } from '../../src/vocabulary/job';
import { newId } from '../store/ids';
import type { AppState, AppStore } from '../store/store';
import type { Keep } from './keep';

/** What the autosave needs of the world. */
export interface AutosaveMeans {
  readonly keep: Keep;
  /** This page, from load to unload. */
  readonly session: string;
  readonly write: (job: Job) => string;
  readonly now: () => number;
  /** The document as it was found on the shelf, if it came from there. */
  readonly found?: { readonly documentId: string; readonly revision: number };
  /** Told which document this tab has, so that a reload finds it again. */
  readonly remember: (documentId: string) => void;
}

/** What is said when two tabs had the same job. */
export const PARTED =
  'Another tab has changed this job meanwhile. Your work in this tab is kept as a job of its own; the other stays as it is.';
export const NOT_KEPT = 'The browser could not keep the last change. Save the job to a file to be safe.';

/** The time one document spends on the board of this tab. Parting gives it another id. */
interface Sitting {
  documentId: string;
  revision: number;
}

export interface Autosave {
  /** Waits for saves on their way. */
  settled(): Promise<void>;
  /** To be told before a job from the shelf is opened: this tab has read that revision of it. */
  hasRead(documentId: string, revision: number): void;
  stop(): void;
}

/** Keeps every committed edit of the store from now on: a gesture when it has ended, a job just opened at once. */
export function autosave(store: AppStore, means: AutosaveMeans): Autosave {
  const { keep, session, write, now, found, remember } = means;
  const read = new Map<string, number>(found ? [[found.documentId, found.revision]] : []);
  const sitDown = (documentId: string): Sitting => ({ documentId, revision: read.get(documentId) ?? 0 });
  let seen: Job = store.getState().document;
  let sitting = sitDown(store.getState().documentId);
  let line: Promise<void> = Promise.resolve();
  let waiting = 0;

  const put = async (job: Job, label: string, mine: Sitting): Promise<void> => {
    const entry = { session, name: job.name, label, savedAt: now(), text: write(job) };
    const saved = await keep.save({ ...entry, documentId: mine.documentId, base: mine.revision, spareId: newId() });
    mine.documentId = saved.documentId;
    mine.revision = saved.revision;
    if (saved.parted) {
      if (mine === sitting) store.getState().renameDocument(saved.documentId);
      store.getState().notify({ tone: 'info', text: PARTED });
    }
    if (mine === sitting) remember(saved.documentId);
  };

  const told = (ok: boolean): void => {
    waiting -= 1;
    const state = store.getState();
    if (!ok) {
      state.setKeeping('failed');
      state.notify({ tone: 'trouble', text: NOT_KEPT });
    } else if (waiting === 0) state.setKeeping('kept');
  };

  const keepNow = ({ document, documentId, past, keeping, setKeeping }: AppState): void => {
    seen = document;
    if (documentId !== sitting.documentId) sitting = sitDown(documentId);
    const mine = sitting;
    waiting += 1;
    line = line
      .then(() => put(document, past.at(-1)?.label ?? 'Opened', mine))
      .then(() => told(true))
      .catch(() => told(false));
    if (keeping !== 'keeping') setKeeping('keeping');
  };

  const stop = store.subscribe((state) => {
    if (state.document !== seen && state.gesture === null) keepNow(state);
  });
  return {
    settled: () => line,
    hasRead(documentId, revision) {
      read.set(documentId, revision);
      if (sitting.documentId === documentId) sitting.revision = Math.max(sitting.revision, revision);
    },
    stop,
  };
}
