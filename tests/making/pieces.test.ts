import { describe, expect, it } from 'vitest';
import { rectangle } from '../../src/base/outline';
import { polygonArea } from '../../src/base/polygon';
import { straight } from '../../src/base/stuff';
import { convexParts, piecesOf } from '../../src/making/pieces';
import type { Vec2 } from '../../src/vocabulary/geometry';
import { boardOf, stickOf } from './parts';

const L: readonly Vec2[] = [
  [0, 0],
  [30, 0],
  [30, 10],
  [10, 10],
  [10, 30],
  [0, 30],
];
const areas = (points: readonly Vec2[], parts: readonly (readonly number[])[]): readonly number[] =>
  parts.map((part) => polygonArea(part.map((i) => points[i])));
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

describe('convex pieces of a polygon', () => {
  it('are one where it is convex', () => {
    expect(convexParts(L.slice(0, 3), [])).toEqual([[0, 1, 2]]);
  });

  it('are two of an L, which together are the whole', () => {
    const parts = convexParts(L, []);
    expect(parts).toHaveLength(2);
    // 30 · 10 + 10 · 20 = 500
    expect(sum(areas(L, parts))).toBeCloseTo(500, 9);
  });

  it('leave a hole open', () => {
    const hole: readonly Vec2[] = [
      [40, 40],
      [60, 40],
      [60, 60],
      [40, 60],
    ];
    const square: readonly Vec2[] = [
      [0, 0],
      [100, 0],
      [100, 100],
      [0, 100],
    ];
    const parts = convexParts(square, [hole]);
    const all = [...square, ...hole];
    // 100² − 20² = 9600
    expect(sum(areas(all, parts))).toBeCloseTo(9600, 9);
    expect(areas(all, parts).every((area) => area > 0)).toBe(true);
    expect(parts.length).toBeLessThanOrEqual(4);
  });
});

describe('convex pieces of a shape', () => {
  it('are one of a square stick, and the same for the same shape', () => {
    const stick = stickOf(rectangle(38, 63), 500);
    const [piece, ...others] = piecesOf(stick);
    expect(others).toEqual([]);
    expect([...piece].filter((_, i) => i % 3 === 0).sort((a, b) => a - b)).toEqual([0, 0, 0, 0, 500, 500, 500, 500]);
    expect(piecesOf(stick)).toBe(piecesOf(stick));
  });

  it('are two of a stick whose section is an L, and of a board like it', () => {
    expect(piecesOf(stickOf(straight(L), 200))).toHaveLength(2);
    expect(piecesOf(boardOf(L, 18))).toHaveLength(2);
  });
});
