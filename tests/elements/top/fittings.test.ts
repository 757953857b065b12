import { describe, expect, test } from 'vitest';
import { fittingsOf, hardwareOf, workOf } from '../../../src/elements/top/fittings';

const gaps = (places: readonly number[]): readonly number[] => places.slice(1).map((x, i) => x - places[i]);

describe('what holds a joint', () => {
  test('600 wide at 150 and 250: 5 tenons 125 apart, 3 bolts 187.5 apart between them', () => {
    // 600 − 2·50 = 500; ⌈500/150⌉ = 4 gaps of 125. Bolts in gaps 1, 2 or 3, 4 of four: at most two gaps (250) apart, so three of them.
    const { aligned, drawn } = fittingsOf(600, 150, 250);
    expect(aligned).toEqual([50, 175, 300, 425, 550]);
    expect(drawn).toEqual([112.5, 362.5, 487.5]);
  });

  test('400 wide: 3 and 2', () => {
    // 300/150 = 2 gaps of 150; a bolt in each.
    expect(fittingsOf(400, 150, 250)).toEqual({ aligned: [50, 200, 350], drawn: [125, 275] });
  });

  test('at least two of each, however narrow: nearer to the edges where 50 mm is more than a quarter', () => {
    // 180: 80 between the outer two, bolts at thirds of it.
    const { aligned, drawn } = fittingsOf(180, 150, 250);
    expect(aligned).toEqual([45, 135]);
    expect(drawn).toEqual([75, 105]);
    expect(fittingsOf(100, 400, 600).aligned).toEqual([25, 75]);
  });

  test('never further apart than asked, bolts never on a tenon, and the same from both edges in number', () => {
    for (let width = 100; width <= 2000; width += 37)
      for (const spacing of [50, 150, 400])
        for (const boltSpacing of [100, 250, 600]) {
          const { aligned, drawn } = fittingsOf(width, spacing, boltSpacing);
          expect(Math.min(aligned.length, drawn.length)).toBeGreaterThanOrEqual(2);
          expect(Math.max(...gaps(aligned))).toBeLessThanOrEqual(spacing + 1e-6);
          expect(Math.max(...gaps(drawn))).toBeLessThanOrEqual(boltSpacing + 1e-6);
          expect(Math.min(...gaps(drawn))).toBeGreaterThan(0);
          for (const bolt of drawn) expect(Math.min(...aligned.map((x) => Math.abs(x - bolt)))).toBeGreaterThan(15);
          expect(aligned[0] + aligned[aligned.length - 1]).toBeCloseTo(width, 9);
        }
  });

  test('is counted and said', () => {
    const joint = fittingsOf(400, 150, 250);
    expect(hardwareOf(joint, 'dowels')).toEqual([
      { what: 'dowel', count: 3 },
      { what: 'draw bolt', count: 2 },
    ]);
    expect(workOf('right end', joint, 'tenons')).toBe(
      'right end: mortises for loose tenons in the middle of the thickness at 50, 200, 350 from the front end of the joint; from below, recesses for draw bolts at 125, 275',
    );
  });
});
