import { describe, expect, test } from 'vitest';
import { type EdgePath, reachOf } from '../../src/base/edge-path';
import { bead, cavetto, chamfer, cutterOf, cymaRecta, cymaReversa, ovolo, torus } from '../../src/base/mouldings';
import { areaOf, boundsOf, flatten } from '../../src/base/outline';
import {
  bevelledEdge,
  mouldedEdge,
  mouldedSection,
  mouldedStrip,
  panelMoulding,
  SQUARE_EDGE,
} from '../../src/base/profiles';
import { fill } from '../../src/base/solid/caps';
import type { Segment } from '../../src/vocabulary/geometry';

const paths: Record<string, EdgePath> = {
  ovolo: ovolo(9, 9),
  'ovolo with a fillet': ovolo(9, 12, 2),
  cavetto: cavetto(8, 12),
  chamfer: chamfer(5, 5),
  'cyma reversa': cymaReversa(12, 30, 1),
  'cyma reversa, deeper than high': cymaReversa(14, 8),
  'cyma recta': cymaRecta(12, 12),
  'cyma recta, higher than deep': cymaRecta(6, 20),
  bead: bead(8, 2),
  torus: torus(18, 3),
};

describe.each(Object.entries(paths))('%s', (_, path) => {
  const { height, depth } = reachOf(path);
  const strip = mouldedStrip(120, 18, path);

  test('leaves a strip of the size asked for', () => {
    expect(boundsOf(strip)).toEqual({ min: [0, 0], max: [120, 18] });
    expect(areaOf(strip)).toBeLessThan(120 * 18);
    expect(areaOf(strip)).toBeGreaterThan(120 * 18 - height * depth);
  });
  test('keeps face and back whole below the moulding', () => {
    const points = flatten(strip);
    expect(points).toContainEqual([120 - height, 18]);
    expect(points).toContainEqual([0, 18]);
    expect(points).toContainEqual([120, 0]);
  });
  test('takes the same from either arris', () => {
    expect(areaOf(mouldedSection(120, 18, { lower: path }))).toBeCloseTo(areaOf(strip), 9);
    const both = mouldedSection(120, 18, { upper: path, lower: path });
    expect(120 * 18 - areaOf(both)).toBeCloseTo(2 * (120 * 18 - areaOf(strip)), 8);
    expect(areaOf(panelMoulding(120, 18, path, path))).toBeCloseTo(areaOf(both), 9);
  });
  test('is refused by a strip too small for it', () => {
    expect(() => mouldedStrip(height - 0.5, 18, path)).toThrow(
      `takes ${height} mm of the face; the strip is ${height - 0.5}`,
    );
    expect(() => mouldedStrip(120, depth - 0.5, path)).toThrow(/of the edge; the strip is/);
    expect(() => mouldedSection(1.5 * height, 18, { upper: path, lower: path })).toThrow(/mm of the face/);
  });
});

test('a moulding may take the whole of the edge', () => {
  const feather = mouldedStrip(40, 9, chamfer(9, 12));
  expect(areaOf(feather)).toBeCloseTo(40 * 9 - (9 * 12) / 2, 9);
  expect(flatten(feather)).toHaveLength(4);
});

test('two arcs of an ogee run into each other without an arris', () => {
  for (const ogee of [cymaReversa(10, 25), cymaRecta(10, 25), cymaReversa(12, 12), cymaRecta(25, 10)]) {
    const points = flatten({
      start: ogee.start,
      segments: [...ogee.segments, { to: [-50, 0] }, { to: [-50, -80] }, { to: [0, -80] }, { to: ogee.start }],
    });
    const turns = points.map((b, i) => {
      const a = points[(i + points.length - 1) % points.length];
      const c = points[(i + 1) % points.length];
      const turn = Math.atan2(c[1] - b[1], c[0] - b[0]) - Math.atan2(b[1] - a[1], b[0] - a[0]);
      return { at: b, turn: Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn))) };
    });
    const middle = turns.find(({ at }) => at[0] === ogee.segments[0].to[0] && at[1] === ogee.segments[0].to[1]);
    expect(middle?.turn).toBeLessThan(0.2);
  }
});

