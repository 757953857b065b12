import wasmUrl from 'highs/runtime?url';
import { firstPlan, loadLp, reorderTogether, settingsOf, startCutting } from '../../src/cut';
import { openDesk } from './desk';
import type { Answer, Order } from './messages';

/** What is used of a worker's own scope; the page's types don't have it. */
interface Scope {
  postMessage(answer: Answer): void;
  addEventListener(what: 'message', hear: (event: MessageEvent<Order>) => void): void;
}
const scope = self as unknown as Scope;

// A message to oneself takes its turn behind those that wait, and comes sooner than any timer.
const turns = new MessageChannel();
let go: (() => void) | undefined;
turns.port1.onmessage = () => go?.();

const desk = openDesk({
  post: (answer) => scope.postMessage(answer),
  now: () => performance.now(),
  turn: () =>
    new Promise((resolve) => {
      go = resolve;
      turns.port2.postMessage(null);
    }),
  loadLp: () => loadLp(wasmUrl),
  firstPlan,
  startCutting,
  answer: (question) =>
    question.what === 'settings'
      ? { what: 'settings', settings: settingsOf(question.planned, question.parts, { blockKerf: question.blockKerf }) }
      : { what: 'rearranged', planned: reorderTogether(question.planned) },
});
scope.addEventListener('message', ({ data }) => desk.hear(data));
scope.postMessage({ say: 'ready' });
