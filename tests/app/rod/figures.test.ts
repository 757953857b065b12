import { expect, test } from 'vitest';
import { exactly, toTheStep } from '../../../app/rod/figures';

test('figures on the board go to the joiner’s step, each from its exact value', () => {
  expect([0, 400.24, 400.26, 1203.333].map((mm) => toTheStep(mm, 'mm', 0.5))).toEqual(['0', '400', '400.5', '1203.5']);
  expect(toTheStep(400.26, 'mm', 1)).toBe('400');
  expect(toTheStep(1200.15, 'inch', 0.5)).toBe('47 1/4"');
});

test('in full, a length is not rounded to the step and has its unit', () => {
  expect(exactly(1203.333, 'mm')).toBe('1203.33 mm');
  expect(exactly(1200.15, 'inch')).toBe('47 1/4"');
});
