import type { About, Answer, Asked, Order, Question, Reply } from '../workers/messages';

/** The part of a worker that is used. */
export interface Hand {
  postMessage(order: Order): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Answer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** A worker that has been silent for so long after a problem was handed to it is deep in an older one, ms. It is sent home. */
export const PATIENCE = 700;

const newHand = (): Hand => new Worker(new URL('../workers/cut.worker.ts', import.meta.url), { type: 'module' });

/** What is said of batches and of the solver. */
export type BatchAnswer = Exclude<Answer, { readonly say: 'ready' | 'told' | 'at a loss' }>;

interface Asking {
  readonly order: Asked;
  readonly resolve: (reply: Reply) => void;
  readonly reject: (reason: Error) => void;
}

/** Who works out the plans, away from the page. */
export interface Cutters {
  /** Hires the worker before there is anything to do, so that it is there by then. */
  hire(): void;
  order(order: Exclude<Order, Asked>): void;
  /** Rejects where it can't be answered. */
  ask(question: Question): Promise<Reply>;
  /** All is forgotten, and the memory given back. */
  close(): void;
}

/**
 * Hires the worker when the first problem comes, if not before. Answers about problems that have changed meanwhile are dropped here; a worker that
 * can't be interrupted is replaced, and what is still wanted handed to the new one.
 */
export function openCutters(hear: (answer: BatchAnswer) => void, hire: () => Hand = newHand): Cutters {
  let hand: Hand | undefined;
  let ready = false;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  /** What each batch was last asked, for another worker to take over. */
  const wanted = new Map<string, Order & { readonly say: 'plan' }>();
  const asked = new Map<number, Asking>();
  let lastAsked = 0;

  const quiet = (): void => {
    clearTimeout(waiting);
    waiting = undefined;
  };

  const listen = (answer: Answer): void => {
    quiet();
    if (answer.say === 'ready') ready = true;
    else if (answer.say === 'told') {
      asked.get(answer.number)?.resolve(answer.reply);
      asked.delete(answer.number);
    } else if (answer.say === 'at a loss') {
      asked.get(answer.number)?.reject(new Error(answer.why));
      asked.delete(answer.number);
    } else if (answer.say === 'no solver' || answer.say === 'solver') hear(answer);
    else if (wanted.get(answer.batch)?.revision === answer.revision) {
      if (answer.say === 'trouble') wanted.delete(answer.batch);
      hear(answer);
    }
  };

  const giveUp = (why: string): void => {
    for (const { reject } of asked.values()) reject(new Error(why));
    asked.clear();
  };

  const failed = (why: string): void => {
    const lost: readonly About[] = [...wanted.values()];
    dismiss();
    wanted.clear();
    giveUp(why);
    for (const { batch, revision } of lost) hear({ say: 'trouble', batch, revision, why });
  };

  const hired = (): Hand => {
    if (hand) return hand;
    ready = false;
    const fresh = hire();
    fresh.onmessage = ({ data }) => hand === fresh && listen(data);
    fresh.onerror = ({ message }) => hand === fresh && failed(message || 'the worker could not be loaded');
    hand = fresh;
    return fresh;
  };

  const dismiss = (): void => {
    quiet();
    hand?.terminate();
    hand = undefined;
  };

  const replace = (): void => {
    waiting = undefined;
    if (!ready) return;
    dismiss();
    for (const order of wanted.values()) hired().postMessage(order);
    for (const { order } of asked.values()) hired().postMessage(order);
  };

  return {
    hire: () => void hired(),
    order(order) {
      if (order.say === 'plan') {
        wanted.set(order.batch, order);
        waiting ??= setTimeout(replace, PATIENCE);
      } else if (order.say === 'forget') wanted.delete(order.batch);
      else if (order.say === 'go on') {
        const was = wanted.get(order.batch);
        if (was?.revision === order.revision) wanted.set(order.batch, { ...was, ms: order.ms, ahead: false });
      }
      if (hand || order.say === 'plan') hired().postMessage(order);
    },
    ask(question) {
      lastAsked += 1;
      const order: Asked = { say: 'ask', number: lastAsked, question };
      return new Promise((resolve, reject) => {
        asked.set(order.number, { order, resolve, reject });
        hired().postMessage(order);
      });
    },
    close() {
      dismiss();
      wanted.clear();
      giveUp('called off');
    },
  };
}
