import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type BatchAnswer, type Hand, openCutters, PATIENCE } from '../../../app/effects/cutting';
import type { Answer, Order } from '../../../app/workers/messages';
import { plan, problem } from './plans';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Workers that do nothing by themselves. */
function world() {
  const hands: { orders: Order[]; gone: boolean; say: (answer: Answer) => void; break: (message: string) => void }[] =
    [];
  const heard: BatchAnswer[] = [];
  const cutters = openCutters(
    (answer) => heard.push(answer),
    () => {
      const hand: Hand = {
        onmessage: null,
        onerror: null,
        postMessage: (order) => mine.orders.push(order),
        terminate: () => {
          mine.gone = true;
        },
      };
      const mine = {
        orders: [] as Order[],
        gone: false,
        say: (data: Answer) => hand.onmessage?.({ data } as MessageEvent<Answer>),
        break: (message: string) => hand.onerror?.({ message } as ErrorEvent),
      };
      hands.push(mine);
      return hand;
    },
  );
  return { cutters, hands, heard };
}

const ask = (batch: string, revision: number): Order & { readonly say: 'plan' } => ({
  say: 'plan',
  batch,
  revision,
  problem,
  seed: 1,
  ms: 2000,
});
const answer = (batch: string, revision: number) =>
  ({ say: 'plan', batch, revision, plan, stand: 'first', spent: 0 }) as const;

describe('the cutters', () => {
  it('are hired with the first problem, and heard', () => {
    const { cutters, hands, heard } = world();
    cutters.order({ say: 'first', batch: 'a', revision: 1 });
    expect(hands).toHaveLength(0);
    cutters.order(ask('a', 1));
    expect(hands).toHaveLength(1);
    hands[0]!.say({ say: 'ready' });
    hands[0]!.say(answer('a', 1));
    expect(heard).toEqual([answer('a', 1)]);
  });

  it('can be hired before there is anything to do', () => {
    const { cutters, hands } = world();
    cutters.hire();
    cutters.order(ask('a', 1));
    expect(hands).toHaveLength(1);
    expect(hands[0]!.orders).toEqual([ask('a', 1)]);
  });

  it('go on for as long as they were told last, when one takes over from another', () => {
    const { cutters, hands } = world();
    cutters.order({ ...ask('a', 1), ms: 300, ahead: true });
    hands[0]!.say({ say: 'ready' });
    hands[0]!.say(answer('a', 1));
    cutters.order({ say: 'go on', batch: 'a', revision: 1, ms: 3000 });
    cutters.order(ask('b', 2));
    vi.advanceTimersByTime(PATIENCE + 1);
    expect(hands[1]!.orders).toEqual([{ ...ask('a', 1), ms: 3000, ahead: false }, ask('b', 2)]);
  });

  it('are not heard about what has changed meanwhile, or is no longer wanted', () => {
    const { cutters, hands, heard } = world();
    cutters.order(ask('a', 1));
    cutters.order(ask('a', 2));
    hands[0]!.say(answer('a', 1));
    hands[0]!.say(answer('b', 1));
    expect(heard).toEqual([]);
    hands[0]!.say(answer('a', 2));
    cutters.order({ say: 'forget', batch: 'a', revision: 2 });
    hands[0]!.say(answer('a', 2));
    expect(heard).toEqual([answer('a', 2)]);
  });

  it('are replaced when one is deep in something old, and the new one gets what is wanted', async () => {
    const { cutters, hands, heard } = world();
    cutters.order(ask('a', 1));
    hands[0]!.say({ say: 'ready' });
    hands[0]!.say(answer('a', 1));
    cutters.order(ask('b', 2));
    cutters.order(ask('c', 3));
    cutters.order({ say: 'forget', batch: 'c', revision: 3 });
    const reply = cutters.ask({ what: 'rearranged', planned: [] });
    vi.advanceTimersByTime(PATIENCE + 1);
    expect(hands).toHaveLength(2);
    expect(hands[0]!.gone).toBe(true);
    expect(hands[1]!.orders.map((order) => (order.say === 'ask' ? 'ask' : order.batch))).toEqual(['a', 'b', 'ask']);
    hands[0]!.say(answer('b', 2));
    expect(heard).toHaveLength(1);
    hands[1]!.say(answer('b', 2));
    expect(heard).toHaveLength(2);
    hands[1]!.say({ say: 'told', number: 1, reply: { what: 'rearranged', planned: [] } });
    expect(await reply).toEqual({ what: 'rearranged', planned: [] });
  });

  it('are not replaced while they are still being loaded, nor when they have answered', () => {
    const { cutters, hands } = world();
    cutters.order(ask('a', 1));
    vi.advanceTimersByTime(10 * PATIENCE);
    expect(hands).toHaveLength(1);
    hands[0]!.say({ say: 'ready' });
    cutters.order(ask('a', 2));
    hands[0]!.say(answer('a', 2));
    vi.advanceTimersByTime(10 * PATIENCE);
    expect(hands).toHaveLength(1);
  });

  it('say of every batch when they can’t be had, and can be hired again', async () => {
    const { cutters, hands, heard } = world();
    cutters.order(ask('a', 1));
    cutters.order(ask('b', 2));
    const reply = cutters.ask({ what: 'rearranged', planned: [] });
    hands[0]!.break('blocked');
    expect(heard).toEqual([
      { say: 'trouble', batch: 'a', revision: 1, why: 'blocked' },
      { say: 'trouble', batch: 'b', revision: 2, why: 'blocked' },
    ]);
    await expect(reply).rejects.toThrow('blocked');
    cutters.order(ask('a', 3));
    expect(hands).toHaveLength(2);
  });

  it('say why a question has no answer', async () => {
    const { cutters, hands } = world();
    const reply = cutters.ask({ what: 'rearranged', planned: [] });
    hands[0]!.say({ say: 'at a loss', number: 1, why: 'no idea' });
    await expect(reply).rejects.toThrow('no idea');
  });
});
