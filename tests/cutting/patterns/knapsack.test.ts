import fc from 'fast-check';
import { expect, test } from 'vitest';
import { knapsack } from '../../../src/cutting/patterns/knapsack';
import { SEED } from '../../base/seed';

const item = fc.record({
  size: fc.integer({ min: 1, max: 40 }),
  worth: fc.integer({ min: 1, max: 60 }),
  most: fc.integer({ min: 1, max: 3 }),
});

/** The same by dynamic programming over the room, one piece at a time. */
function most(items: readonly { size: number; worth: number; most: number }[], room: number): number {
  const best = new Array<number>(room + 1).fill(0);
  for (const { size, worth, most: copies } of items)
    for (let c = 0; c < copies; c += 1)
      for (let x = room; x >= size; x -= 1) best[x] = Math.max(best[x], best[x - size] + worth);
  return best[room];
}

test(`a knapsack holds the most that fits (seed ${SEED})`, () => {
  fc.assert(
    fc.property(fc.array(item, { maxLength: 9 }), fc.integer({ min: 0, max: 120 }), (unsorted, room) => {
      const items = [...unsorted].sort((a, b) => b.worth / b.size - a.worth / a.size);
      const { counts, worth } = knapsack(
        { sizes: items.map((i) => i.size), worths: items.map((i) => i.worth), most: items.map((i) => i.most) },
        room,
      );
      const sum = (of: (i: (typeof items)[number]) => number): number =>
        items.reduce((all, each, i) => all + counts[i] * of(each), 0);
      expect(sum((i) => i.size)).toBeLessThanOrEqual(room);
      expect(sum((i) => i.worth)).toBe(worth);
      expect(items.every((i, n) => counts[n] <= i.most)).toBe(true);
      expect(worth).toBe(most(items, room));
    }),
    { seed: SEED, numRuns: 300 },
  );
});
