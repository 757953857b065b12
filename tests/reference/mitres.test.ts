import { describe, expect, test } from 'vitest';
import { rectangle } from '../../src/base/outline';
import { solidOf } from '../../src/base/solid/solid';
import { degrees, radians } from '../../src/base/vec';
import { measure } from '../../src/parts/measure';
import type { Vec2, Vec3 } from '../../src/vocabulary/geometry';
import type { EndPlane, Stick } from '../../src/vocabulary/shape';
import { plane } from '../parts/draft';

// Every row below is turned into a real piece, cut by the plane in which the two pieces meet, and then measured.

const stick = (width: number, thickness: number, start: EndPlane, end: EndPlane): Stick => ({
  kind: 'stick',
  section: rectangle(width, thickness),
  start,
  end,
});

/** In plan, a piece along x and its neighbour round the corner θ meet on the line that halves the corner: x = y / tan(θ/2). */
const perDepth = (theta: number): number => Math.cos(radians(theta / 2)) / Math.sin(radians(theta / 2));

// θ, saw setting, offset ÷ w, mitre face ÷ w, offset for w = 18, 25, 100. The half-angle rule of any carpentry textbook;
// offset w / tan(θ/2) and face w / sin(θ/2) are plane geometry, printed to 5 and 2 decimals.
const PLAIN = [
  [60, 60, 1.73205, 2, 31.18, 43.3, 173.21],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: as printed, to five decimals
  [90, 45, 1, 1.41421, 18, 25, 100],
  [108, 36, 0.72654, 1.23607, 13.08, 18.16, 72.65],
  [112.5, 33.75, 0.66818, 1.20269, 12.03, 16.7, 66.82],
  [120, 30, 0.57735, 1.1547, 10.39, 14.43, 57.74],
  [135, 22.5, 0.41421, 1.08239, 7.46, 10.36, 41.42],
  [144, 18, 0.32492, 1.05146, 5.85, 8.12, 32.49],
  [150, 15, 0.26795, 1.03528, 4.82, 6.7, 26.79],
  [157.5, 11.25, 0.19891, 1.01959, 3.58, 4.97, 19.89],
  [165, 7.5, 0.13165, 1.00863, 2.37, 3.29, 13.17],
] as const;

