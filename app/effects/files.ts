import { readJob, writeJob } from '../../src/flow';
import type { Job } from '../../src/vocabulary/job';
import type { AppStore } from '../store/store';
import { download, fileName } from './download';
import { issueLines } from './issue-lines';

/** A bigger file isn't even looked at: the reader refuses it anyway, and reading it would hold the page up. */
export const MOST_BYTES = 20_000_000;

/**
 * Puts the job in a file on the board. A file that can't be read is said to be so, point by point with its path, and the job on
 * the board stays as it is.
 */
export async function openFile(store: AppStore, file: File): Promise<void> {
  const say = (lines: readonly string[]): void =>
    store
      .getState()
      .notify({ tone: 'trouble', text: `“${file.name}” can’t be opened. The job on the board is untouched.`, lines });
  if (file.size > MOST_BYTES) return say([`It holds ${file.size} bytes; a job file has at most ${MOST_BYTES}.`]);
  let text: string;
  try {
    text = await file.text();
  } catch {
    return say(['The browser could not read the file.']);
  }
  const read = readJob(text);
  if (!read.ok) return say(issueLines(read.issues));
  handles.delete(store);
  store.getState().open(read.value);
  store.getState().notify(null);
}

/** The part of the file system's picker that is used; not every browser has it, and TypeScript's own types lack it. */
interface FileHandle {
  readonly name: string;
  createWritable(): Promise<{ write(text: string): Promise<void>; close(): Promise<void> }>;
}
interface Picker {
  showSaveFilePicker?(options: {
    suggestedName: string;
    types: readonly { description: string; accept: Readonly<Record<string, readonly string[]>> }[];
  }): Promise<FileHandle>;
}

/** The file that a document was saved to on this page: saving again goes to the same one. */
const handles = new WeakMap<AppStore, { readonly documentId: string; readonly handle: FileHandle }>();

/** The name under which a job is saved. */
export const jobFileName = (job: Job): string => fileName(job.name, 'job.json');

/** Saves the job on the board to a file: where the browser allows it, to one the user picks; elsewhere by download. */
export async function saveFile(store: AppStore): Promise<void> {
  const { document, documentId, notify } = store.getState();
  const { showSaveFilePicker } = window as Window & Picker;
  if (!showSaveFilePicker) {
    download(writeJob(document), jobFileName(document), 'application/json');
    return;
  }
  try {
    const known = handles.get(store);
    const handle =
      known?.documentId === documentId
        ? known.handle
        : await showSaveFilePicker.call(window, {
            suggestedName: jobFileName(document),
            types: [{ description: 'Job', accept: { 'application/json': ['.json'] } }],
          });
    const writable = await handle.createWritable();
    await writable.write(writeJob(document));
    await writable.close();
    handles.set(store, { documentId, handle });
    notify({ tone: 'info', text: `Saved to “${handle.name}”.` });
  } catch (reason) {
    // The user closed the picker: nothing to say.
    if (reason instanceof DOMException && reason.name === 'AbortError') return;
    handles.delete(store);
    download(writeJob(document), jobFileName(document), 'application/json');
    notify({ tone: 'info', text: 'The file could not be written in place, so the job was downloaded instead.' });
  }
}
