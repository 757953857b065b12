import { expect, test } from 'vitest';
import { foundAbout, foundAt } from '../../../app/decisions/found';
import type { Finding, Subject } from '../../../src/vocabulary/finding';

const finding = (message: string, subject: Subject): Finding => ({
  severity: 'warn',
  rule: 'r',
  subject,
  message,
  source: '',
  remedy: '',
});

const own = finding('own', { path: '/unit/bays/1' });
const field = finding('field', { path: '/unit/bays/1/width' });
const eleventh = finding('another', { path: '/unit/bays/11' });
const named = finding('Bay 2 of run A leaves no room.', { run: 'A', path: '/unit/bays' });
const other = finding('Bay 21 of run A leaves no room.', { run: 'A', path: '/unit/bays' });
const elsewhere = finding('Bay 2 of run B leaves no room.', { run: 'B', path: '/unit/bays' });
const all = [own, field, eleventh, named, other, elsewhere];

test('what is found at a place, and below it', () => {
  expect(foundAt(all, '/unit/bays/1')).toEqual([own, field]);
});

test('what is said of the list counts where it names the thing, on its run', () => {
  expect(foundAbout(all, '/unit/bays/1', '/unit/bays', 'A', 'bay 2')).toEqual([own, field, named]);
  expect(foundAbout(all, undefined, '/unit/bays', 'B', 'bay 2')).toEqual([elsewhere]);
  expect(foundAbout(all, undefined, '/unit/bays', 'A', '')).toEqual([]);
});

test('a name may hold whatever a person types', () => {
  const odd = finding('Tap (hot) [2] meets a post.', { run: 'A', path: '/unit/openings' });
  expect(foundAbout([odd], undefined, '/unit/openings', 'A', 'Tap (hot) [2]')).toEqual([odd]);
  expect(foundAbout([odd], undefined, '/unit/openings', 'A', 'Tap (hot) [3]')).toEqual([]);
  expect(foundAbout([odd], undefined, '/unit/openings', 'A', '(((')).toEqual([]);
});