describe('plain mitres', () => {
  test.each(PLAIN)('corner of %d°: saw at %d°', (theta, saw, offset, face, ...offsets) => {
    for (const [i, w] of [18, 25, 100].entries()) {
      // Lying flat, mitred across its width; and on edge, mitred across its thickness.
      for (const flat of [true, false]) {
        const slope = perDepth(theta);
        const piece = flat
          ? stick(w, 12, plane(0), plane(2000, slope, 0))
          : stick(120, w, plane(0), plane(2000, 0, slope));
        const { size, shortPoint, ends } = measure(piece);
        expect(Math.abs(size.length - shortPoint - offsets[i])).toBeLessThan(0.0051);
        expect((size.length - shortPoint) / w).toBeCloseTo(offset, 5);
        expect(ends[1].kind).toBe(flat ? 'mitre' : 'bevel');
        // Flat, the saw is turned and the blade upright; the piece that stands on edge in use lies on its back under a tilted blade.
        expect([ends[1].sawDeg, ends[1].tiltDeg]).toEqual(
          flat ? [expect.closeTo(saw, 9), 0] : [0, expect.closeTo(saw, 9)],
        );
        expect(ends[1].angleDeg).toBeCloseTo(theta / 2, 9);
        expect(ends[1].longSide).toBe(flat ? 'upper edge' : 'face');
        expect(mitreFace(piece, w, flat) / w).toBeCloseTo(face, 5);
      }
    }
  });

  /** Length of the cut itself, between the corners of the solid's end. */
  function mitreFace(piece: Stick, w: number, flat: boolean): number {
    const { points } = solidOf(piece);
    const end: Vec3[] = [];
    for (let i = points.length / 2; i < points.length; i += 3) end.push([points[i], points[i + 1], points[i + 2]]);
    const from = end.find(([, u, v]) => u === 0 && v === 0) as Vec3;
    const to = end.find(([, u, v]) => (flat ? u === w && v === 0 : u === 0 && v === w)) as Vec3;
    return Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
  }

  // Worked by hand from the rule: an L-shaped counter, faces 2400, 1800 and 600, skirting 18 thick, corners of 90°.
  test('skirting round outside corners: back as the face, front longer by 18 for each mitre', () => {
    const mitre = perDepth(90);
    expect(measure(stick(120, 18, plane(0), plane(2400, 0, mitre))).size.length).toBeCloseTo(2418, 9);
    expect(measure(stick(120, 18, plane(0, 0, -mitre), plane(1800, 0, mitre))).size.length).toBeCloseTo(1836, 9);
    expect(measure(stick(120, 18, plane(0, 0, -mitre), plane(600))).size.length).toBeCloseTo(618, 9);
  });
  test('skirting into an inside corner: back 1500 and 2200, short points 1482 and 2182', () => {
    const mitre = perDepth(90);
    const left = measure(stick(120, 18, plane(0), plane(1500, 0, -mitre)));
    const right = measure(stick(120, 18, plane(0, 0, mitre), plane(2200)));
    expect([left.size.length, left.shortPoint]).toEqual([1500, expect.closeTo(1482, 9)]);
    expect([right.size.length, right.shortPoint]).toEqual([2200, expect.closeTo(2182, 9)]);
    expect([left.ends[1].longSide, right.ends[0].longSide]).toEqual(['back', 'back']);
  });

  // tan β1 = sin θ / (w2/w1 + cos θ), plane geometry; w1 = 70, w2 = 45 at 90°: 57.26° and 32.74°.
  test('unequal widths: the cut runs from the inner meeting of the edges to the outer one', () => {
    const betas = (w1: number, w2: number, theta: number): [number, number] => {
      const e: Vec2 = [Math.cos(radians(theta)), Math.sin(radians(theta))];
      // Outer edges meet at the origin; piece 1 runs along x, piece 2 along e; their inner edges meet at this point.
      const inner: Vec2 = [(w2 + w1 * e[0]) / e[1], w1];
      const along2 = inner[0] * e[0] + inner[1] * e[1];
      const cut = (length: number, w: number): number =>
        measure(stick(w, 12, plane(0, length / w), plane(900))).ends[0].angleDeg;
      return [cut(inner[0], w1), cut(along2, w2)];
    };
    const [one, two] = betas(70, 45, 90);
    expect(one).toBeCloseTo(57.26, 2);
    expect(two).toBeCloseTo(32.74, 2);
    for (const [w1, w2, theta] of [
      [70, 45, 110],
      [30, 90, 75],
      [50, 50, 135],
    ]) {
      const [b1, b2] = betas(w1, w2, theta);
      expect(Math.tan(radians(b1))).toBeCloseTo(Math.sin(radians(theta)) / (w2 / w1 + Math.cos(radians(theta))), 9);
      expect(b1 + b2).toBeCloseTo(theta, 9);
    }
  });
});

// Mitre 180/n: a published saw handbook, read second-hand. Side = across flats × tan(180/n); for odd n across flats means twice
// the inscribed radius. Columns: n, inner angle, mitre, side for 500 across flats.
describe('frames of n equal sides, 500 across flats', () => {
  test.each([
    [3, 60, 60, 866.03],
    [4, 90, 45, 500],
    [5, 108, 36, 363.27],
    [6, 120, 30, 288.68],
    [7, 128.571, 25.714, 240.79],
    [8, 135, 22.5, 207.11],
    [9, 140, 20, 181.99],
    [10, 144, 18, 162.46],
    [12, 150, 15, 133.97],
    [16, 157.5, 11.25, 99.46],
  ])('%d sides: corners of %d°, mitre %d°, side %d', (n, inner, mitre, side) => {
    // One side from corner to corner of a ring, its outer edge 250 from the centre.
    const half = Math.PI / n;
    const corner: Vec2 = [250 * Math.tan(half), 250];
    const slope = corner[0] / corner[1];
    const width = 20;
    // u runs inward from the outer edge; both ends lie on lines to the centre.
    const piece = stick(width, 12, plane(-corner[0], slope), plane(corner[0], -slope));
    const { size, shortPoint, ends } = measure(piece);
    expect(Math.abs(size.length - side)).toBeLessThan(0.0051);
    expect(shortPoint).toBeCloseTo(size.length - 2 * width * Math.tan(half), 9);
    for (const end of ends) {
      expect(Math.abs(end.sawDeg - mitre)).toBeLessThan(0.00051);
      expect(Math.abs(2 * end.angleDeg - inner)).toBeLessThan(0.00101);
      expect(end.longSide).toBe('lower edge');
    }
  });
});

