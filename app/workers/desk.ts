import type { LpSolver } from '../../src/cut';
import type { AnyCutPlan, CutSearch } from '../../src/vocabulary/cut-plan';
import type { CutProblem } from '../../src/vocabulary/cut-problem';
import { better } from './better';
import type { Answer, Asked, Order, Question, Reply, Stand } from './messages';

/** What the desk needs of the world and of the engine. */
export interface DeskMeans {
  readonly post: (answer: Answer) => void;
  /** Milliseconds, rising. */
  readonly now: () => number;
  /** Resolves at the worker's next turn, after the messages that have come meanwhile. */
  readonly turn: () => Promise<void>;
  /** Resolves after so many milliseconds. */
  readonly rest: (ms: number) => Promise<void>;
  readonly loadLp: () => Promise<LpSolver>;
  readonly firstPlan: (problem: CutProblem) => AnyCutPlan;
  readonly startCutting: (problem: CutProblem, how: { readonly seed: number; readonly lp?: LpSolver }) => CutSearch;
  readonly answer: (question: Question) => Reply;
}

/** How long the search works before it looks for messages, ms: orders wait for no longer than this, or a rest, and one step. */
export const SLICE = 20;

/**
 * While nobody waits, while the page draws what it has just asked for, and while the solver is new, the desk rests after so much work, ms,
 * for so long. Without that its work, and the browser's own on the solver's code that has just become busy (on several threads, for a
 * second), leave the page nothing of a small machine.
 */
export const GENTLE = { work: 8, rest: 24 } as const;

/** Work after which the solver's code is no longer new, ms. */
export const BROKEN_IN = 500;

/** How long the page may take to draw what it has asked for, ms. */
export const DRAWING = 250;

/** Better plans are sent no more often than this, ms: five in a second are as many as one can look at. */
export const LEAST_APART = 200;

/** One batch on the desk. */
interface Lot {
  readonly batch: string;
  readonly revision: number;
  readonly problem: CutProblem;
  readonly seed: number;
  allowed: number;
  spent: number;
  search?: CutSearch | undefined;
  /** The search's own best when it was last looked at. */
  looked?: AnyCutPlan;
  /** None yet: the quick plan is still to be made. */
  best?: AnyCutPlan;
  /** What the page has last been sent, and when. */
  sent?: AnyCutPlan;
  sentAt: number;
  /** What it was last told to be doing. */
  stand?: Stand;
  over: boolean;
  /** Stopped before there was any plan: the quick one is made all the same. */
  stoppedEarly: boolean;
  /** Nobody looks yet. */
  ahead: boolean;
}

const why = (reason: unknown): string => (reason instanceof Error ? reason.message : String(reason)).slice(0, 300);

/** What somebody waits for first; then what may still become cheaper, before what is proven; of these what has been worked on least. */
const least = (lots: readonly Lot[]): Lot | undefined =>
  lots
    .filter(({ over }) => !over)
    .sort(
      (a, b) =>
        Number(a.ahead) - Number(b.ahead) ||
        Number(a.best?.proven ?? false) - Number(b.best?.proven ?? false) ||
        a.spent - b.spent,
    )[0];

/**
 * Takes orders and works them off: the quick plans of all batches, then one slice of search after another; the batch being looked at first, then
 * the others in turn, so that what is soon proven waits for nothing that takes its time.
 */