describe('a path that is no moulded arris is refused', () => {
  const straight = (start: EdgePath['start'], ...segments: Segment[]): EdgePath => ({ start, segments });
  test.each<[string, EdgePath, RegExp]>([
    ['nothing', straight([0, -5]), /without segments/],
    ['off the face', straight([-1, -5], { to: [-5, 0] }), /starts at \(-1, -5\)/],
    ['off the edge', straight([0, -5], { to: [-5, -1] }), /ends at \(-5, -1\)/],
    ['beyond the face', straight([0, -5], { to: [2, -3] }, { to: [-5, 0] }), /passes \(2, -3\)/],
    ['swelling beyond the face', ovolo(15, 30, 0, 'nicholson'), /outside the stuff/],
  ])('%s', (_, path, message) => expect(() => mouldedStrip(100, 40, path)).toThrow(message));
  test('sizes that are none', () => {
    expect(() => ovolo(0, 9)).toThrow(/projection 0/);
    expect(() => ovolo(9, 9, -1)).toThrow(/fillet -1/);
    expect(() => torus(12, 0)).toThrow(/torus of 12 mm with 0/);
    expect(() => mouldedStrip(0, 9)).toThrow(/0 × 9/);
  });
});

describe('edges of boards', () => {
  const cutter = (path: EdgePath) => cutterOf('test', 'test', path);
  test('an ovolo climbs from the edge to the face and never falls', () => {
    const edge = mouldedEdge(cutter(ovolo(9, 9)), 40);
    expect(edge).toMatchObject({ kind: 'moulded', cutter: 'test' });
    expect(edge.steps[0]).toEqual([0, 0]);
    expect(edge.steps[1]).toEqual([31, 0]);
    expect(edge.steps[edge.steps.length - 1]).toEqual([40, -9]);
    edge.steps.forEach(([out, growth], i) => {
      expect(out).toBeGreaterThanOrEqual(edge.steps[Math.max(0, i - 1)][0]);
      expect(growth).toBeLessThanOrEqual(0);
    });
  });
  test('a cutter as deep as the board leaves no square part', () => {
    expect(mouldedEdge(cutter(chamfer(18, 6)), 18).steps).toEqual([
      [0, 0],
      [18, -6],
    ]);
  });
  test('a deeper cutter and one that undercuts are refused', () => {
    expect(() => mouldedEdge(cutter(ovolo(20, 20)), 18)).toThrow(/goes 20 mm down; the board is 18/);
    expect(() => mouldedEdge(cutter(torus(12, 3)), 40)).toThrow(/undercuts/);
  });
  test('a bevel of 45° grows by the thickness, exactly', () => {
    expect(bevelledEdge(18, 45).steps[1]).toEqual([18, 18]);
    expect(bevelledEdge(18, -45).steps[1]).toEqual([18, -18]);
    expect(bevelledEdge(18, 30).steps[1][1]).toBeCloseTo(18 / Math.sqrt(3), 9);
    expect(bevelledEdge(18, 0)).toBe(SQUARE_EDGE);
    expect(() => bevelledEdge(18, 85)).toThrow(/85°; at most 80/);
  });
});

test('a moulding that takes the whole of the face leaves no edge without stuff', () => {
  // A torus of 12 with 4 beside it on a face of 16: 6 back from the face over 4, then half a circle of 12.
  const path = torus(12, 4);
  const area = 16 * 30 - 6 * 4 - (12 * 6 - (Math.PI * 36) / 2);
  for (const arrises of [{ upper: path }, { lower: path }]) {
    const section = mouldedSection(16, 30, arrises);
    expect(areaOf(section)).toBeCloseTo(area, 9);
    expect(fill(flatten(section)).length).toBe(3 * (flatten(section).length - 2));
  }
});
