import { expect, test } from 'vitest';
import { stepsIn } from '../../../app/assembly/steps';
import type { Step } from '../../../src/vocabulary/making';

const steps: readonly Step[] = [
  { number: 1, place: 'workshop', what: 'Frame.', section: 'S1', parts: ['a', 'b'] },
  { number: 2, place: 'dry fit', what: 'Try.', parts: [] },
  { number: 3, place: 'site', what: 'Fit.', parts: ['c'] },
];

test('a step has before it what the earlier ones put on', () => {
  expect(stepsIn(steps, 0)).toMatchObject({ step: steps[0], index: 0, before: new Set() });
  expect(stepsIn(steps, 2)).toMatchObject({ step: steps[2], index: 2, before: new Set(['a', 'b']) });
});

test('a step beyond the last is the last; without steps there is none', () => {
  expect(stepsIn(steps, 9).index).toBe(2);
  expect(stepsIn(steps, -1).index).toBe(0);
  expect(stepsIn([], 4)).toEqual({ step: undefined, index: 0, before: new Set() });
});
