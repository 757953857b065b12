import { expect, it } from 'vitest';
import { rectangle } from '../../../src/base/outline';
import { stripsOf } from '../../../src/cutting/take-off/blocks';
import { partOf, stickOf } from '../../making/parts';

const block = (mark: string, length: number) => partOf({ shape: stickOf(rectangle(150, 25), length) }, mark);

it('blocks fill a strip to its last hundredth, whatever the digits of the sum', () => {
  // 100.2 + 3.2 + 100.2 + 3.2 + 10 spare = 216.8, which comes out as 216.79999999999998 or so.
  const blocks = [block('B1', 100.2), block('B2', 100.2)];
  const lengths = (longest: number) => stripsOf(blocks, 3.2, longest).map(({ length }) => length);
  expect(lengths(216.8)).toEqual([216.8]);
  expect(lengths(216.79)).toEqual([100.2, 100.2]);
});
