import { describe, expect, it } from 'vitest';
import { difference, goldens, kept, orphans } from '../tools/goldens';

describe('goldens', () => {
  it.each(goldens())('makes $file as it is kept', ({ file, make }) => {
    const before = kept(file);
    expect(before, `tests/golden/${file} is missing: look at it, then npm run golden -- ${file}`).not.toBeNull();
    expect(difference(before ?? '', make()), `if this is right: npm run golden -- ${file}`).toBeNull();
  });

  it('keeps none that nothing makes', () => {
    expect(orphans()).toEqual([]);
  });
});

describe('the comparison of goldens', () => {
  it('lets the last place of a number turn', () => {
    expect(difference('x="12.34" y="5"\n', 'x="12.35" y="5"\n')).toBeNull();
  });

  it.each([
    ['another number', 'x="12.34"', 'x="12.36"'],
    ['another word', 'x="12.34"', 'y="12.34"'],
    ['a sign', 'M-5 3', 'M5 3'],
    ['a line more', 'a', 'a\nb'],
    ['a line less', 'a\nb', 'a'],
    ['a number more', 'M1 2', 'M1 2 3'],
  ])('sees %s', (_, before, after) => {
    expect(difference(before, after)).not.toBeNull();
  });
});
