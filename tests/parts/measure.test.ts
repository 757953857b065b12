import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ovolo } from '../../src/base/mouldings';
import { rectangle } from '../../src/base/outline';
import { bevelledEdge, mouldedEdge, SQUARE_EDGE } from '../../src/base/profiles';
import { boardFault } from '../../src/base/solid/rings';
import { measure } from '../../src/parts/measure';
import type { Vec2 } from '../../src/vocabulary/geometry';
import type { Board, BoardEdge, EndPlane, Shape, Stick } from '../../src/vocabulary/shape';
import { boundsInRoom } from '../base/bounds';
import { SEED } from '../base/seed';
import { HERE } from '../base/solid/check';
import { convexBoards, hollowBoards, sticks } from '../base/solid/random';
import { plane } from './draft';

const stick = (start: EndPlane, end: EndPlane): Stick => ({ kind: 'stick', section: rectangle(100, 18), start, end });

describe('sticks', () => {
  test('square ends', () => {
    expect(measure(stick(plane(0), plane(924)))).toEqual({
      size: { length: 924, width: 100, thickness: 18 },
      shortPoint: 924,
      ends: [
        { kind: 'square', angleDeg: 90, sawDeg: 0, tiltDeg: 0, longSide: 'none' },
        { kind: 'square', angleDeg: 90, sawDeg: 0, tiltDeg: 0, longSide: 'none' },
      ],
    });
  });

  test('a panel moulding mitred at both ends, long at its outer edge', () => {
    const { size, shortPoint, ends } = measure(stick(plane(0, 1), plane(450, -1)));
    expect(size.length).toBe(450);
    expect(shortPoint).toBe(250);
    for (const end of ends)
      expect(end).toEqual({ kind: 'mitre', angleDeg: 45, sawDeg: 45, tiltDeg: 0, longSide: 'lower edge' });
  });

  test('a skirting on edge: long at the face on outside corners, at the back on inside ones', () => {
    const { size, shortPoint, ends } = measure(stick(plane(0, 0, -1), plane(1800, 0, -1)));
    expect(size.length).toBe(1818);
    expect(shortPoint).toBe(1800);
    expect(ends[0]).toEqual({ kind: 'bevel', angleDeg: 45, sawDeg: 0, tiltDeg: 45, longSide: 'face' });
    expect(ends[1]).toEqual({ kind: 'bevel', angleDeg: 45, sawDeg: 0, tiltDeg: 45, longSide: 'back' });
  });

  test('the short point is no difference of end offsets: parallel mitres leave every line equally long', () => {
    const { size, shortPoint } = measure(stick(plane(0, 0.5), plane(600, 0.5)));
    expect(size.length).toBe(650);
    expect(shortPoint).toBe(600);
  });

  test('a compound end names the side that makes more of the length', () => {
    const { ends } = measure(stick(plane(0, -0.02, 0.9), plane(900, 0.5, 0.3)));
    expect(ends[1]).toMatchObject({ kind: 'compound', longSide: 'upper edge' });
    expect(ends[0]).toMatchObject({ kind: 'compound', longSide: 'back' });
  });
});

