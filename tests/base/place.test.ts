import { expect, test } from 'vitest';
import { level, onFace, placeLying, placeOf, placeStanding, UP } from '../../src/base/place';
import { heading } from '../../src/base/vec';
import type { Vec2 } from '../../src/vocabulary/geometry';

const faceAt = (deg: number, origin: Vec2) => {
  const along = heading(deg);
  return { origin, along, front: [along[1], -along[0]] as const };
};

test('pieces lie and stand on the face they are asked for, whichever was asked for before', () => {
  const faces = [faceAt(0, [0, 0]), faceAt(90, [3000, 0]), faceAt(37.5, [500, -20])];
  for (const face of [...faces, ...faces]) {
    expect(placeLying(face, 120, -63, 40)).toEqual(
      placeOf(onFace(face, 120, -63, 40), level(face.along), level(face.front)),
    );
    expect(placeStanding(face, 120, -63, 40)).toEqual(placeOf(onFace(face, 120, -63, 40), UP, level(face.front)));
  }
});
