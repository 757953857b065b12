import type { CutSoFar } from '../effects/cutting-keep';
import type { AppStore } from '../store/store';
import type { Held } from './held';
import type { Rack } from './rack';
import type { Cutting } from './store';

/** What is to be kept of a batch: nothing, while nothing of it is cut. */
function soFarOf(documentId: string, held: Held | undefined): CutSoFar | undefined {
  if (!held?.shown || held.locked.length === 0) return undefined;
  const { batch, plan, copies } = held.shown;
  return { documentId, batch, plan, copies, locked: held.locked, done: held.done };
}

/** Keeps how far the job on the board is cut, from now on, so that it is found again at the next visit. */
export function keepSoFar(app: AppStore, cutting: Cutting, rack: Rack): () => void {
  let line: Promise<unknown> = Promise.resolve();
  // The board's own document: while another job is being opened, its batches are still those of the one before.
  return cutting.subscribe(({ held, order, documentId }, { held: was }) => {
    if (held === was) return;
    for (const id of order.job) {
      const [now, then] = [held[id], was[id]];
      // What has just been found, or is no longer on the board, is not to be written over.
      if (
        !now ||
        !then ||
        now === then ||
        (now.locked === then.locked && now.done === then.done && now.shown === then.shown)
      )
        continue;
      const soFar = soFarOf(documentId, now);
      if (!soFar && !soFarOf(documentId, then)) continue;
      line = line
        .then(() => rack.keep())
        .then((keep) => (soFar ? keep.keepCut(soFar) : keep.dropCut(documentId, id)))
        .catch(() => app.getState().notify({ tone: 'trouble', text: 'What is cut already could not be kept.' }));
    }
  });
}
