import { describe, expect, test } from 'vitest';
import { type Box, crossStick, flatBoard, rearBoard, sideBoard } from '../../src/base/box';
import { rectangle } from '../../src/base/outline';
import { alongFace, type Face, toUnit } from '../../src/base/place';
import { solidOf } from '../../src/base/solid/solid';
import type { Stuff } from '../../src/base/stuff';
import { cross, heading } from '../../src/base/vec';

/** A face that starts away from the origin and is turned by 30°. */
const along = heading(30);
const face: Face = { origin: [700, -250], along, front: [along[1], -along[0]] };
const box: Box = { from: 40, to: 940, back: -520, front: -60, low: 300, high: 318 };

/** The box that a piece fills, as seen from the face. */
function filled({ shape, place }: Stuff): Box {
  const { points } = solidOf(shape);
  const corners = Array.from({ length: points.length / 3 }, (_, i) =>
    toUnit(place, points[3 * i], points[3 * i + 1], points[3 * i + 2]),
  );
  const reach = (of: (p: (typeof corners)[0]) => number): readonly [number, number] => {
    const all = corners.map(of);
    return [Math.min(...all), Math.max(...all)];
  };
  const [from, to] = reach((p) => alongFace(face, p));
  const [back, front] = reach((p) => (p[0] - 700) * face.front[0] + (p[1] + 250) * face.front[1]);
  const [low, high] = reach((p) => p[2]);
  return { from, to, back, front, low, high };
}

const MADE: readonly (readonly [string, Stuff, number])[] = [
  ['a level board', flatBoard(face, box), 900],
  ['a board from front to back that looks along', sideBoard(face, box, 1), 18],
  ['a board from front to back that looks back', sideBoard(face, box, -1), 18],
  ['a board behind, its length up', rearBoard(face, box, 'up'), 18],
  ['a board behind, its length along', rearBoard(face, box, 'along'), 900],
  ['a stick from front to back', crossStick(face, box, rectangle(18, 900), 1), 460],
  ['a stick from front to back, turned', crossStick(face, box, rectangle(18, 900), -1), 460],
];

describe('stuff that fills a box', () => {
  test.each(MADE)('%s', (_, stuff, length) => {
    const found = filled(stuff);
    for (const [side, at] of Object.entries(found)) expect(at, side).toBeCloseTo(box[side as keyof Box], 9);
    const { shape, place } = stuff;
    expect(shape.kind === 'stick' ? shape.end.at : Math.max(...shape.outline.map((p) => p[0]))).toBe(length);
    // Right-handed: along × across = out.
    cross(place.along, place.across).forEach((n, k) => {
      expect(n).toBeCloseTo(place.out[k], 12);
    });
  });

  test('the visible faces look where they should', () => {
    expect(flatBoard(face, box).place.out).toEqual([0, 0, 1]);
    expect(sideBoard(face, box, 1).place.out[0]).toBeCloseTo(along[0], 12);
    expect(sideBoard(face, box, -1).place.out[0]).toBeCloseTo(-along[0], 12);
    for (const way of ['up', 'along'] as const)
      expect(rearBoard(face, box, way).place.out[0]).toBeCloseTo(-face.front[0], 12);
  });
});
