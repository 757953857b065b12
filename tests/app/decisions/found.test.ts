import { expect, test } from 'vitest';
import { foundAt } from '../../../app/decisions/found';
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
const all = [own, field, eleventh];

test('what is found at a place, and below it', () => {
  expect(foundAt(all, '/unit/bays/1')).toEqual([own, field]);
});
