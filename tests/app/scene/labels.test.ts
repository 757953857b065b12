import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Label, seenMiddle, spread } from '../../../app/scene/labels';

test('a line within the picture has its figure on its middle', () => {
  expect(seenMiddle([-0.5, 0, 1], [0.5, 0, 1], 800, 400)).toEqual([400, 200]);
  expect(seenMiddle([-1, 1, 2], [1, 1, 2], 800, 400)).toEqual([400, 100]);
});

test('of a line that leaves the picture, the figure stands on the middle of what is seen', () => {
  // From the middle to far beyond the right edge: the right half is seen.
  expect(seenMiddle([0, 0, 1], [5, 0, 1], 800, 400)![0]).toBeCloseTo(600, 6);
  // The further end lies behind the viewer.
  expect(seenMiddle([0, 0, 1], [1, 0, -1], 800, 400)![0]).toBeCloseTo(600, 6);
});

test('a line that is not seen has no figure', () => {
  expect(seenMiddle([2, 0, 1], [3, 0, 1], 800, 400)).toBeNull();
  expect(seenMiddle([0, 0, -1], [0.5, 0, -1], 800, 400)).toBeNull();
  // Past a corner of the picture, outside of two edges, though of neither with both ends.
  expect(seenMiddle([0, 1.5, 1], [1.5, 0, 1], 800, 400)).not.toBeNull();
  expect(seenMiddle([0.9, 1.6, 1], [1.6, 0.9, 1], 800, 400)).toBeNull();
});

const label = (x: number, y: number): Label => ({ at: [x, y], half: [20, 10] });

test('figures with room stay where they are; one in the way of another steps aside', () => {
  expect(spread([label(100, 100), label(300, 100)], 800, 400)).toEqual([
    [100, 100],
    [300, 100],
  ]);
  const [first, second] = spread([label(100, 100), label(101, 101)], 800, 400);
  expect(first).toEqual([100, 100]);
  expect(second![1]).toBeGreaterThan(120);
});

test('no figure ever lies over another or over the edge, and the first always has a place', () => {
  const at = fc.record({ x: fc.integer({ min: 0, max: 400 }), y: fc.integer({ min: 0, max: 300 }) });
  fc.assert(
    fc.property(fc.array(at, { minLength: 1, maxLength: 14 }), (points) => {
      const spots = spread(
        points.map(({ x, y }) => label(x, y)),
        400,
        300,
      );
      expect(spots[0]).not.toBeNull();
      const shown = spots.flatMap((spot) => (spot ? [spot] : []));
      shown.forEach(([x, y], i) => {
        expect(x >= 20 && x <= 380 && y >= 10 && y <= 290).toBe(true);
        for (const [u, v] of shown.slice(i + 1)) expect(Math.abs(x - u) >= 40 || Math.abs(y - v) >= 20).toBe(true);
      });
    }),
  );
});
