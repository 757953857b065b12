import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, facetsOf, flatten, rectangle } from '../../src/base/outline';
import { clip, hull, polygonArea, polygonCentroid } from '../../src/base/polygon';
import type { Outline, Vec2 } from '../../src/vocabulary/geometry';
import { SEED } from './seed';

const circle = (r: number): Outline => ({
  start: [r, 0],
  segments: [
    { to: [-r, 0], radius: r },
    { to: [r, 0], radius: r },
  ],
});
/** A 20 × 10 bar whose upper side is rounded or hollowed by an arc of radius 15. */
const bowed = (radius: number): Outline => ({
  start: [0, 0],
  segments: [{ to: [20, 0] }, { to: [20, 10] }, { to: [0, 10], radius }, { to: [0, 0] }],
});
const segmentArea = (r: number, chord: number): number => {
  const sweep = 2 * Math.asin(chord / 2 / r);
  return (r * r * (sweep - Math.sin(sweep))) / 2;
};

describe('area and bounds, by plane geometry', () => {
  test('a circle of two half rounds', () => {
    expect(areaOf(circle(10))).toBeCloseTo(Math.PI * 100, 9);
    const { min, max } = boundsOf(circle(10));
    expect([...min, ...max].map((x) => Math.round(x * 1e9) / 1e9)).toEqual([-10, -10, 10, 10]);
  });
  test('a round adds a circular segment and a hollow takes it away', () => {
    expect(areaOf(bowed(15))).toBeCloseTo(200 + segmentArea(15, 20), 9);
    expect(areaOf(bowed(-15))).toBeCloseTo(200 - segmentArea(15, 20), 9);
    const rise = 15 - Math.sqrt(15 * 15 - 10 * 10);
    expect(boundsOf(bowed(15)).max[1]).toBeCloseTo(10 + rise, 9);
    expect(boundsOf(bowed(-15)).max[1]).toBe(10);
  });
});

describe('flattening', () => {
  test('keeps corners exactly, runs counter-clockwise, repeats no point', () => {
    const points = flatten(bowed(-15));
    expect(points.slice(0, 3)).toEqual([
      [0, 0],
      [20, 0],
      [20, 10],
    ]);
    expect(points[points.length - 1]).toEqual([0, 10]);
    expect(polygonArea(points)).toBeGreaterThan(0);
    expect(new Set(points.map(String)).size).toBe(points.length);
  });

  test(`leaves an arc by no more than the chord error, and not by less than a quarter of it (seed ${SEED})`, () => {
    const radius = fc.double({ min: 1, max: 500, noNaN: true });
    const chordError = fc.double({ min: 0.001, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(radius, chordError, (r, e) => {
        const points = flatten(circle(r), e);
        const sagittas = points.map((p, i) => {
          const q = points[(i + 1) % points.length];
          return r - Math.hypot((p[0] + q[0]) / 2, (p[1] + q[1]) / 2);
        });
        expect(Math.max(...sagittas)).toBeLessThanOrEqual(e * (1 + 1e-6));
        if (points.length > 12) expect(Math.max(...sagittas)).toBeGreaterThan(e / 4);
      }),
      { seed: SEED },
    );
  });

  test('gives the same array for the same outline', () => {
    const outline = bowed(12);
    expect(flatten(outline)).toBe(flatten(outline));
    expect(flatten(outline, 1)).not.toBe(flatten(outline));
  });

  test('tells arrises from facets: a half round that runs into flat sides has none where it does', () => {
    const nosed: Outline = {
      start: [0, 0],
      segments: [{ to: [50, 0] }, { to: [50, 20], radius: 10 }, { to: [0, 20] }, { to: [0, 0] }],
    };
    const { points, sharp } = facetsOf(nosed);
    expect(points.filter((_, i) => sharp[i])).toEqual([
      [0, 0],
      [0, 20],
    ]);
  });

  test('an impossible arc is refused with its values', () => {
    expect(() => flatten(bowed(9))).toThrow(/\(20, 10\) to \(0, 10\).*radius of 9.*chord, 10/);
    expect(() => areaOf(bowed(-9))).toThrow(/radius of 9/);
  });
  test('a clockwise or open outline is refused', () => {
    const clockwise: Outline = { start: [0, 0], segments: [{ to: [0, 5] }, { to: [5, 5] }, { to: [0, 0] }] };
    expect(() => flatten(clockwise)).toThrow(/area of -12\.5/);
    const open: Outline = { start: [0, 0], segments: [{ to: [5, 0] }, { to: [5, 5] }, { to: [0, 5] }] };
    expect(() => flatten(open)).toThrow(/ends at \(0, 5\); it must close/);
    expect(() => flatten(bowed(15), 0)).toThrow(/chord error of 0/);
  });
});

describe('polygons', () => {
  const point = fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 }));
  test(`a hull is convex, counter-clockwise, made of the points and holds them all (seed ${SEED})`, () => {
    fc.assert(
      fc.property(fc.array(point, { minLength: 3, maxLength: 40 }), (points) => {
        const around = hull(points);
        fc.pre(around.length >= 3);
        const given = new Set(points.map(String));
        around.forEach((a, i) => {
          const b = around[(i + 1) % around.length];
          const c = around[(i + 2) % around.length];
          const left = (p: Vec2) => (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
          expect(given.has(String(a))).toBe(true);
          expect(left(c)).toBeGreaterThan(0);
          for (const p of points) expect(left(p)).toBeGreaterThanOrEqual(0);
        });
      }),
      { seed: SEED },
    );
  });

  test(`the two sides of a cut add up to the whole (seed ${SEED})`, () => {
    const whole = flatten(circle(30), 0.5);
    const angle = fc.double({ min: 0, max: 6.28, noNaN: true });
    fc.assert(
      fc.property(angle, fc.double({ min: -35, max: 35, noNaN: true }), (a, d) => {
        const normal: Vec2 = [Math.cos(a), Math.sin(a)];
        const at: Vec2 = [normal[0] * d, normal[1] * d];
        const one = clip(whole, at, normal);
        const other = clip(whole, at, [-normal[0], -normal[1]]);
        expect(polygonArea(one) + polygonArea(other)).toBeCloseTo(polygonArea(whole), 6);
      }),
      { seed: SEED },
    );
  });

  test('the centre of a half disc stands 4r/3π from its flat', () => {
    const half = clip(flatten(circle(30), 1e-4), [0, 0], [0, -1]);
    const [x, y] = polygonCentroid(half);
    expect(x).toBeCloseTo(0, 6);
    expect(y).toBeCloseTo((4 * 30) / (3 * Math.PI), 3);
  });
  test('the centre of a far rectangle is exact', () => {
    const far = flatten(rectangle(38, 63)).map((p): Vec2 => [p[0] + 1e6, p[1] - 1e6]);
    expect(polygonCentroid(far)).toEqual([1e6 + 19, -1e6 + 31.5]);
  });
  test('nothing is left beyond the cut, and no area has no centre', () => {
    expect(clip(flatten(rectangle(2, 2)), [-1, 0], [1, 0])).toEqual([]);
    expect(() =>
      polygonCentroid([
        [0, 0],
        [1, 1],
        [2, 2],
      ]),
    ).toThrow(/no centre/);
  });
});
