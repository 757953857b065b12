import { expect, test } from 'vitest';
import { type Face, placeLying, placeStanding } from '../../src/base/place';
import type { Place } from '../../src/vocabulary/geometry';

/** Along x, along y, and turned by the triangle of 3, 4 and 5: each looks to the right of the way it runs. */
const FACES: readonly Face[] = [
  { origin: [0, 0], along: [1, 0], front: [0, -1] },
  { origin: [3000, 0], along: [0, 1], front: [1, 0] },
  { origin: [500, -20], along: [0.8, 0.6], front: [0.6, -0.8] },
];

/** At x = 120 along each, 63 behind it and 40 up; the third: (500 + 96 − 37.8, −20 + 72 + 50.4). */
const ORIGINS = [
  [120, 63, 40],
  [2937, 120, 40],
  [558.2, 102.4, 40],
] as const;
const LYING = [
  { along: [1, 0, 0], across: [0, 0, 1], out: [0, -1, 0] },
  { along: [0, 1, 0], across: [0, 0, 1], out: [1, 0, 0] },
  { along: [0.8, 0.6, 0], across: [0, 0, 1], out: [0.6, -0.8, 0] },
] as const;
const STANDING = [
  { along: [0, 0, 1], across: [-1, 0, 0], out: [0, -1, 0] },
  { along: [0, 0, 1], across: [0, -1, 0], out: [1, 0, 0] },
  { along: [0, 0, 1], across: [-0.8, -0.6, 0], out: [0.6, -0.8, 0] },
] as const;

/** To nine places after the point, and 0 for what a product of −1 and 0 leaves. */
const rounded = ({ origin, along, across, out }: Place) => {
  const whole = (v: readonly number[]) => v.map((n) => Number(n.toFixed(9)) + 0);
  return { origin: whole(origin), along: whole(along), across: whole(across), out: whole(out) };
};

test('pieces lie and stand on the face they are asked for, whichever was asked for before', () => {
  for (const i of [0, 1, 2, 0, 2, 1, 0, 0]) {
    expect(rounded(placeLying(FACES[i], 120, -63, 40))).toEqual({ origin: ORIGINS[i], ...LYING[i] });
    expect(rounded(placeStanding(FACES[i], 120, -63, 40))).toEqual({ origin: ORIGINS[i], ...STANDING[i] });
  }
});
