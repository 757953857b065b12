import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cymaReversa } from '../../../src/base/mouldings';
import { rectangle } from '../../../src/base/outline';
import { polygonArea, polygonBounds } from '../../../src/base/polygon';
import { bevelledEdge, mouldedEdge, mouldedStrip, SQUARE_EDGE } from '../../../src/base/profiles';
import { projectOf, type View } from '../../../src/base/solid/project';
import { boardFault } from '../../../src/base/solid/rings';
import type { Outline, Place } from '../../../src/vocabulary/geometry';
import type { Board, Shape } from '../../../src/vocabulary/shape';
import { boundsInRoom } from '../bounds';
import { SEED } from '../seed';
import { HERE, square } from './check';
import { convexBoards, places, sticks } from './random';

/** A front seen from the front: the room's x to the right, z up; the viewer stands at −y. */
const FRONT: View = { right: [1, 0, 0], up: [0, 0, 1] };
const PLAN: View = { right: [1, 0, 0], up: [0, 1, 0] };
/** On the front at y = 0: along x, up z, out −y. */
const ON_FRONT: Place = { origin: [100, 0, 40], along: [1, 0, 0], across: [0, 0, 1], out: [0, -1, 0] };
const round = (points: readonly (readonly number[])[]) =>
  points.map((p) => p.map((x) => Math.round(x * 1e6) / 1e6 + 0));

describe('silhouettes', () => {
  test('a stud from the front and from above', () => {
    const shape: Shape = { kind: 'stick', section: rectangle(38, 63), start: square(0), end: square(900) };
    const place: Place = { origin: [400, 63, 38], along: [0, 0, 1], across: [1, 0, 0], out: [0, 1, 0] };
    const front = projectOf({ shape, place }, FRONT);
    expect(polygonBounds(front.outline)).toEqual({ min: [400, 38], max: [438, 938] });
    expect(front.lines).toEqual([]);
    expect(front.nearest).toBe(-63);
    const plan = projectOf({ shape, place }, PLAN);
    expect(round(plan.outline)).toEqual([
      [400, 63],
      [438, 63],
      [438, 126],
      [400, 126],
    ]);
    expect(plan.nearest).toBe(938);
  });

  test('a mitred panel moulding shows its trapezium and its arrises between the edges', () => {
    const shape: Shape = {
      kind: 'stick',
      section: mouldedStrip(30, 15, cymaReversa(8, 12, 2)),
      start: { at: 0, perAcross: 1, perOut: 0 },
      end: { at: 450, perAcross: -1, perOut: 0 },
    };
    const { outline, lines } = projectOf({ shape, place: ON_FRONT }, FRONT);
    expect(polygonArea(outline)).toBeCloseTo(30 * (450 - 30), 6);
    // Where the face meets the fillet: both its arrises fall on one line, 18 mm up, running from mitre to mitre.
    expect(lines.map(round)).toContainEqual([
      [118, 58],
      [532, 58],
    ]);
    for (const line of lines) expect(polygonBounds(line).min[1]).toBeGreaterThan(40);
  });

  test(`a silhouette spans what the solid spans in that view, and runs counter-clockwise (seed ${SEED})`, () => {
    const shapes = fc.oneof<fc.Arbitrary<Shape>[]>(sticks, convexBoards);
    fc.assert(
      fc.property(shapes, places, fc.boolean(), (shape, turned, straight) => {
        fc.pre(shape.kind === 'stick' || boardFault(shape) === null);
        const place = straight ? HERE : turned;
        for (const view of [FRONT, PLAN]) {
          const { outline, nearest } = projectOf({ shape, place }, view);
          const { min, max } = boundsInRoom({ shape, place });
          const up = view === FRONT ? 2 : 1;
          // Seen along its axis to within a thousandth in a metre, a stick of 3 m is drawn as if exactly so.
          const within = 0.004;
          const found = polygonBounds(outline);
          expect(polygonArea(outline)).toBeGreaterThan(0);
          expect(Math.abs(found.min[0] - min[0])).toBeLessThan(within);
          expect(Math.abs(found.max[0] - max[0])).toBeLessThan(within);
          expect(Math.abs(found.min[1] - min[up])).toBeLessThan(within);
          expect(Math.abs(found.max[1] - max[up])).toBeLessThan(within);
          expect(Math.abs(nearest - (view === FRONT ? -min[1] : max[2]))).toBeLessThan(within);
        }
      }),
      { seed: SEED, numRuns: 150 },
    );
  });
});

