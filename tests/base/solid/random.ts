import fc from 'fast-check';
import { type EdgePath, reachOf } from '../../../src/base/edge-path';
import { bead, cavetto, chamfer, cutterOf, cymaRecta, cymaReversa, ovolo, torus } from '../../../src/base/mouldings';
import { flatten } from '../../../src/base/outline';
import { bevelledEdge, mouldedEdge, mouldedSection, SQUARE_EDGE } from '../../../src/base/profiles';
import type { Outline, Place, Vec2, Vec3 } from '../../../src/vocabulary/geometry';
import type { Board, BoardEdge, Stick } from '../../../src/vocabulary/shape';

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const small = between(2, 12);
/** Mouldings that can be run on a board's edge: they never undercut. */
const boardPaths: fc.Arbitrary<EdgePath> = fc
  .tuple(fc.constantFrom(ovolo, cavetto, chamfer, cymaReversa, cymaRecta), small, small, fc.constantFrom(0, 1.5))
  .map(([make, p, h, fillet]) => make(p, h, fillet));
export const paths: fc.Arbitrary<EdgePath> = fc.oneof(
  boardPaths,
  fc.tuple(fc.constantFrom(bead, torus), small, between(0.5, 4)).map(([make, h, beside]) => make(h, beside)),
);

/** A board's face with flutes of shallow arcs run through it. */
const fluted: fc.Arbitrary<Outline> = fc
  .tuple(fc.integer({ min: 1, max: 7 }), between(6, 14), between(2, 6), between(0.2, 1), between(14, 25))
  .map(([n, wide, fillet, share, thickness]) => {
    const width = n * wide + (n + 1) * fillet;
    const radius = -(wide / 2) / share;
    const segments = [{ to: [width, 0] as Vec2 }, { to: [width, thickness] as Vec2 }];
    const flutes = Array.from({ length: n }, (_, i) => {
      const right = width - fillet - i * (wide + fillet);
      return [{ to: [right, thickness] as Vec2 }, { to: [right - wide, thickness] as Vec2, radius }];
    });
    return { start: [0, 0], segments: [...segments, ...flutes.flat(), { to: [0, thickness] }, { to: [0, 0] }] };
  });

export const sections: fc.Arbitrary<Outline> = fc.oneof(
  fc
    .tuple(between(30, 150), between(14, 45), fc.option(paths), fc.option(paths))
    .map(([w, t, upper, lower]) => mouldedSection(w, t, { ...(upper ? { upper } : {}), ...(lower ? { lower } : {}) })),
  fluted,
);

const slope = fc.oneof(fc.constant(0), between(-1.8, 1.8));
const through: fc.Arbitrary<Stick> = fc
  .tuple(sections, between(-500, 500), between(800, 3000), slope, slope, slope, slope)
  .map(([section, at, length, a, b, c, d]) => ({
    kind: 'stick',
    section,
    start: { at, perAcross: a, perOut: b },
    end: { at: at + length, perAcross: c, perOut: d },
  }));

/** Sticks whose hollows stop somewhere between the end cuts. */
export const stoppedSticks: fc.Arbitrary<Stick> = fc
  .tuple(through, between(0.01, 0.49), between(0.51, 0.99))
  .map(([stick, near, far]) => {
    const at = (plane: Stick['start']): number[] =>
      flatten(stick.section).map(([u, v]) => plane.at + plane.perAcross * u + plane.perOut * v);
    const first = Math.max(...at(stick.start));
    const length = Math.min(...at(stick.end)) - first;
    return { ...stick, stopped: { from: first + near * length, to: first + far * length } };
  });

export const sticks: fc.Arbitrary<Stick> = fc.oneof(through, stoppedSticks);

/** An edge with a ledge: square up to `at`, and from there moved by `deep`. */
export const rebated = (thickness: number, deep: number, at: number): BoardEdge => ({
  kind: 'moulded',
  steps: [
    [0, 0],
    [at, 0],
    [at, deep],
    [thickness, deep],
  ],
});

