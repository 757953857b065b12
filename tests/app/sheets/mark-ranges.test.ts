import { expect, test } from 'vitest';
import { markRanges } from '../../../app/sheets/mark-ranges';

test('marks in a row are drawn together, order and stems kept', () => {
  expect(markRanges(['A-ST1', 'A-ST2', 'A-ST3', 'A-ST7', 'B-ST8', 'B-ST9'])).toEqual([
    'A-ST1–3',
    'A-ST7',
    'B-ST8',
    'B-ST9',
  ]);
  expect(markRanges(['A-ST2', 'A-ST1', 'A-ST0'])).toEqual(['A-ST2', 'A-ST1', 'A-ST0']);
  expect(markRanges(['loose', 'loose', 'A-ST9', 'A-ST10', 'A-ST11'])).toEqual(['loose', 'loose', 'A-ST9–11']);
  expect(markRanges([])).toEqual([]);
});
