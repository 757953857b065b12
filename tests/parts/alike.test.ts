import { describe, expect, test } from 'vitest';
import { alike, design } from '../../src/flow';
import { jobOf } from '../elements/job-of';

describe('parts that are cut alike', () => {
  const { parts } = design(jobOf({ runs: [{ deflectionDeg: 90 }, {}] }));
  const groups = alike(parts);

  test('hold every mark once', () => {
    const marks = groups.flatMap((g) => g.marks);
    expect([...marks].sort()).toEqual(parts.map((p) => p.mark).sort());
  });
  test('are the same size to a hundredth, with the same ends', () => {
    const by = new Map(parts.map((p) => [p.mark, p]));
    for (const { marks, part } of groups)
      for (const mark of marks) {
        const other = by.get(mark);
        expect(other?.size.length).toBeCloseTo(part.size.length, 2);
        expect(other?.ends.map((e) => e.kind)).toEqual(part.ends.map((e) => e.kind));
        expect([other?.name, other?.material]).toEqual([part.name, part.material]);
      }
  });
  test('left and right corner boards are not alike: their bevels are on other edges', () => {
    const corner = groups.filter((g) => g.part.name === 'corner pillar board');
    expect(corner).toHaveLength(2);
  });
  test('studs of a straight unit are one group', () => {
    const studs = alike(design(jobOf({})).parts).filter((g) => g.part.name === 'stud');
    expect(studs).toHaveLength(1);
  });
});
