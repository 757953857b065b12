import { describe, expect, test } from 'vitest';
import { wholeOf } from '../../../src/base/solid/hollows';
import { massCentre } from '../../../src/base/solid/mass';
import { projectOf } from '../../../src/base/solid/project';
import { solidOf } from '../../../src/base/solid/solid';
import { volumeOf } from '../../../src/base/solid/volume';
import { measure } from '../../../src/parts/measure';
import type { Outline, Vec2 } from '../../../src/vocabulary/geometry';
import type { Stick } from '../../../src/vocabulary/shape';
import { boundsInRoom } from '../bounds';
import { enclosed, faultsOf, HERE, relative, square } from './check';

/** A board 100 × 18 with hollows in its face, each from u = right to left, of a radius. */
const grooved = (...hollows: readonly (readonly [number, number, number])[]): Outline => ({
  start: [0, 0],
  segments: [
    { to: [100, 0] },
    { to: [100, 18] },
    ...hollows.flatMap(([right, left, radius]) => [
      { to: [right, 18] as Vec2 },
      { to: [left, 18] as Vec2, radius: -radius },
    ]),
    { to: [0, 18] },
    { to: [0, 0] },
  ],
});
const board = (section: Outline, from: number, to: number): Stick => ({
  kind: 'stick',
  section,
  start: square(0),
  end: square(500),
  stopped: { from, to },
});
const half = grooved([60, 40, 10]);
const stopped = board(half, 50, 400);
const PLAN = { right: [1, 0, 0], up: [0, 1, 0] } as const;

describe('a stick with a stopped flute', () => {
  test('is plain stuff less the flute between its stops', () => {
    // A half round of radius 10 is 157.08 mm²; its chords, at most 0.03 mm off an arc 31.4 mm long, give a little less.
    const plain = 100 * 18 * 500;
    const flute = (Math.PI * 100) / 2;
    expect(plain - volumeOf(stopped)).toBeLessThan(flute * 350);
    expect(plain - volumeOf(stopped)).toBeGreaterThan((flute - 0.03 * 31.5) * 350);
    expect(faultsOf(solidOf(stopped))).toEqual([]);
    expect(relative(enclosed(solidOf(stopped)), volumeOf(stopped))).toBeLessThan(1e-12);
  });

  test('with flutes that share an arris, or reach the edges of the face, is still a closed skin', () => {
    for (const section of [
      grooved([60, 40, 10], [40, 20, 12]),
      grooved([100, 70, 20], [30, 0, 20]),
      grooved([70, 60, 8], [50, 40, 5], [30, 20, 9]),
    ]) {
      const shape = board(section, 100, 101);
      expect(faultsOf(solidOf(shape))).toEqual([]);
      expect(relative(enclosed(solidOf(shape)), volumeOf(shape))).toBeLessThan(1e-12);
    }
  });

  test('has the size and box of the plain board, whatever the flute', () => {
    expect(boundsInRoom({ shape: stopped, place: HERE })).toEqual({ min: [0, 0, 0], max: [500, 100, 18] });
    expect(measure(stopped)).toMatchObject({ size: { length: 500, width: 100, thickness: 18 }, shortPoint: 500 });
  });

  test('is heavier at the end where more is left plain', () => {
    // Taken away: A = plain section 1800 less that of the flute, over 350 mm about 225; so the centre moves from 250 by A·350·25/V.
    const taken = 100 * 18 * 500 - volumeOf(stopped);
    const [along, across, out] = massCentre({ shape: stopped, place: HERE });
    expect(along).toBeCloseTo((250 * 900_000 - 225 * taken) / (900_000 - taken), 6);
    expect(across).toBeCloseTo(50, 6);
    expect(out).toBeLessThan(9);
  });

  test('shows its flute’s edges from stop to stop, and where it stops', () => {
    const { lines, outline } = projectOf({ shape: stopped, place: HERE }, PLAN);
    const sorted = lines.map((line) => line.map(([x, y]) => [x, y]).sort((a, b) => a[0] - b[0] || a[1] - b[1]));
    expect(sorted).toHaveLength(4);
    for (const line of [
      [
        [50, 40],
        [400, 40],
      ],
      [
        [50, 60],
        [400, 60],
      ],
      [
        [50, 40],
        [50, 60],
      ],
      [
        [400, 40],
        [400, 60],
      ],
    ])
      expect(sorted).toContainEqual(line);
    expect(outline).toHaveLength(4);
  });
  test('and nothing from the back', () =>
    expect(projectOf({ shape: stopped, place: HERE }, { right: [1, 0, 0], up: [0, -1, 0] }).lines).toEqual([]));
  test('seen along its axis it is plain', () => {
    const { outline, lines } = projectOf({ shape: stopped, place: HERE }, { right: [0, 1, 0], up: [0, 0, 1] });
    // The ends of the chord lie on the face.
    expect(outline).toHaveLength(6);
    expect(lines).toEqual([]);
  });

  test('stops that say nothing of the stuff are refused, with the values', () => {
    for (const [from, to] of [
      [0, 400],
      [50, 500],
      [200, 200],
      [300, 100],
    ])
      expect(() => solidOf(board(half, from, to))).toThrow(
        `hollows from ${from} to ${to} mm; along the line (60, 18) there is stuff from 0 to 500 mm`,
      );
  });

  test('without a hollow in its section the stops change nothing', () => {
    const plain = { ...stopped, section: wholeOf(half) };
    expect(volumeOf(plain)).toBe(100 * 18 * 500);
    expect(faultsOf(solidOf(plain))).toEqual([]);
  });
});
