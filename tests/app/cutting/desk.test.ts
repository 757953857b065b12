import { describe, expect, it } from 'vitest';
import { better } from '../../../app/workers/better';
import { BROKEN_IN, GENTLE, LEAST_APART, openDesk, SLICE } from '../../../app/workers/desk';
import type { Answer, Order } from '../../../app/workers/messages';
import type { AnyCutPlan } from '../../../src/vocabulary/cut-plan';
import { desk, never, order } from './a-desk';
import { priced, problem } from './plans';

it('a bound is lent to the plan in hand only where the same pieces are placed', () => {
  const short = (piece: number, cost: number, bound: number): AnyCutPlan => ({
    ...priced(cost, bound),
    unplaced: [{ piece, quantity: 1, why: 'no stock left' }],
  });
  expect(better(priced(20, 10), priced(30, 15))).toEqual({ ...priced(20, 15), proven: false });
  expect(better(priced(20, 10), priced(30, 25))).toEqual(priced(20, 20));
  // The plan in hand lends its own too: what was proven stays so.
  expect(better(priced(20, 20), priced(20, 15))).toEqual(priced(20, 20));
  expect(better(priced(30, 15), priced(20, 10))).toEqual({ ...priced(20, 15), proven: false });
  expect(better(short(0, 20, 10), short(0, 30, 15))).toEqual(short(0, 20, 15));
  expect(better(short(0, 30, 15), short(1, 20, 10))).toEqual(short(1, 20, 10));
  const held = short(0, 20, 10);
  expect(better(held, short(1, 30, 25))).toBe(held);
});