/** A piece that leans `spring` degrees from the vertical, along x, cut by the upright plane that halves a plan corner θ. */
function sprung(spring: number, theta: number): Stick {
  const along: Vec3 = [1, 0, 0];
  const across: Vec3 = [0, Math.sin(radians(spring)), Math.cos(radians(spring))];
  const out: Vec3 = [0, -Math.cos(radians(spring)), Math.sin(radians(spring))];
  // Points of the plane: normal · p = 0, and the normal has no height.
  const normal: Vec3 = [Math.sin(radians(theta / 2)), -Math.cos(radians(theta / 2)), 0];
  const on = (v: Vec3): number => normal[0] * v[0] + normal[1] * v[1] + normal[2] * v[2];
  return stick(90, 18, plane(0), plane(900, -on(across) / on(along), -on(out) / on(along)));
}

// Snyder & Gottesman, Compound-Angle Joinery (Washington University, 2015): tan M = sin S / tan(θ/2), sin B = cos S · cos(θ/2).
// Columns: θ, nested mitre, 52/38 stock M and B, 45/45 stock M and B; computed from the formula, printed to 2 decimals.
const SPRUNG = [
  [60, 60.0, 46.84, 43.03, 50.77, 37.76],
  [67.5, 56.25, 42.66, 40.94, 46.62, 36.01],
  [72, 54.0, 40.28, 39.61, 44.22, 34.89],
  [75, 52.5, 38.74, 38.69, 42.66, 34.12],
  [80, 50.0, 36.27, 37.13, 40.12, 32.8],
  [85, 47.5, 33.9, 35.52, 37.66, 31.42],
  [88, 46.0, 32.52, 34.53, 36.21, 30.57],
  [89, 45.5, 32.07, 34.2, 35.74, 30.29],
  [90, 45.0, 31.62, 33.86, 35.26, 30.0],
  [91, 44.5, 31.17, 33.53, 34.79, 29.71],
  [92, 44.0, 30.73, 33.19, 34.33, 29.42],
  [95, 42.5, 29.43, 32.17, 32.94, 28.54],
  [100, 40.0, 27.32, 30.43, 30.68, 27.03],
  [105, 37.5, 25.29, 28.67, 28.48, 25.5],
  [108, 36.0, 24.1, 27.59, 27.19, 24.56],
  [110, 35.0, 23.32, 26.87, 26.34, 23.93],
  [115, 32.5, 21.42, 25.05, 24.25, 22.33],
  [120, 30.0, 19.57, 23.2, 22.21, 20.7],
  [125, 27.5, 17.77, 21.34, 20.21, 19.06],
  [130, 25.0, 16.02, 19.45, 18.25, 17.39],
  [135, 22.5, 14.31, 17.55, 16.32, 15.7],
  [140, 20.0, 12.63, 15.64, 14.43, 14.0],
  [144, 18.0, 11.31, 14.09, 12.94, 12.62],
  [150, 15.0, 9.37, 11.77, 10.73, 10.55],
  [157.5, 11.25, 6.98, 8.84, 8.01, 7.93],
  [160, 10.0, 6.2, 7.86, 7.11, 7.05],
  [165, 7.5, 4.63, 5.9, 5.32, 5.3],
  [170, 5.0, 3.08, 3.94, 3.54, 3.53],
] as const;

