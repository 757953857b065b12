import { describe, expect, it } from 'vitest';
import { gapOf } from '../../src/making/gap';

/** The eight corners of a cube of 10 from a corner. */
const cube = (x: number, y: number, z: number): Float64Array =>
  Float64Array.from(
    [0, 10].flatMap((dx) => [0, 10].flatMap((dy) => [0, 10].flatMap((dz) => [x + dx, y + dy, z + dz]))),
  );

describe('the gap between two convex pieces', () => {
  it('is that between faces, edges and corners', () => {
    expect(gapOf(cube(0, 0, 0), cube(13, 0, 0), 100)?.gap).toBeCloseTo(3, 9);
    // From edge to edge: 3 and 4 make 5.
    expect(gapOf(cube(0, 0, 0), cube(13, 14, 0), 100)?.gap).toBeCloseTo(5, 9);
    // From corner to corner: √(2² + 3² + 6²) = 7.
    expect(gapOf(cube(0, 0, 0), cube(12, 13, 16), 100)?.gap).toBeCloseTo(7, 9);
  });

  it('is 0 where they touch or overlap', () => {
    expect(gapOf(cube(0, 0, 0), cube(10, 3, 3), 1)?.gap).toBe(0);
    expect(gapOf(cube(0, 0, 0), cube(5, 5, 5), 1)?.gap).toBe(0);
    expect(gapOf(cube(0, 0, 0), cube(0, 0, 0), 1)?.gap).toBe(0);
  });

  it('is not told beyond the limit', () => {
    expect(gapOf(cube(0, 0, 0), cube(13, 0, 0), 2.9)).toBeNull();
    expect(gapOf(cube(0, 0, 0), cube(13, 0, 0), 3.1)?.gap).toBeCloseTo(3, 9);
  });

  it('is measured after a shift of the first, and spanned from the second to the first', () => {
    expect(gapOf(cube(0, 0, 0), cube(13, 0, 0), 10, [1, 0, 0])?.gap).toBeCloseTo(2, 9);
    const across = gapOf(cube(0, 0, 0), cube(13, 0, 0), 10)?.across ?? [];
    for (const [k, v] of [-3, 0, 0].entries()) expect(across[k]).toBeCloseTo(v, 9);
  });

  it('keeps its digits far from the origin', () => {
    expect(gapOf(cube(30_000, -20_000, 0), cube(30_010.25, -20_003, 1), 1)?.gap).toBeCloseTo(0.25, 6);
  });
});
