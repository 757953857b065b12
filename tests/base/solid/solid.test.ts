import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ovolo } from '../../../src/base/mouldings';
import { rectangle } from '../../../src/base/outline';
import { bevelledEdge, mouldedEdge, mouldedStrip, SQUARE_EDGE } from '../../../src/base/profiles';
import { fill } from '../../../src/base/solid/caps';
import { meshOf } from '../../../src/base/solid/mesh';
import { boardFault } from '../../../src/base/solid/rings';
import { solidOf } from '../../../src/base/solid/solid';
import { volumeOf } from '../../../src/base/solid/volume';
import type { Vec2 } from '../../../src/vocabulary/geometry';
import type { Board, BoardEdge, Shape } from '../../../src/vocabulary/shape';
import { boundsInRoom } from '../bounds';
import { SEED } from '../seed';
import { enclosed, faultsOf, HERE, relative, square } from './check';
import { convexBoards, hollowBoards, places, rebated, sticks } from './random';

const shapes: fc.Arbitrary<Shape> = fc.oneof(sticks, convexBoards, hollowBoards);
const made = (shape: Shape): boolean => shape.kind === 'stick' || boardFault(shape) === null;
const RECT: Vec2[] = [
  [0, 0],
  [800, 0],
  [800, 300],
  [0, 300],
];
const board = (edges: readonly BoardEdge[], thickness = 18): Board => ({
  kind: 'board',
  outline: RECT,
  holes: [],
  thickness,
  edges,
});

