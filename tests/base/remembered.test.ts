import { expect, test, vi } from 'vitest';
import { remembered } from '../../src/base/remembered';

test('the last few answers are remembered by reference, older ones are let go', () => {
  const work = vi.fn(({ n }: { readonly n: number }) => [n]);
  const asked = remembered(work, 2);
  const [a, b, c] = [{ n: 1 }, { n: 2 }, { n: 3 }];
  expect(asked(a)).toBe(asked(a));
  expect(asked(b)).toEqual([2]);
  expect(work).toHaveBeenCalledTimes(2);
  // Equal, but another thing.
  expect(asked({ n: 1 })).toEqual([1]);
  expect(work).toHaveBeenCalledTimes(3);
  // Of the two that are kept, b was asked for last: c takes the other's place.
  expect(asked(b)).toEqual([2]);
  asked(c);
  expect(asked(b)).toEqual([2]);
  expect(work).toHaveBeenCalledTimes(4);
  asked(a);
  expect(work).toHaveBeenCalledTimes(5);
});

test('one answer is remembered unless more are asked for', () => {
  const work = vi.fn(({ n }: { readonly n: number }) => [n]);
  const asked = remembered(work);
  const [a, b] = [{ n: 1 }, { n: 2 }];
  asked(a);
  asked(a);
  expect(work).toHaveBeenCalledTimes(1);
  asked(b);
  asked(a);
  expect(work).toHaveBeenCalledTimes(3);
});

test('what throws is not remembered', () => {
  let calls = 0;
  const asked = remembered((_: object) => {
    if (calls++ === 0) throw new Error('once');
    return calls;
  });
  const key = {};
  expect(() => asked(key)).toThrow('once');
  expect(asked(key)).toBe(2);
  expect(asked(key)).toBe(2);
});
