import fc from 'fast-check';
import { expect, test } from 'vitest';
import { indexAt } from '../../../app/scene/ranges';

test('an item belongs to the thing whose stretch it falls in', () => {
  const starts = [0, 12, 12, 30];
  expect([0, 11, 12, 29, 30, 41].map((item) => indexAt(starts, 42, item))).toEqual([0, 0, 2, 2, 3, 3]);
});

test('what lies outside all things belongs to none', () => {
  expect(indexAt([0, 12], 20, -1)).toBe(-1);
  expect(indexAt([0, 12], 20, 20)).toBe(-1);
  expect(indexAt([0, 12], 20, Number.NaN)).toBe(-1);
  expect(indexAt([], 0, 0)).toBe(-1);
});

test('agrees with walking along the things one by one', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(9), { minLength: 1, maxLength: 30 }), (sizes) => {
      const owner: number[] = [];
      const starts = sizes.map((size, i) => {
        const start = owner.length;
        for (let k = 0; k < size; k++) owner.push(i);
        return start;
      });
      expect(owner.map((_, item) => indexAt(starts, owner.length, item))).toEqual(owner);
    }),
  );
});