describe('the desk', () => {
  it('gives all quick plans first, whether or not the solver is loaded', async () => {
    const { hear, plans, go } = desk({ lp: () => new Promise(() => undefined) });
    hear(order('a', 1));
    hear(order('b', 2));
    await go(3);
    expect(plans()).toMatchObject([
      { batch: 'a', revision: 1, stand: 'first', plan: { cost: 30 } },
      { batch: 'b', revision: 2, stand: 'first', plan: { cost: 30 } },
    ]);
  });

  it('asks once more for a solver that could not be had ahead, as soon as somebody looks', async () => {
    let here = false;
    const { hear, posted, solvers, go, givenBack } = desk({
      way: never,
      lp: () => (here ? Promise.resolve('solver' as never) : Promise.reject(new Error('no network'))),
    });
    hear({ ...order('a', 1, 100), ahead: true } as Order);
    await go(20);
    expect(solvers).toEqual([undefined]);
    here = true;
    hear({ say: 'go on', batch: 'a', revision: 1, ms: 100 });
    await go(20);
    expect(solvers).toEqual([undefined, 'solver']);
    expect(givenBack(), 'the search that had none').toBe(1);
    expect(posted.filter(({ say }) => say === 'no solver' || say === 'solver')).toEqual([
      { say: 'no solver', why: 'no network' },
      { say: 'solver' },
    ]);
  });

  it('plans what is looked at before the others, and not what is forgotten before its turn', async () => {
    const { hear, plans, go } = desk();
    for (const batch of ['a', 'b', 'c', 'd']) hear(order(batch, 1));
    hear({ say: 'first', batch: 'd', revision: 1 });
    hear({ say: 'forget', batch: 'b', revision: 1 });
    await go(6);
    expect(plans().flatMap(({ batch, stand }) => (stand === 'first' ? [batch] : []))).toEqual(['a', 'd', 'c']);
  });

  it('makes the quick plan of what is stopped before its turn, and no more', async () => {
    const { hear, plans, go } = desk({ way: never });
    hear(order('a', 1));
    hear(order('b', 1));
    hear({ say: 'stop', batch: 'b', revision: 1 });
    await go(5);
    expect(plans().filter(({ batch }) => batch === 'b')).toMatchObject([{ stand: 'stopped', plan: { cost: 30 } }]);
  });

  it('sends better plans at most every so many milliseconds, and ends with the best', async () => {
    const { hear, plans, times, go, clock } = desk({ way: never });
    hear(order('a', 1, 1000));
    await go(120);
    const [first, ...later] = plans();
    expect(first!.stand).toBe('first');
    expect(later.at(-1)!.stand).toBe('time');
    const sent = times.slice(1, -1);
    for (const [i, at] of sent.slice(1).entries()) expect(at - sent[i]!).toBeGreaterThanOrEqual(LEAST_APART);
    expect(later.length).toBeLessThanOrEqual(clock() / LEAST_APART + 1);
    // A step a hundredth of a second: the best of a hundred.
    expect(later.at(-1)!.plan!.cost).toBeCloseTo(29 - 99e-4, 6);
  });

  it('says when nothing is left to better', async () => {
    const { hear, plans, go } = desk({ way: [priced(25, 10), priced(20, 20)] });
    hear(order('a', 1));
    await go(3);
    expect(plans().at(-1)).toMatchObject({ stand: 'done', plan: { cost: 20, proven: true } });
  });

  it('works on what is looked at first', async () => {
    const { hear, plans, go } = desk({ way: never });
    hear(order('a', 1, 100));
    hear(order('b', 1, 100));
    hear({ say: 'first', batch: 'b', revision: 1 });
    await go(30);
    const over = plans().filter(({ stand }) => stand === 'time');
    expect(over.map(({ batch }) => batch)).toEqual(['b', 'a']);
  });

  it('stops, and goes on from where it stopped', async () => {
    const { hear, plans, go, solvers } = desk({ way: never });
    hear(order('a', 1, 100_000));
    await go(5);
    hear({ say: 'stop', batch: 'a', revision: 1 });
    const stopped = plans().at(-1)!;
    expect(stopped.stand).toBe('stopped');
    const said = plans().length;
    await go(5);
    expect(plans().length).toBe(said);
    hear({ say: 'go on', batch: 'a', revision: 1, ms: 200 });
    await go(30);
    expect(plans().at(-1)).toMatchObject({ stand: 'time' });
    expect(plans().at(-1)!.spent).toBeGreaterThanOrEqual(stopped.spent + 200);
    expect(plans().at(-1)!.plan!.cost).toBeLessThan(stopped.plan!.cost);
    expect(solvers).toHaveLength(1);
  });

  it('drops what was asked of a batch before, and orders about it', async () => {
    const { hear, plans, go, givenBack } = desk({ way: never });
    hear(order('a', 1, 100_000));
    await go(3);
    hear(order('a', 2, 100));
    expect(givenBack(), 'the search that is dropped').toBe(1);
    hear({ say: 'go on', batch: 'a', revision: 1, ms: 100_000 });
    await go(40);
    const after = plans().slice(plans().findIndex(({ revision }) => revision === 2));
    expect(after.every(({ revision }) => revision === 2)).toBe(true);
    expect(after.at(-1)!.stand).toBe('time');
    hear(order('b', 3, 100_000));
    hear({ say: 'forget', batch: 'b', revision: 3 });
    const said = plans().length;
    await go(10);
    expect(plans().length).toBe(said);
  });

  it('keeps the quick plan while the search has nothing as good, with the better bound', async () => {
    const { hear, plans, go } = desk({ first: priced(22, 5), way: [priced(30, 10), priced(30, 20)] });
    hear(order('a', 1));
    await go(3);
    expect(plans().at(-1)!.plan).toMatchObject({ cost: 22, bound: 20, proven: false });
  });

  it('works without the solver where that can’t be had, and says so once', async () => {
    const { hear, posted, plans, solvers, go } = desk({
      way: [priced(20, 20)],
      lp: () => Promise.reject(new Error('no network')),
    });
    hear(order('a', 1));
    hear(order('b', 1));
    await go(6);
    expect(posted.filter(({ say }) => say === 'no solver')).toEqual([{ say: 'no solver', why: 'no network' }]);
    expect(plans().filter(({ stand }) => stand === 'done')).toHaveLength(2);
    expect(solvers).toEqual([undefined, undefined]);
  });

  it('looks for orders after every slice', async () => {
    const { hear, go, clock } = desk({ way: never });
    hear(order('a', 1, 100_000));
    await go(BROKEN_IN / GENTLE.work + 5);
    const before = clock();
    await go(1);
    expect(clock() - before).toBe(SLICE);
  });

  it('says what goes wrong, and goes on with the others', async () => {
    const posted: Answer[] = [];
    const { hear } = openDesk({
      post: (answer) => posted.push(answer),
      now: () => 0,
      turn: () => new Promise((resolve) => setImmediate(resolve)),
      rest: async () => undefined,
      loadLp: async () => 'solver' as never,
      firstPlan: (asked) => {
        if (asked.kerf > 1) throw new Error('too wide a blade');
        return priced(30, 10);
      },
      startCutting: (asked) => {
        if (asked.kerf === 1) throw new Error('no way');
        return { best: priced(20, 20), step: () => false, dispose: () => undefined };
      },
      answer: () => {
        throw new Error('no idea');
      },
    });
    hear({ ...order('a', 1), problem: { ...problem, kerf: 2 } } as Order);
    hear({ ...order('b', 2), problem: { ...problem, kerf: 1 } } as Order);
    hear(order('c', 3));
    hear({ say: 'ask', number: 7, question: { what: 'rearranged', planned: [] } });
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(posted).toContainEqual({ say: 'trouble', batch: 'a', revision: 1, why: 'too wide a blade' });
    expect(posted).toContainEqual({ say: 'trouble', batch: 'b', revision: 2, why: 'no way' });
    expect(posted).toContainEqual({ say: 'at a loss', number: 7, why: 'no idea' });
    expect(posted.at(-1)).toMatchObject({ say: 'plan', batch: 'c', stand: 'done' });
  });
});
