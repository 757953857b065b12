import { expect, test } from 'vitest';
import { creased } from '../../../app/scene/crease';
import { level, UP } from '../../../src/base/place';
import { meshOf } from '../../../src/base/solid/mesh';
import type { Place } from '../../../src/vocabulary/geometry';
import type { Shape, Stick } from '../../../src/vocabulary/shape';
import { stick } from '../parts';

const place: Place = { origin: [0, 0, 0], along: level([1, 0]), across: level([0, 1]), out: UP };
const of = (shape: Shape) => creased(meshOf({ shape, place }));

const lengths = (triples: Float32Array): number[] =>
  Array.from({ length: triples.length / 3 }, (_, i) => Math.hypot(...triples.subarray(3 * i, 3 * i + 3)));

test('a square stick has its twelve edges and nothing but square normals', () => {
  const { edges, normals, positions } = of(stick(800, 63, 38));
  const run = Array.from({ length: edges.length / 6 }, (_, i) => {
    const [ax, ay, az, bx, by, bz] = edges.subarray(6 * i, 6 * i + 6);
    return Math.hypot(bx! - ax!, by! - ay!, bz! - az!);
  }).sort((a, b) => a - b);
  expect(run).toEqual([38, 38, 38, 38, 63, 63, 63, 63, 800, 800, 800, 800]);
  expect(positions.length).toBe(normals.length);
  for (let i = 0; i < normals.length; i += 3) {
    const sizes = [0, 1, 2].map((k) => Math.abs(normals[i + k]!)).sort();
    expect(sizes[2]).toBeCloseTo(1, 6);
    expect(sizes[1]).toBeCloseTo(0, 6);
  }
});

/** Half a round bar of 20 mm radius, flat below. */
const halfRound: Stick = {
  ...stick(500, 40, 20),
  section: { start: [0, 0], segments: [{ to: [40, 0] }, { to: [0, 0], radius: 20 }] },
};

test('a round is shaded round: every normal on it points away from its centre', () => {
  const { positions, normals } = of(halfRound);
  let onRound = 0;
  for (let i = 0; i < positions.length; i += 3) {
    if (Math.abs(normals[i]!) > 0.5 || positions[i + 2]! < 1) continue;
    onRound++;
    const away = ((positions[i + 1]! - 20) * normals[i + 1]! + positions[i + 2]! * normals[i + 2]!) / 20;
    expect(away).toBeGreaterThan(0.995);
  }
  expect(onRound).toBeGreaterThan(20);
});

test('a round has no lines drawn on it, only where it ends', () => {
  const { edges } = of(halfRound);
  for (let i = 0; i < edges.length; i += 6) {
    const lengthwise = Math.abs(edges[i]! - edges[i + 3]!) > 1;
    if (lengthwise) expect(Math.max(edges[i + 2]!, edges[i + 5]!)).toBeCloseTo(0, 3);
  }
  expect(edges.length).toBeGreaterThan(12);
});

test('normals are unit vectors, whatever the shape', () => {
  for (const size of lengths(of(halfRound).normals)) expect(size).toBeCloseTo(1, 5);
});
