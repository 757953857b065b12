import { expect, test } from 'vitest';
import { boxWith, isReadable, measuresOf, measuresOfRod } from '../../../app/scene/measures';
import type { RodRun } from '../../../src/vocabulary/rod';
import { lying, part, stick } from '../parts';

const plate = part('A-PL-1', stick(1200, 38, 63), lying(100, 63, 0), {
  size: { length: 1200, width: 38, thickness: 63 },
});

test('a square part measures what its measuring lines span', () => {
  const measures = measuresOf(plate);
  expect(measures.map((m) => [m.name, m.mm])).toEqual([
    ['length', 1200],
    ['width', 38],
    ['thickness', 63],
  ]);
  for (const { mm, lines } of measures) {
    const [a, b] = lines[0]!;
    expect(Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2])).toBeCloseTo(mm, 6);
  }
});

test('measuring lines keep clear of the part, and figures stand on their middle', () => {
  const [length, width] = measuresOf(plate);
  expect(length!.label[0]).toBeCloseTo(700, 6);
  expect(length!.label[2]).toBeLessThan(-20);
  expect(width!.label[0]).toBeLessThan(80);
  expect(width!.label[2]).toBeCloseTo(19, 6);
});

test('the unit is measured run by run before its foremost layer, and its height at the left end', () => {
  const run = { name: 'Run A', length: 3600, origin: [100, 50], along: [1, 0], front: [0, -1] };
  const layers = { frame: { name: 'frame', inner: 0, outer: 0 }, top: { name: 'top', inner: 0, outer: 75 } };
  const [length, height] = measuresOfRod({ runs: [run as unknown as RodRun], layers, height: 1100 });
  expect(length!.mm).toBe(3600);
  expect(length!.lines[0]![0][1]).toBeLessThan(50 - 75);
  expect(length!.lines[0]!.map((p) => p[0])).toEqual([100, 3700]);
  expect(length!.front).toEqual([0, -1, 0]);
  expect(height!.mm).toBe(1100);
  expect(height!.lines[0]!.map((p) => p[2])).toEqual([0, 1100]);
  expect(height!.label[0]).toBeLessThan(100);
});

test('a box takes in the measures that stand round it', () => {
  const grown = boxWith({ min: [0, 0, 0], max: [1200, 63, 38] }, measuresOf(plate));
  expect(grown.min[2]).toBeLessThan(-40);
  expect(grown.max[0]).toBeGreaterThan(1300);
  expect(boxWith({ min: [0, 0, 0], max: [1, 2, 3] }, [])).toEqual({ min: [0, 0, 0], max: [1, 2, 3] });
});

test('a measure is read from its front and from above, not from behind nor end on', () => {
  const length = {
    name: 'Run A',
    mm: 3600,
    lines: [
      [
        [0, -200, 0],
        [3600, -200, 0],
      ],
    ],
    label: [1800, -200, 0],
    front: [0, -1, 0],
  } as const;
  expect(isReadable(length, [1800, -4000, 1500])).toBe(true);
  expect(isReadable(length, [1800, 4000, 1500])).toBe(false);
  expect(isReadable(length, [1800, 300, 9000])).toBe(true);
  expect(isReadable(length, [90000, -250, 0])).toBe(false);
});