describe('arrises', () => {
  const fluted: Outline = {
    start: [0, 0],
    segments: [
      { to: [100, 0] },
      { to: [100, 18] },
      { to: [60, 18] },
      { to: [40, 18], radius: -10 },
      { to: [0, 18] },
      { to: [0, 0] },
    ],
  };
  const shape: Shape = { kind: 'stick', section: fluted, start: square(0), end: square(500) };

  test('both edges of a flute are seen from the front, none of its facets', () => {
    const { lines } = projectOf({ shape, place: HERE }, PLAN);
    expect(lines.map((line) => line[0][1]).sort()).toEqual([40, 60]);
  });
  test('and none from the back, where the board hides them', () => {
    expect(projectOf({ shape, place: HERE }, { right: [1, 0, 0], up: [0, -1, 0] }).lines).toEqual([]);
  });
  test('nor an arris that lies under an overhang', () => {
    const corners = [
      [100, 0],
      [100, 18],
      [40, 18],
      [40, 12],
      [60, 12],
      [60, 6],
      [0, 6],
      [0, 0],
    ] as const;
    const section: Outline = { start: [0, 0], segments: corners.map((to) => ({ to })) };
    const { lines } = projectOf({ shape: { ...shape, section } as Shape, place: HERE }, PLAN);
    // Both corners at 40 belong to the overhang, the upper of them a silhouette in front of the lower face.
    expect([...new Set(lines.map((line) => line[0][1]))]).toEqual([40]);
  });
  test('seen along its axis a stick shows its section and no lines', () => {
    const { outline, lines } = projectOf({ shape, place: HERE }, { right: [0, 1, 0], up: [0, 0, 1] });
    expect(outline.length).toBeGreaterThan(12);
    // The flute's arc is 10π long and its chords leave it by 0.03 mm at most.
    expect(Math.abs(polygonArea(outline) - (100 * 18 - (Math.PI * 100) / 2))).toBeLessThan(0.03 * 10 * Math.PI);
    expect(lines).toEqual([]);
  });
});

describe('boards seen square on', () => {
  const cutter = { id: 'o', name: 'o', ...cymaReversa(9, 9) };
  const board: Board = {
    kind: 'board',
    outline: [
      [0, 0],
      [800, 0],
      [800, 300],
      [0, 300],
    ],
    holes: [
      {
        start: [450, 150],
        segments: [
          { to: [400, 150], radius: 25 },
          { to: [450, 150], radius: 25 },
        ],
      },
    ],
    thickness: 40,
    edges: [mouldedEdge(cutter, 40), bevelledEdge(40, 45), SQUARE_EDGE, SQUARE_EDGE],
  };

  test('reach as far as their edges do, and show the arris round the face', () => {
    const { outline, lines, nearest } = projectOf({ shape: board, place: HERE }, PLAN);
    expect(polygonBounds(outline)).toEqual({ min: [0, 0], max: [840, 300] });
    // The bevel has grown 31 where the moulding begins, and 40 where it has gone in 9.
    for (const corner of [
      [0, 0],
      [831, 0],
      [840, 9],
      [840, 300],
      [0, 300],
    ])
      expect(round(outline)).toContainEqual(corner);
    expect(lines.map(round)).toEqual([
      [
        [0, 9],
        [840, 9],
      ],
    ]);
    expect(nearest).toBe(40);
  });
  test('show the bevel only from behind', () => {
    const front = projectOf({ shape: board, place: HERE }, PLAN);
    const { outline, lines } = projectOf({ shape: board, place: HERE }, { right: [1, 0, 0], up: [0, -1, 0] });
    expect(polygonArea(outline)).toBeCloseTo(polygonArea(front.outline), 6);
    expect(lines.map(round)).toEqual([
      [
        [800, 0],
        [800, -300],
      ],
    ]);
  });
  test('let one see through their holes, and only so', () => {
    const { holes } = projectOf({ shape: board, place: HERE }, PLAN);
    expect(holes).toHaveLength(1);
    expect(polygonBounds(holes[0]).max[0]).toBeCloseTo(450, 9);
    expect(polygonArea(holes[0])).toBeGreaterThan(0);
    expect(projectOf({ shape: board, place: HERE }, FRONT).holes).toEqual([]);
  });
  test('an L stays an L', () => {
    const shape: Board = {
      ...board,
      holes: [],
      outline: [
        [0, 0],
        [900, 0],
        [900, 200],
        [200, 200],
        [200, 600],
        [0, 600],
      ],
      edges: Array.from({ length: 6 }, () => SQUARE_EDGE),
    };
    expect(polygonArea(projectOf({ shape, place: HERE }, PLAN).outline)).toBe(900 * 200 + 200 * 400);
    const flared = { ...shape, edges: shape.edges.map(() => bevelledEdge(40, 45)) };
    expect(polygonArea(projectOf({ shape: flared, place: HERE }, PLAN).outline)).toBeCloseTo(980 * 280 + 280 * 400, 6);
  });
});
