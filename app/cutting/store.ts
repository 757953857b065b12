import { createStore, type StoreApi } from 'zustand/vanilla';
import type { CutBatch, Offcut } from '../../src/vocabulary/cut-plan';
import type { Job } from '../../src/vocabulary/job';
import type { BatchAnswer, Cutters } from '../effects/cutting';
import type { CutSoFar } from '../effects/cutting-keep';
import { better } from '../workers/better';
import { carried } from './carry';
import { laidOf } from './copies';
import { atWork, type Held, keyOf, piecesKey } from './held';
import { createMemory } from './memory';
import { joined, restProblem } from './rest';
import { takenUp } from './taken-up';
import { FIRST_LIST, type TypedList } from './typed';

/** Where batches come from: the job on the board, or a list typed without one. */
export type Source = 'job' | 'typed';

export type CuttingView = 'plan' | 'settings' | 'rack' | 'typed';

export interface CuttingState {
  readonly held: Readonly<Record<string, Held>>;
  readonly order: Readonly<Record<Source, readonly string[]>>;
  readonly rack: readonly Offcut[];
  /** Time allowed to a batch's search, ms. */
  readonly allowed: number;
  /** How long "go on" goes on for, s. */
  readonly longer: number;
  /** Why the solver of linear programs can't be had; null while nothing is known against it. */
  readonly noSolver: string | null;
  readonly view: CuttingView;
  /** The batch looked at, of each source; its sheet or bar, and how many cuts of that have been stepped through. */
  readonly at: Readonly<Record<Source, string>>;
  readonly sheet: number;
  readonly cut: number;
  /** The document whose batches these are. */
  readonly documentId: string;
  /** The job that the batches were taken of while somebody looked; the one on the board may be a step ahead. */
  readonly taken: Job | null;
  /** The list without a job, as it is being typed; what is likely a slip in the one laid out. */
  readonly typed: TypedList;
  readonly typedWarnings: readonly string[];
}

/** Time for a batch unless something else is chosen, ms: with ten batches the whole job is done within half a minute. */
const USUAL_TIME = 2000;

/**
 * Time for a batch before anybody looks, ms: most are proven best by then, and what the search needs has been loaded and compiled, which would
 * hold up the page when it is opened.
 */
export const AHEAD = 300;

/** The same start for everybody: so a plan is found again. */
const SEED = 1;

export interface Cutting extends StoreApi<CuttingState> {
  /** The batches of a source as they are now; what has not changed stays as it is. */
  take(source: Source, batches: readonly CutBatch[], soFar?: readonly CutSoFar[]): void;
  /** The same before anybody looks: quick plans and a short search, until they are taken in earnest. */
  takeAhead(source: Source, batches: readonly CutBatch[]): void;
  /** What is being worked on ahead waits until it is taken again: its source is about to change. */
  letBe(source: Source): void;
  /** Lets all batches of a source go, and what is remembered of them. */
  forget(source: Source): void;
  hear(answer: BatchAnswer): void;
  goOn(id: string, ms: number): void;
  stop(id: string): void;
  /** A search of its own, for all that is not cut yet. */
  planAnew(id: string): void;
  /** Puts a batch as it is told; the search, if any, is called off. */
  put(id: string, held: Held): void;
  lookAt(source: Source, id: string, sheet?: number): void;
}

/** Somebody looks: the search goes on for the usual time, where it has not come to its end ahead. */
const inEarnest = ({ ahead: _, ...held }: Held): Held => ({
  ...held,
  stand: held.stand === 'time' ? 'bettering' : held.stand,
  allowed: held.spent + held.allowed,
});