const edgesFor = (thickness: number): fc.Arbitrary<BoardEdge> =>
  fc.oneof(
    fc.constant(SQUARE_EDGE),
    between(-60, 60).map((angle) => bevelledEdge(thickness, angle)),
    fc.tuple(between(-10, 10), between(0.2, 0.8)).map(([deep, share]) => rebated(thickness, deep, share * thickness)),
    boardPaths
      .filter((path) => reachOf(path).depth <= thickness)
      .map((path) => mouldedEdge(cutterOf('test', 'test', path), thickness)),
  );

/** Round and square holes well inside a board of at least 300 × 300. */
const holes: fc.Arbitrary<Outline[]> = fc
  .tuple(fc.boolean(), fc.boolean(), between(10, 30))
  .map(([round, squared, r]) => [
    ...(round
      ? [
          {
            start: [r - 40, 0] as Vec2,
            segments: [
              { to: [-r - 40, 0] as Vec2, radius: r },
              { to: [r - 40, 0] as Vec2, radius: r },
            ],
          },
        ]
      : []),
    ...(squared
      ? [
          {
            start: [20, -r] as Vec2,
            segments: (
              [
                [50, -r],
                [50, r],
                [20, r],
                [20, -r],
              ] as Vec2[]
            ).map((to) => ({ to })),
          },
        ]
      : []),
  ]);

/** Convex boards about the origin: corners on an ellipse, at angles far enough apart to leave every side a good length. */
export const convexBoards: fc.Arbitrary<Board> = fc
  .tuple(fc.integer({ min: 3, max: 8 }), between(350, 900), between(350, 1400), between(0, 1), between(16, 45), holes)
  .chain(([n, a, b, turn, thickness, cut]) => {
    const outline = Array.from({ length: n }, (_, i): Vec2 => {
      const angle = ((i + turn) * 2 * Math.PI) / n;
      return [a * Math.cos(angle), b * Math.sin(angle)];
    });
    return fc
      .array(edgesFor(thickness), { minLength: n, maxLength: n })
      .map((edges): Board => ({ kind: 'board', outline, holes: cut, thickness, edges }));
  });

/** L-shaped boards, with a corner in the middle of a straight side. */
export const hollowBoards: fc.Arbitrary<Board> = fc
  .tuple(between(900, 2000), between(900, 2000), between(150, 400), between(16, 45))
  .chain(([length, width, leg, thickness]) => {
    const outline: Vec2[] = [
      [0, 0],
      [length / 2, 0],
      [length, 0],
      [length, leg],
      [leg, leg],
      [leg, width],
      [0, width],
    ];
    return fc.array(edgesFor(thickness), { minLength: 7, maxLength: 7 }).map((edges): Board => {
      // The two halves of the straight side carry one and the same edge.
      const even = edges.map((edge, i) => (i === 1 ? edges[0] : edge));
      return { kind: 'board', outline, holes: [], thickness, edges: even };
    });
  });

const unit = (v: Vec3): Vec3 => {
  const l = Math.hypot(...v);
  return [v[0] / l, v[1] / l, v[2] / l];
};
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Right-handed places, anyhow turned, near the origin. */
export const places: fc.Arbitrary<Place> = fc
  .tuple(
    fc.array(between(-100, 100), { minLength: 3, maxLength: 3 }),
    between(0, 6.28),
    between(-1.4, 1.4),
    between(0, 6.28),
  )
  .map(([[x, y, z], azimuth, rise, roll]) => {
    const along: Vec3 = [Math.cos(rise) * Math.cos(azimuth), Math.cos(rise) * Math.sin(azimuth), Math.sin(rise)];
    const level = unit(cross([0, 0, 1], along));
    const raised = cross(along, level);
    const turned = (s: number, c: number): Vec3 =>
      [0, 1, 2].map((k) => level[k] * c + raised[k] * s) as unknown as Vec3;
    const across = turned(Math.sin(roll), Math.cos(roll));
    return { origin: [x, y, z], along, across, out: cross(along, across) };
  });