export function openDesk(means: DeskMeans): { hear(order: Order): void } {
  const { post, now, turn, rest, loadLp, firstPlan, startCutting, answer } = means;
  const lots = new Map<string, Lot>();
  let first = '';
  let working = false;
  /** What came of loading it: none where it can't be had. */
  let solver: { readonly lp?: LpSolver } | undefined;
  let loading = false;
  let missed = false;
  /** Work done with it, ms. */
  let worked = 0;
  /** The page draws until then. */
  let drawingUntil = 0;

  /** Only a search needs it: no quick plan waits for it. */
  const load = async (): Promise<void> => {
    if (loading) return;
    loading = true;
    try {
      solver = { lp: await loadLp() };
      if (missed) post({ say: 'solver' });
      missed = false;
    } catch (reason) {
      solver = {};
      missed = true;
      post({ say: 'no solver', why: why(reason) });
    }
    loading = false;
    void work();
  };

  /** What could not be had while nobody looked is asked for once more; searches that were begun without it begin again. */
  const tryAgain = (): void => {
    if (!missed || loading) return;
    solver = undefined;
    for (const lot of lots.values()) {
      lot.search?.dispose();
      lot.search = undefined;
    }
  };

  const tell = (lot: Lot, stand: Stand): void => {
    const { batch, revision, spent, best } = lot;
    post({ say: 'plan', batch, revision, stand, spent, ...(!best || best === lot.sent ? {} : { plan: best }) });
    lot.sent = best;
    lot.sentAt = now();
    lot.stand = stand;
  };

  /** What the solver holds is not given back by itself. */
  const drop = (batch: string): void => {
    lots.get(batch)?.search?.dispose();
    lots.delete(batch);
  };

  const fail = ({ batch, revision }: Lot, reason: unknown): void => {
    if (lots.get(batch)?.revision === revision) drop(batch);
    post({ say: 'trouble', batch, revision, why: why(reason) });
  };

  const quick = (lot: Lot): void => {
    lot.best = firstPlan(lot.problem);
    drawingUntil = now() + DRAWING;
    tell(lot, lot.stoppedEarly ? 'stopped' : 'first');
  };

  const isGentle = (lot: Lot): boolean => lot.ahead || worked < BROKEN_IN || now() < drawingUntil;

  /** How far the search is interests only where it is looked at. */
  const isNews = ({ batch, best, sent, stand }: Lot): boolean =>
    batch === first || best !== sent || stand !== 'bettering';

  const slice = (lot: Lot, best: AnyCutPlan): void => {
    lot.search ??= startCutting(lot.problem, { seed: lot.seed, ...solver });
    const begun = now();
    const until = begun + (isGentle(lot) ? GENTLE.work : SLICE);
    let more = true;
    while (more && now() < until) more = lot.search.step();
    const work = now() - begun;
    lot.spent += work;
    worked += work;
    if (lot.search.best !== lot.looked) {
      lot.looked = lot.search.best;
      lot.best = better(best, lot.looked);
    }
    lot.over = !more || lot.spent >= lot.allowed;
    if (lot.over) tell(lot, more ? 'time' : 'done');
    else if (now() - lot.sentAt >= LEAST_APART && isNews(lot)) tell(lot, 'bettering');
  };

  const next = (): Lot | undefined => {
    const looked = lots.get(first);
    const inOrder = [...(looked ? [looked] : []), ...lots.values()];
    const lot = inOrder.find(({ best }) => !best) ?? (looked?.over === false ? looked : least([...lots.values()]));
    if (!lot?.best || solver) return lot;
    void load();
    return undefined;
  };

  const work = async (): Promise<void> => {
    if (working) return;
    working = true;
    for (let lot = next(); lot; lot = next()) {
      try {
        if (lot.best) {
          slice(lot, lot.best);
          if (isGentle(lot)) await rest(GENTLE.rest);
        } else quick(lot);
      } catch (reason) {
        fail(lot, reason);
      }
      await turn();
    }
    working = false;
  };

  const begin = ({ batch, revision, problem, seed, ms, ahead = false }: Order & { readonly say: 'plan' }): void => {
    drop(batch);
    lots.set(batch, {
      batch,
      revision,
      problem,
      seed,
      allowed: ms,
      spent: 0,
      sentAt: 0,
      over: false,
      stoppedEarly: false,
      ahead,
    });
  };

  const ask = ({ number, question }: Asked): void => {
    try {
      post({ say: 'told', number, reply: answer(question) });
    } catch (reason) {
      post({ say: 'at a loss', number, why: why(reason) });
    }
  };

  return {
    hear(order) {
      if (order.say === 'ask') return ask(order);
      drawingUntil = now() + DRAWING;
      const lot = lots.get(order.batch);
      if (order.say === 'plan') begin(order);
      else if (order.say === 'first') first = order.batch;
      else if (lot?.revision === order.revision) {
        if (order.say === 'go on') {
          lot.allowed = lot.spent + order.ms;
          // That it is at it again is told with the next slice.
          if (lot.over) lot.sentAt = 0;
          lot.over = false;
          lot.stoppedEarly = false;
          if (lot.ahead) tryAgain();
          lot.ahead = false;
        } else if (order.say === 'forget') drop(order.batch);
        else if (!lot.over) {
          lot.over = true;
          if (lot.best) tell(lot, 'stopped');
          else lot.stoppedEarly = true;
        }
      }
      void work();
    },
  };
}
