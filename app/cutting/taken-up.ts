import type { CutBatch } from '../../src/vocabulary/cut-plan';
import type { CutSoFar } from '../effects/cutting-keep';
import { carried } from './carry';
import { atWork, freshHeld, type Held, keyOf, piecesKey, type Shown, shownOf } from './held';
import type { Memory } from './memory';
import { isComparable, isSameList } from './wanted';

interface Means {
  readonly memory: Memory;
  /** Time for a search, ms. */
  readonly allowed: number;
  /** A number that no search has had yet. */
  readonly nextRevision: () => number;
}

/** What has been looked at of a batch: what it is compared with once it has changed. */
const lookedAt = (was: Held | undefined): Shown | null => (was?.ahead ? was.before : (was?.shown ?? null));

/** The batch with what has been cut of it already, where that still counts; the batch that stood in its place before, and what is kept of earlier visits. */
export function takenUp(
  batch: CutBatch,
  before: Held | undefined,
  soFar: CutSoFar | undefined,
  { memory, allowed, nextRevision }: Means,
): Held {
  // Another list laid out in the place of one has nothing to do with it.
  const was = before && isSameList(before.batch, batch) ? before : undefined;
  const compared = was && isComparable(was.batch, batch);
  const cutBefore = was && was.locked.length > 0 && was.shown ? { ...was, ...was.shown } : soFar;
  if (cutBefore && piecesKey(cutBefore.batch) === piecesKey(batch)) {
    const { plan, copies, locked, done } = cutBefore;
    const fresh = freshHeld(cutBefore.batch, nextRevision(), allowed);
    return {
      ...fresh,
      shown: shownOf(cutBefore.batch, plan, copies),
      stand: 'stopped',
      locked,
      done,
      boundByCut: true,
    };
  }
  // What has been cut since then is not forgotten for it, nor is what has been taken back since cut again.
  const counts = ({ locked }: Held): boolean =>
    cutBefore ? locked.length >= cutBefore.locked.length : locked.length === 0;
  const back = memory.recall(batch);
  if (back?.shown && counts(back))
    return {
      ...back,
      batch,
      revision: nextRevision(),
      shown: { ...back.shown, batch },
      // A search that was left begins again.
      ...(atWork(back)
        ? { stand: 'waiting', spent: 0, allowed }
        : { stand: back.stand === 'by hand' ? 'by hand' : 'stopped' }),
    };
  const cut = memory.recallCut(batch);
  if (cut && counts(cut)) return { ...cut, revision: nextRevision(), stand: 'stopped', newer: batch };
  const fresh = freshHeld(batch, nextRevision(), allowed);
  const still = cutBefore && carried(cutBefore, cutBefore.locked, batch, cutBefore.done);
  if (still) {
    const { shown, locked, whole } = still;
    return {
      ...fresh,
      batch: shown.batch,
      key: keyOf(shown.batch),
      shown,
      before: compared ? was.shown : null,
      locked,
      boundByCut: true,
      unlocked: !whole,
    };
  }
  return {
    ...fresh,
    shown: was?.shown ?? null,
    before: compared ? lookedAt(was) : null,
    unlocked: cutBefore !== undefined,
  };
}
