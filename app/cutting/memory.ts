import type { CutBatch } from '../../src/vocabulary/cut-plan';
import type { CutSoFar } from '../effects/cutting-keep';
import { type Held, keyOf, piecesKey } from './held';

/** Plans that are remembered for when their problem comes back, by an undo. */
const MOST_REMEMBERED = 40;

/** What has been, for when it comes back. */
export interface Memory {
  /** A batch as it stood, under its problem. */
  remember(held: Held): void;
  recall(batch: CutBatch): Held | undefined;
  /** The same where something of it had been cut: then the stock may be another by now, for its leftovers lie in the rack. */
  recallCut(batch: CutBatch): Held | undefined;
  /** What has been cut of a batch that goes. */
  keepCut(held: Held, documentId: string): void;
  /** That, once, for when parts of its stuff have come back. */
  takeCut(id: string): CutSoFar | undefined;
  clear(): void;
}

function put(all: Map<string, Held>, key: string, held: Held): void {
  all.delete(key);
  all.set(key, held);
  const [oldest] = all.keys();
  if (all.size > MOST_REMEMBERED && oldest !== undefined) all.delete(oldest);
}

export function createMemory(): Memory {
  const remembered = new Map<string, Held>();
  const cut = new Map<string, Held>();
  const gone = new Map<string, CutSoFar>();
  return {
    remember(held) {
      // One that nobody has looked at has nothing that would not come again in a moment.
      if (!held.shown || held.shown.batch !== held.batch || held.ahead) return;
      put(remembered, `${held.batch.id} ${held.key}`, held);
      const pieces = `${held.batch.id} ${piecesKey(held.batch)}`;
      if (held.locked.length > 0) put(cut, pieces, held);
      else cut.delete(pieces);
    },
    recall: (batch) => remembered.get(`${batch.id} ${keyOf(batch)}`),
    recallCut: (batch) => cut.get(`${batch.id} ${piecesKey(batch)}`),
    keepCut({ batch, shown, locked, done }, documentId) {
      if (shown && locked.length > 0) gone.set(batch.id, { ...shown, documentId, locked, done });
    },
    takeCut(id) {
      const cut = gone.get(id);
      gone.delete(id);
      return cut;
    },
    clear() {
      remembered.clear();
      cut.clear();
      gone.clear();
    },
  };
}