describe('every shape', () => {
  test(`gives a closed skin, right side out, of the reckoned volume (seed ${SEED})`, () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        fc.pre(made(shape));
        const solid = solidOf(shape);
        expect(faultsOf(solid)).toEqual([]);
        expect(relative(enclosed(solid), volumeOf(shape))).toBeLessThan(1e-9);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test(`keeps skin and volume wherever it is put (seed ${SEED})`, () => {
    fc.assert(
      fc.property(shapes, places, (shape, place) => {
        fc.pre(made(shape));
        const { positions, indices } = meshOf({ shape, place });
        const skin = { points: positions, triangles: indices };
        expect(faultsOf(skin)).toEqual([]);
        // Single precision keeps 24 bits: 1e-4 mm at 2 m, on stuff of at least 14 mm.
        expect(relative(enclosed(skin), volumeOf(shape))).toBeLessThan(2e-5);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});

describe('sticks', () => {
  test('a square stud', () => {
    const shape: Shape = { kind: 'stick', section: rectangle(38, 63), start: square(0), end: square(924) };
    expect(volumeOf(shape)).toBeCloseTo(38 * 63 * 924, 6);
    expect(solidOf(shape).triangles.length / 3).toBe(12);
    expect(solidOf(shape)).toBe(solidOf(shape));
  });
  test('a mitre takes half of what it cuts off', () => {
    const shape: Shape = {
      kind: 'stick',
      section: rectangle(30, 12),
      start: { at: 0, perAcross: 1, perOut: 0 },
      end: { at: 450, perAcross: -1, perOut: 0 },
    };
    expect(volumeOf(shape)).toBeCloseTo(30 * 12 * (450 - 30), 6);
  });
  test('ends that cross are refused with their values', () => {
    const shape: Shape = {
      kind: 'stick',
      section: rectangle(30, 12),
      start: { at: 0, perAcross: 1, perOut: 0 },
      end: { at: 50, perAcross: -1, perOut: 0 },
    };
    expect(() => solidOf(shape)).toThrow(/ends at 20 and starts at 30 mm along its line \(30, 0\)/);
  });
  test('stands where it is put', () => {
    const place = { origin: [100, 50, 20], along: [0, 0, 1], across: [1, 0, 0], out: [0, 1, 0] } as const;
    const shape: Shape = { kind: 'stick', section: rectangle(38, 63), start: square(0), end: square(924) };
    expect(boundsInRoom({ shape, place })).toEqual({ min: [100, 50, 20], max: [138, 113, 944] });
  });
});

describe('boards', () => {
  test('bevels: a frustum by the prismatoid rule', () => {
    const shape = board([SQUARE_EDGE, bevelledEdge(18, 45), SQUARE_EDGE, bevelledEdge(18, -45)]);
    expect(volumeOf(shape)).toBeCloseTo(800 * 300 * 18, 6);
    const longer = board([SQUARE_EDGE, bevelledEdge(18, 45), SQUARE_EDGE, bevelledEdge(18, 45)]);
    expect(volumeOf(longer)).toBeCloseTo(18 * 300 * (800 + 18), 6);
    expect(boundsInRoom({ shape: longer, place: HERE })).toEqual({ min: [-18, 0, 0], max: [818, 300, 18] });
  });
  test('a moulded long edge equals the moulded strip', () => {
    const edge = mouldedEdge({ id: 'o', name: 'o', ...ovolo(9, 12, 2) }, 18);
    const shape = board([SQUARE_EDGE, SQUARE_EDGE, edge, SQUARE_EDGE]);
    const strip: Shape = {
      kind: 'stick',
      section: mouldedStrip(300, 18, ovolo(9, 12, 2)),
      start: square(0),
      end: square(800),
    };
    expect(relative(volumeOf(shape), volumeOf(strip))).toBeLessThan(1e-12);
    expect(faultsOf(solidOf(shape))).toEqual([]);
  });
  test('a ledge along one edge: two boards in one', () => {
    const shape = board([SQUARE_EDGE, SQUARE_EDGE, rebated(18, -5, 10), SQUARE_EDGE]);
    expect(volumeOf(shape)).toBeCloseTo(800 * (300 * 10 + 295 * 8), 6);
    expect(faultsOf(solidOf(shape))).toEqual([]);
    expect(enclosed(solidOf(shape))).toBeCloseTo(volumeOf(shape), 6);
  });
  test.each<[string, () => Board, RegExp]>([
    ['no thickness', () => board([SQUARE_EDGE, SQUARE_EDGE, SQUARE_EDGE, SQUARE_EDGE], 0), /0 mm thick/],
    ['an edge too few', () => board([SQUARE_EDGE]), /4 sides has 1 edges/],
    [
      'a clockwise outline',
      () => ({ ...board(RECT.map(() => SQUARE_EDGE)), outline: [...RECT].reverse() }),
      /counter-clockwise/,
    ],
    [
      'a side without length',
      () => ({
        ...board([...RECT, RECT[0]].map(() => SQUARE_EDGE)),
        outline: [...RECT, RECT[0]],
        edges: [bevelledEdge(18, 45), ...RECT.map(() => SQUARE_EDGE)],
      }),
      /no length/,
    ],
    [
      'a bevel without steps',
      () => board([{ kind: 'bevel', steps: [], angleDeg: 45 }, SQUARE_EDGE, SQUARE_EDGE, SQUARE_EDGE]),
      /without steps/,
    ],
    [
      'falling steps',
      () =>
        board([
          {
            kind: 'moulded',
            steps: [
              [9, 0],
              [4, 0],
            ],
          },
          SQUARE_EDGE,
          SQUARE_EDGE,
          SQUARE_EDGE,
        ]),
      /step at 4 mm follows one at 9/,
    ],
    [
      'more bevel than board',
      () => ({
        ...board([bevelledEdge(18, -80), SQUARE_EDGE, bevelledEdge(18, -80), SQUARE_EDGE]),
        outline: [
          [0, 0],
          [800, 0],
          [800, 100],
          [0, 100],
        ],
      }),
      /side 2 of a board.*must be above 0/,
    ],
  ])('%s is refused', (_, make, message) => {
    expect(boardFault(make())).toMatch(message);
    expect(() => volumeOf(make())).toThrow(message);
  });
});

describe('filling polygons', () => {
  const areaOfTriangles = (points: readonly Vec2[], triangles: ArrayLike<number>): number[] => {
    const areas: number[] = [];
    for (let t = 0; t < triangles.length; t += 3) {
      const [a, b, c] = [points[triangles[t]], points[triangles[t + 1]], points[triangles[t + 2]]];
      areas.push(((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])) / 2);
    }
    return areas;
  };
  test(`points in line are kept, each triangle counter-clockwise (seed ${SEED})`, () => {
    // A staircase on whole millimetres: plenty of points exactly in line.
    const steps = fc.array(fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 6 })), {
      minLength: 1,
      maxLength: 12,
    });
    fc.assert(
      fc.property(steps, (columns) => {
        const floor: Vec2[] = [];
        const roof: Vec2[] = [];
        let x = 0;
        for (const [wide, high] of columns) {
          for (let k = 0; k < wide; k++) floor.push([x + k, 0]);
          if (roof.length === 0 || roof[roof.length - 1][1] !== high) roof.push([x, high]);
          for (let k = 1; k <= wide; k++) roof.push([x + k, high]);
          x += wide;
        }
        const points = [...floor, [x, 0] as Vec2, ...roof.reverse()];
        const areas = areaOfTriangles(points, fill(points));
        expect(areas).toHaveLength(points.length - 2);
        for (const area of areas) expect(area).toBeGreaterThan(0);
        expect(areas.reduce((a, b) => a + b)).toBeCloseTo(
          columns.reduce((sum, [w, h]) => sum + w * h, 0),
          9,
        );
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
  test('a polygon that crosses itself is refused', () => {
    const crossed: Vec2[] = [
      [0, 0],
      [10, 0],
      [3, 8],
      [8, 8],
      [0, -4],
    ];
    expect(() => fill([...crossed, [5, 5], [20, 1], [-7, 3]])).toThrow(/crosses itself/);
  });
});
