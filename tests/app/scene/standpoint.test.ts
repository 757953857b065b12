import { expect, test } from 'vitest';
import type { Box } from '../../../app/scene/assembly';
import { facing, roomStand, type Standpoint, standFor, welcome } from '../../../app/scene/standpoint';
import { cross, dot, sub } from '../../../src/base/vec';
import type { Vec3 } from '../../../src/vocabulary/geometry';

const box: Box = { min: [-30, -90, 0], max: [3630, 600, 1100] };
const run = { along: [1, 0], front: [0, -1], length: 3000 } as const;
const turned = { along: [0, 1], front: [1, 0], length: 2000 } as const;
const from: Standpoint = { position: [0, -5000, 2000], target: [0, 0, 500], fovDeg: 32 };

/** Largest picture coordinate of the box's corners: 1 is the edge of the picture. */
function reach(stand: Standpoint, aspect: number): number {
  const toward = sub(stand.target, stand.position);
  const size = Math.hypot(...toward);
  const ahead: Vec3 = [toward[0] / size, toward[1] / size, toward[2] / size];
  const side = cross(ahead, [0, 0, 1]);
  const right: Vec3 = side.map((value) => value / Math.hypot(...side)) as unknown as Vec3;
  const up = cross(right, ahead);
  const tan = Math.tan((stand.fovDeg * Math.PI) / 360);
  let worst = 0;
  for (const x of [box.min[0], box.max[0]]) {
    for (const y of [box.min[1], box.max[1]]) {
      for (const z of [box.min[2], box.max[2]]) {
        const p = sub([x, y, z], stand.position);
        const depth = dot(p, ahead);
        expect(depth).toBeGreaterThan(0);
        worst = Math.max(worst, Math.abs(dot(p, right)) / (depth * tan * aspect), Math.abs(dot(p, up)) / (depth * tan));
      }
    }
  }
  return worst;
}

test.each(['fit', 'front', 'behind', 'plan', 'left', 'right'] as const)(
  '%s shows the whole unit, and fills the picture',
  (look) => {
    for (const aspect of [0.6, 1, 1.6, 3]) {
      const seen = reach(standFor(look, { run, first: run }, box, aspect, from), aspect);
      expect(seen).toBeLessThan(1);
      expect(seen).toBeGreaterThan(0.8);
    }
  },
);

test('looks are square on to the run that is asked about', () => {
  const at = (look: 'front' | 'behind' | 'left' | 'right' | 'plan', of: typeof run | typeof turned) => {
    const stand = standFor(look, { run: of, first: run }, box, 1.5, from);
    const way = sub(stand.position, stand.target);
    return way.map((value) => Number((value / Math.hypot(...way)).toFixed(2)) + 0);
  };
  expect(at('front', run)).toEqual([0, -1, 0]);
  expect(at('front', turned)).toEqual([1, 0, 0]);
  expect(at('behind', run)).toEqual([0, 1, 0]);
  expect(at('behind', turned)).toEqual([-1, 0, 0]);
  expect(at('left', run)).toEqual([-1, 0, 0]);
  expect(at('right', run)).toEqual([1, 0, 0]);
  expect(at('right', turned)).toEqual([0, 1, 0]);
  expect(at('plan', run)).toEqual([0, 0, 1]);
});

test('a plan lies by the first run, whichever is in hand', () => {
  const first = standFor('plan', { run, first: run }, box, 1.5, from);
  expect(standFor('plan', { run: turned, first: run }, box, 1.5, from)).toEqual(first);
  // A hair towards its front: that is the lower edge of the picture.
  expect(first.position[1]).toBeLessThan(first.target[1]);
  expect(first.position[0]).toBeCloseTo(first.target[0], 6);
});

test('fit keeps the direction', () => {
  const stand = standFor('fit', { run, first: run }, box, 1.5, from);
  const before = sub(from.position, from.target);
  const now = sub(stand.position, stand.target);
  expect(dot(before, now) / (Math.hypot(...before) * Math.hypot(...now))).toBeCloseTo(1, 6);
});

test('square looks are taken from afar; fitting a slanting look brings the viewer back into the room', () => {
  const front = standFor('front', { run, first: run }, box, 1.5, from);
  expect(front.fovDeg).toBeLessThan(10);
  expect(standFor('fit', { run, first: run }, box, 1.5, front).fovDeg).toBe(front.fovDeg);
  const slanting = { ...front, position: [front.position[0] + 9000, front.position[1], 9000] as Vec3 };
  expect(standFor('fit', { run, first: run }, box, 1.5, slanting).fovDeg).toBeGreaterThan(20);
});

test('at first every front is seen, also round a corner', () => {
  for (const runs of [[run], [run, turned], [run, { along: [0, -1], front: [-1, 0], length: 2500 } as const]]) {
    const way = welcome(runs);
    for (const { front } of runs) expect(dot(way, [front[0], front[1], 0])).toBeGreaterThan(0.1);
    expect(way[2]).toBeGreaterThan(0.2);
    expect(reach(roomStand(runs, box, 1.4), 1.4)).toBeLessThan(1);
  }
});

test('a unit faces where most of its front does; a short return does not turn it round', () => {
  const back = { front: [0, 1], length: 520 } as const;
  expect(facing([run])).toEqual([0, -1]);
  const [x, y] = facing([run, turned, back]);
  expect(x).toBeGreaterThan(0.5);
  expect(y).toBeLessThan(-0.5);
  expect(facing([run, { front: [0, 1], length: 3000 }])).toEqual([0, -1]);
  expect(facing([])).toEqual([0, -1]);
});
