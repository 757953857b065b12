import { describe, expect, it } from 'vitest';
import { BROKEN_IN, DRAWING, GENTLE } from '../../../app/workers/desk';
import type { Order } from '../../../app/workers/messages';
import { desk, never, order } from './a-desk';
import { priced, problem } from './plans';

describe('the desk is fair, and gentle to the page: it', () => {
  it('works on the others in turn, and last on what is proven already and what nobody looks at', async () => {
    const { hear, plans, go } = desk({
      way: never,
      first: ({ kerf }) => (kerf === 1 ? priced(10, 10) : priced(30, 10)),
    });
    const proven = { ...order('a', 1, 300), problem: { ...problem, kerf: 1 } } as Order;
    hear({ ...order('e', 1, 300), ahead: true } as Order);
    for (const one of [proven, order('b', 1, 300), order('c', 1, 300), order('d', 1, 300)]) hear(one);
    hear({ say: 'first', batch: 'd', revision: 1 });
    await go(150);
    const ended = plans().filter(({ stand }) => stand === 'time');
    expect(ended.map(({ batch }) => batch)).toEqual(['d', 'b', 'c', 'a', 'e']);
    const told = plans().filter(({ stand }) => stand !== 'first');
    const begun = told.findIndex(({ batch }) => batch === 'c');
    expect(begun, 'c is begun before b is over').toBeLessThan(told.indexOf(ended[1]!));
  });

  it('says how far the search is only where it is looked at', async () => {
    const found = priced(25, 10);
    const way = Array.from({ length: 10_000 }, () => found);
    for (const looked of [true, false]) {
      const { hear, plans, go } = desk({ way });
      hear(order('a', 1, 1500));
      hear({ say: 'first', batch: looked ? 'a' : 'b', revision: 1 });
      await go(150);
      const bettering = plans().filter(({ stand }) => stand === 'bettering');
      if (looked) expect(bettering.length).toBeGreaterThan(4);
      else expect(bettering).toHaveLength(1);
      expect(plans().at(-1)).toMatchObject({ stand: 'time' });
    }
  });

  it('rests between while the solver is new, and while the page draws what it has asked for', async () => {
    const { hear, go, clock, rests } = desk({ way: never, step: GENTLE.work });
    hear(order('a', 1, 100_000));
    await go(2);
    const before = clock();
    await go(1);
    expect(clock() - before, 'work and rest').toBe(GENTLE.work + GENTLE.rest);
    await go(2 * (BROKEN_IN / GENTLE.work));
    const rested = rests();
    expect(rested).toBeGreaterThanOrEqual(Math.floor(BROKEN_IN / GENTLE.work));
    await go(10);
    expect(rests(), 'broken in, and nothing asked').toBe(rested);
    hear({ say: 'first', batch: 'a', revision: 1 });
    const asked = clock();
    await go(20);
    expect(rests()).toBe(rested + Math.ceil(DRAWING / (GENTLE.work + GENTLE.rest)));
    expect(clock() - asked).toBeGreaterThan(DRAWING);
  });

  it('rests between while nobody looks, however long it has worked', async () => {
    const { hear, go, rests } = desk({ way: never });
    hear(order('a', 1, 100_000));
    await go(200);
    const before = rests();
    hear({ say: 'stop', batch: 'a', revision: 1 });
    hear({ ...order('b', 2, 100_000), ahead: true } as Order);
    await go(100);
    expect(rests() - before).toBeGreaterThanOrEqual(98);
    hear({ say: 'go on', batch: 'b', revision: 2, ms: 100_000 });
    await go(50);
    const looked = rests();
    await go(50);
    expect(rests(), 'somebody looks, and it is drawn').toBe(looked);
  });
});