/** The board for cutting. `cutters` do the work elsewhere and answer to `hear`. */
export function createCutting(cutters: Cutters): Cutting {
  const store = createStore<CuttingState>()(() => ({
    held: {},
    order: { job: [], typed: [] },
    rack: [],
    allowed: USUAL_TIME,
    longer: 10,
    noSolver: null,
    view: 'plan',
    at: { job: '', typed: '' },
    sheet: 0,
    cut: 0,
    documentId: '',
    taken: null,
    typed: FIRST_LIST,
    typedWarnings: [],
  }));
  const { getState, setState } = store;
  let revision = 0;
  const memory = createMemory();

  const set = (id: string, held: Held): void => setState({ held: { ...getState().held, [id]: held } });

  /** What of each batch the worker has. */
  const atDesk = new Map<string, number>();

  const order = (held: Held): void => {
    atDesk.set(held.batch.id, held.revision);
    cutters.order({
      say: 'plan',
      batch: held.batch.id,
      revision: held.revision,
      problem: restProblem(held),
      seed: SEED,
      ...(held.ahead ? { ms: AHEAD, ahead: true } : { ms: held.allowed }),
    });
  };

  const begin = (held: Held): void => {
    set(held.batch.id, held);
    order(held);
  };

  const nextRevision = (): number => {
    revision += 1;
    return revision;
  };

  const callOff = ({ batch, revision: asked }: Held): void => {
    if (!atDesk.delete(batch.id)) return;
    cutters.order({ say: 'forget', batch: batch.id, revision: asked });
  };

  const means = () => ({ memory, allowed: getState().allowed, nextRevision });

  const takeUp = (source: Source, batches: readonly CutBatch[], soFar: readonly CutSoFar[], ahead: boolean): void => {
    const { held, order: orders, at } = getState();
    const ids = batches.map(({ id }) => id);
    const next = { ...held };
    const begun: Held[] = [];
    const released: Held[] = [];
    for (const id of orders[source]) {
      if (ids.includes(id) || !held[id]) continue;
      memory.keepCut(held[id], getState().documentId);
      memory.remember(held[id]);
      callOff(held[id]);
      delete next[id];
    }
    for (const batch of batches) {
      const was = held[batch.id];
      // What failed before anybody looked is begun again when somebody does.
      const failedAhead = was?.ahead && !ahead && was.stand === 'failed';
      if (was && was.locked.length === 0 && was.key === keyOf(batch) && !failedAhead) {
        const shown = was.shown && was.shown.batch === was.batch ? { ...was.shown, batch } : was.shown;
        const same = { ...was, batch, shown };
        const seen = was.ahead && !ahead ? inEarnest(same) : same;
        const again = atWork(seen) && !atDesk.has(batch.id);
        // Under a number of its own: what is still on its way of the search that was called off is not about this one.
        const now = again ? { ...seen, revision: nextRevision(), spent: 0, allowed: getState().allowed } : seen;
        next[batch.id] = now;
        if (again) begun.push(now);
        else if (was.ahead && !ahead && atWork(now)) released.push(now);
        continue;
      }
      if (was && was.locked.length > 0 && piecesKey(was.batch) === piecesKey(batch)) {
        const { newer: _, ...rest } = was;
        next[batch.id] = was.key === keyOf(batch) ? rest : { ...rest, newer: batch };
        continue;
      }
      if (was) memory.remember(was);
      const mine = soFar.find((one) => one.batch.id === batch.id) ?? memory.takeCut(batch.id);
      const found = takenUp(batch, was, was ? undefined : mine, means());
      const now: Held = ahead && found.stand === 'waiting' ? { ...found, ahead } : found;
      next[batch.id] = now;
      if (now.stand === 'waiting') begun.push(now);
      else if (was) callOff(was);
    }
    const looked = ids.includes(at[source]) ? at[source] : (ids[0] ?? '');
    setState({ held: next, order: { ...orders, [source]: ids }, at: { ...at, [source]: looked } });
    // The one that is looked at comes first.
    if (begun.length + released.length > 0 && looked && !ahead)
      cutters.order({ say: 'first', batch: looked, revision: 0 });
    for (const held of begun.sort((a, b) => Number(b.batch.id === looked) - Number(a.batch.id === looked))) order(held);
    for (const { batch, revision: asked, allowed, spent } of released)
      cutters.order({ say: 'go on', batch: batch.id, revision: asked, ms: allowed - spent });
  };

  const take: Cutting['take'] = (source, batches, soFar = []) => takeUp(source, batches, soFar, false);

  const hear: Cutting['hear'] = (answer) => {
    if (answer.say === 'no solver') return setState({ noSolver: answer.why });
    if (answer.say === 'solver') return setState({ noSolver: null });
    const held = getState().held[answer.batch];
    if (!held || held.revision !== answer.revision) return;
    if (answer.say === 'trouble') {
      atDesk.delete(answer.batch);
      return set(answer.batch, { ...held, stand: 'failed', why: answer.why });
    }
    const { stand, spent, plan } = answer;
    const now = { ...held, stand, spent };
    if (!plan) return set(answer.batch, now);
    const found = joined(held, plan);
    const old = held.shown?.batch === held.batch ? held.shown : null;
    const best = old ? better(old.plan, found.shown.plan) : found.shown.plan;
    // It may have been lent a bound.
    const isFound = laidOf(best) === laidOf(found.shown.plan);
    const shown = { ...(old && !isFound ? old : found.shown), plan: best };
    set(answer.batch, {
      ...now,
      shown,
      locked: isFound ? found.locked : held.locked,
      boundByCut: held.locked.length > 0 || (!isFound && held.boundByCut),
    });
  };

  return {
    ...store,
    take,
    takeAhead: (source, batches) => takeUp(source, batches, [], true),
    letBe(source) {
      const { held, order: orders } = getState();
      for (const id of orders[source]) if (held[id]?.ahead && atWork(held[id])) callOff(held[id]);
    },
    hear,
    forget(source) {
      take(source, []);
      memory.clear();
    },
    goOn(id, ms) {
      const held = getState().held[id];
      if (!held) return;
      // The worker has forgotten it meanwhile: it starts again, and what is better counts.
      if (atDesk.get(id) !== held.revision)
        return begin({
          ...held,
          before: held.shown,
          revision: nextRevision(),
          stand: 'waiting',
          spent: 0,
          allowed: ms,
        });
      set(id, { ...held, before: held.shown, stand: 'bettering', allowed: held.spent + ms });
      cutters.order({ say: 'go on', batch: id, revision: held.revision, ms });
    },
    stop(id) {
      const held = getState().held[id];
      if (held) cutters.order({ say: 'stop', batch: id, revision: held.revision });
    },
    planAnew(id) {
      const held = getState().held[id];
      if (!held) return;
      const { newer, ...now } = held;
      const still = newer && held.shown && carried(held.shown, held.locked, newer);
      const minded = still
        ? { batch: still.shown.batch, key: keyOf(newer), shown: still.shown, locked: still.locked }
        : {};
      begin({
        ...now,
        ...minded,
        revision: nextRevision(),
        stand: 'waiting',
        spent: 0,
        allowed: getState().allowed,
        before: held.shown,
      });
    },
    put(id, held) {
      const was = getState().held[id];
      if (was) callOff(was);
      const { stand } = held;
      const still = stand === 'waiting' || stand === 'first' || stand === 'bettering' ? 'stopped' : stand;
      set(id, { ...held, revision: nextRevision(), stand: still });
    },
    lookAt(source, id, sheet = 0) {
      const { at, held } = getState();
      setState({ at: { ...at, [source]: id }, sheet, cut: 0 });
      const now = held[id];
      if (now) cutters.order({ say: 'first', batch: id, revision: now.revision });
    },
  };
}
