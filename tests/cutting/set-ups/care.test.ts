import { expect, it } from 'vitest';
import { caresOf } from '../../../src/cutting/set-ups/care';

it('cautions are said once, with the numbers of all that they are for', () => {
  expect(caresOf([{ care: ['push'] }, { care: [] }, { care: ['hold', 'push'] }])).toEqual([
    ['push', [1, 3]],
    ['hold', [3]],
  ]);
  expect(caresOf([{ care: [] }])).toEqual([]);
});
