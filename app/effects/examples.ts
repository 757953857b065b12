import { readJob } from '../../src/flow';
import type { AppStore } from '../store/store';

/** The example jobs that come with the app; the first is the one it opens on. */
export const EXAMPLES = [
  { file: 'corner-return', label: 'Servery: a corner, a free end with a return' },
  { file: 'straight', label: 'Tea hatch: straight, between two walls' },
  { file: 'canted', label: 'Bar: round three sides, with canted corners' },
  { file: 'flap', label: 'Ticket counter: a flap and gate between two runs' },
  { file: 'inside-corner', label: 'Cloakroom counter: an inside corner of 88.6°' },
] as const;

export type Example = (typeof EXAMPLES)[number];

/** A server that has not answered by then will not, ms. */
const PATIENCE = 5000;

/** Puts a fresh copy of an example on the board, as a document of its own. False when it can't be fetched or read. */
export async function openExample(store: AppStore, { file }: Example): Promise<boolean> {
  try {
    const answer = await fetch(`./examples/${file}.job.json`, { signal: AbortSignal.timeout(PATIENCE) });
    const read = answer.ok ? readJob(await answer.text()) : undefined;
    if (!read?.ok) return false;
    store.getState().open(read.value);
    return true;
  } catch {
    return false;
  }
}