describe('compound mitres: sprung moulding laid flat', () => {
  test.each(SPRUNG)('corner of %d°', (theta, nested, m38, b38, m45, b45) => {
    for (const [spring, mitre, tilt] of [
      [38, m38, b38],
      [45, m45, b45],
    ]) {
      const [, end] = measure(sprung(spring, theta)).ends;
      expect(end.kind).toBe('compound');
      expect(Math.abs(end.sawDeg - mitre)).toBeLessThan(0.0051);
      expect(Math.abs(end.tiltDeg - tilt)).toBeLessThan(0.0051);
    }
    // Held at its spring angle against the fence it is a plain mitre: the same as lying flat on a level table.
    expect(measure(sprung(90, theta)).ends[1].sawDeg).toBeCloseTo(nested, 9);
  });

  // Published saw handbooks, read second-hand: 31.62/33.86 and 35.26/30.00; a box with sides 26° from level: 42°/18°.
  test.each([
    [38, 31.619, 33.8629, 0.0001],
    [45, 35.2644, 30, 0.0001],
    [64, 42, 18, 0.07],
  ])('spring %d° at 90°: %d° and %d°', (spring, mitre, tilt, within) => {
    const [, end] = measure(sprung(spring, 90)).ends;
    expect(Math.abs(end.sawDeg - mitre)).toBeLessThan(within);
    expect(Math.abs(end.tiltDeg - tilt)).toBeLessThan(within);
  });
});

// The same formula by the number of sides, θ = 180 − 360/n. Columns: lean from vertical, then M and B for 3, 4, 5, 6, 8 sides.
describe('splayed boxes', () => {
  test.each([
    [5, 8.58, 59.62, 4.98, 44.78, 3.62, 35.84, 2.88, 29.87, 2.07, 22.41],
    [10, 16.74, 58.53, 9.85, 44.14, 7.19, 35.37, 5.73, 29.5, 4.11, 22.14],
    [15, 24.15, 56.77, 14.51, 43.08, 10.65, 34.59, 8.5, 28.88, 6.12, 21.69],
    [20, 30.64, 54.47, 18.88, 41.64, 13.95, 33.53, 11.17, 28.02, 8.06, 21.08],
    [25, 36.2, 51.71, 22.91, 39.86, 17.07, 32.19, 13.71, 26.95, 9.93, 20.29],
    [30, 40.89, 48.59, 26.57, 37.76, 19.96, 30.6, 16.1, 25.66, 11.7, 19.35],
    [35, 44.81, 45.19, 29.84, 35.4, 22.62, 28.78, 18.32, 24.18, 13.36, 18.27],
    [40, 48.07, 41.56, 32.73, 32.8, 25.03, 26.76, 20.36, 22.52, 14.91, 17.05],
    [45, 50.77, 37.76, 35.26, 30.0, 27.19, 24.56, 22.21, 20.7, 16.32, 15.7],
    [50, 53.0, 33.83, 37.45, 27.03, 29.1, 22.2, 23.86, 18.75, 17.6, 14.24],
    [55, 54.82, 29.78, 39.32, 23.93, 30.76, 19.7, 25.31, 16.67, 18.74, 12.68],
    [60, 56.31, 25.66, 40.89, 20.7, 32.18, 17.09, 26.57, 14.48, 19.73, 11.03],
  ])('leaning %d°', (lean, ...settings) => {
    for (const [i, n] of [3, 4, 5, 6, 8].entries()) {
      const [, end] = measure(sprung(lean, 180 - 360 / n)).ends;
      expect(Math.abs(end.sawDeg - settings[2 * i])).toBeLessThan(0.0051);
      expect(Math.abs(end.tiltDeg - settings[2 * i + 1])).toBeLessThan(0.0051);
    }
  });
});

test('the tilt is the angle between the cut and the square of the face, measured on the solid', () => {
  const piece = sprung(38, 110);
  const { points } = solidOf(piece);
  const n = points.length / 6;
  const corner = (i: number): Vec3 => [points[3 * (n + i)], points[3 * (n + i) + 1], points[3 * (n + i) + 2]];
  const [a, b, c] = [corner(0), corner(1), corner(2)];
  const [p, q] = [b, c].map((v): Vec3 => [v[0] - a[0], v[1] - a[1], v[2] - a[2]]);
  const normal: Vec3 = [p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]];
  const tilt = degrees(Math.asin(Math.abs(normal[2]) / Math.hypot(...normal)));
  expect(measure(piece).ends[1].tiltDeg).toBeCloseTo(tilt, 9);
});
