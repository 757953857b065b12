import wasmUrl from 'highs/runtime?url';
import { firstPlan, loadLp, reorderTogether, settingsOf, startCutting } from '../../src/cut';
import { cutsAt } from '../cutting/cuts-at';
import { readTyped } from '../cutting/typed';
import { openDesk } from './desk';
import type { Answer, Order, Question, Reply } from './messages';

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

function answer(question: Question): Reply {
  if (question.what === 'rearranged') return { what: 'rearranged', planned: reorderTogether(question.planned) };
  if (question.what === 'cuts')
    return { what: 'cuts', cuts: cutsAt({ batch: question, plan: question.plan }, question.index) };
  if (question.what === 'list') return { what: 'list', read: readTyped(question.list, question.units) };
  const { planned, parts, blockKerf } = question;
  return { what: 'settings', settings: settingsOf(planned, parts, { blockKerf }) };
}

const desk = openDesk({
  post: (answer) => scope.postMessage(answer),
  now: () => performance.now(),
  turn: () =>
    new Promise((resolve) => {
      go = resolve;
      turns.port2.postMessage(null);
    }),
  rest: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
  loadLp: () => loadLp(wasmUrl),
  firstPlan,
  startCutting,
  answer,
});
scope.addEventListener('message', ({ data }) => desk.hear(data));
scope.postMessage({ say: 'ready' });
