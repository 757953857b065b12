import { describe, expect, it } from 'vitest';
import { alongFace } from '../../src/base/along';
import { rectangle } from '../../src/base/outline';
import { placeOf } from '../../src/base/place';
import { isConvex } from '../../src/base/polygon';
import { squareCut } from '../../src/base/stuff';
import type { Vec2 } from '../../src/vocabulary/geometry';

describe('where a placed shape lies along a face', () => {
  // A stick of 500 along x from (100, 40), 38 wide across (to −y: out is z, so across = z × x = y), 63 high.
  const stick = {
    shape: { kind: 'stick', section: rectangle(38, 63), start: squareCut(0), end: squareCut(500) },
    place: placeOf([100, 40, 0], [1, 0, 0], [0, 0, 1]),
  } as const;

  it('is measured from the start of its line', () => {
    expect(alongFace(stick, { origin: [0, 0], along: [1, 0] })).toEqual([100, 600]);
    expect(alongFace(stick, { origin: [30, 900], along: [1, 0] })).toEqual([70, 570]);
    // From the other end the same piece lies before the start.
    expect(alongFace(stick, { origin: [30, 0], along: [-1, 0] })).toEqual([-570, -70]);
    expect(alongFace(stick, { origin: [0, 10], along: [0, 1] })).toEqual([30, 68]);
  });

  it('on the skew is from corner to corner', () => {
    // At 45°: (x + y) / √2, from (100, 40) to (600, 78).
    const s = Math.SQRT1_2;
    const [from, to] = alongFace(stick, { origin: [0, 0], along: [s, s] });
    expect(from).toBeCloseTo(140 * s, 9);
    expect(to).toBeCloseTo(678 * s, 9);
  });
});

describe('a convex polygon', () => {
  const square: readonly Vec2[] = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ];

  it('turns nowhere to the right; straight on is no turn, nor is the noise of the last digits', () => {
    expect(isConvex(square)).toBe(true);
    expect(isConvex([[0, 0], [5, 0], ...square.slice(1)])).toBe(true);
    expect(isConvex([[0, 0], [5, 1e-12], ...square.slice(1)])).toBe(true);
  });

  it('is none that goes in by a hundredth, wherever its points begin', () => {
    const dented: readonly Vec2[] = [[0, 0], [5, 0.01], ...square.slice(1)];
    for (let i = 0; i < dented.length; i++) expect(isConvex([...dented.slice(i), ...dented.slice(0, i)])).toBe(false);
    expect(isConvex([...square].reverse())).toBe(false);
  });
});
