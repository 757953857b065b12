import { expect, test } from 'vitest';
import { design } from '../../app/store/designs';
import { newJob } from '../../src/flow';
import { setAt } from '../../src/job/edits';

test('what is drawn from the jobs in hand stays the same: before the edit, now, and one that is typed', () => {
  const before = newJob('Bar');
  const now = setAt(before, '/unit/height', 1040);
  const typed = setAt(now, '/unit/height', 1030);
  const [a, b, c] = [design(before), design(now), design(typed)];
  expect(design(before)).toBe(a);
  expect(design(now)).toBe(b);
  expect(design(typed)).toBe(c);
});