describe('boards', () => {
  const RECT: Vec2[] = [
    [0, 0],
    [800, 0],
    [800, 300],
    [0, 300],
  ];
  const board = (edges: readonly BoardEdge[], outline: readonly Vec2[] = RECT): Board => ({
    kind: 'board',
    outline,
    holes: [],
    thickness: 18,
    edges,
  });

  test('a corner pillar: bevelled end, longer at the face', () => {
    const { size, shortPoint, ends } = measure(board([SQUARE_EDGE, bevelledEdge(18, 45), SQUARE_EDGE, SQUARE_EDGE]));
    expect(size).toEqual({ length: 818, width: 300, thickness: 18 });
    expect(shortPoint).toBe(800);
    expect(ends[0].kind).toBe('square');
    expect(ends[1].kind).toBe('bevel');
    expect(ends[1].tiltDeg).toBeCloseTo(45, 9);
    expect(ends[1].longSide).toBe('face');
  });
  test('a bevel inward is longer at the back', () => {
    const { size, ends } = measure(board([SQUARE_EDGE, SQUARE_EDGE, SQUARE_EDGE, bevelledEdge(18, -22.5)]));
    expect(size.length).toBe(800);
    expect(ends[0]).toMatchObject({ kind: 'bevel', longSide: 'back' });
    expect(ends[0].tiltDeg).toBeCloseTo(22.5, 9);
    expect(ends[0].sawDeg).toBe(0);
  });
  test('a long edge that is bevelled or moulded changes the width, not the ends', () => {
    const { size, ends } = measure(board([bevelledEdge(18, 45), SQUARE_EDGE, SQUARE_EDGE, SQUARE_EDGE]));
    expect(size).toEqual({ length: 800, width: 318, thickness: 18 });
    expect(ends.map((end) => end.kind)).toEqual(['square', 'square']);
    const moulded = mouldedEdge({ id: 'o', name: 'o', ...ovolo(9, 9) }, 18);
    const round = measure(board([SQUARE_EDGE, moulded, SQUARE_EDGE, SQUARE_EDGE]));
    expect(round.size).toEqual({ length: 800, width: 300, thickness: 18 });
    expect(round.ends[1].kind).toBe('square');
    expect(round.shortPoint).toBe(791);
  });
  test('a top mitred in plan at a corner of 135°', () => {
    const back = 2000 - 600 * Math.tan(Math.PI / 8);
    const { size, shortPoint, ends } = measure(
      board(
        RECT.map(() => SQUARE_EDGE),
        [
          [0, 0],
          [2000, 0],
          [back, 600],
          [0, 600],
        ],
      ),
    );
    expect(size.length).toBe(2000);
    expect(shortPoint).toBeCloseTo(back, 9);
    expect(ends[1]).toMatchObject({ kind: 'mitre', tiltDeg: 0, longSide: 'lower edge' });
    expect(ends[1].sawDeg).toBeCloseTo(22.5, 9);
    expect(ends[1].angleDeg).toBeCloseTo(67.5, 9);
    expect(ends[0].kind).toBe('square');
  });
  test('an end both slanted and bevelled: the tilt is the bevel, whatever the slant', () => {
    const slanted: Vec2[] = [
      [0, 0],
      [700, 0],
      [800, 300],
      [100, 300],
    ];
    const { ends } = measure(board([SQUARE_EDGE, bevelledEdge(18, 30), SQUARE_EDGE, bevelledEdge(18, -10)], slanted));
    expect(ends[1]).toMatchObject({ kind: 'compound', longSide: 'upper edge' });
    expect(ends[1].tiltDeg).toBeCloseTo(30, 9);
    expect(ends[1].sawDeg).toBeCloseTo((Math.atan(1 / 3) * 180) / Math.PI, 9);
    expect(ends[0]).toMatchObject({ kind: 'compound', longSide: 'lower edge' });
    expect(ends[0].tiltDeg).toBeCloseTo(10, 9);
  });
});

test(`no piece is shorter than its short point, and none longer or wider than its solid (seed ${SEED})`, () => {
  const shapes = fc.oneof<fc.Arbitrary<Shape>[]>(sticks, convexBoards, hollowBoards);
  fc.assert(
    fc.property(shapes, (shape) => {
      fc.pre(shape.kind === 'stick' || boardFault(shape) === null);
      const { size, shortPoint, ends } = measure(shape);
      const { min, max } = boundsInRoom({ shape, place: HERE });
      expect(shortPoint).toBeLessThanOrEqual(size.length + 1e-9);
      expect(Math.abs(size.length - (max[0] - min[0]))).toBeLessThan(1e-6);
      // A round may swell past the last corner of its chords by the chord error.
      const [across, out] = [max[1] - min[1], max[2] - min[2]];
      const [width, thickness] =
        shape.kind === 'stick' ? [Math.max(across, out), Math.min(across, out)] : [across, out];
      expect(Math.abs(size.width - width)).toBeLessThan(0.03);
      expect(Math.abs(size.thickness - thickness)).toBeLessThan(0.03);
      for (const end of ends) {
        expect(end.angleDeg + (end.kind === 'bevel' ? end.tiltDeg : end.sawDeg)).toBeCloseTo(90, 9);
        expect(end.kind === 'square').toBe(end.longSide === 'none');
        expect(end.sawDeg).toBeGreaterThanOrEqual(0);
        expect(end.tiltDeg).toBeLessThan(90);
      }
    }),
    { seed: SEED, numRuns: 300 },
  );
});
