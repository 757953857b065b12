import { expect, test } from 'vitest';
import { GRAIN_SIZE, grainPicture } from '../../../app/scene/grain';

const picture = grainPicture(0.4);
const at = (x: number, y: number): number => picture[4 * ((y % GRAIN_SIZE) * GRAIN_SIZE + (x % GRAIN_SIZE))]!;

/** Mean difference between neighbours, along the grain or across it. */
function roughness(dx: number, dy: number, from = 0, to = GRAIN_SIZE): number {
  let sum = 0;
  let count = 0;
  for (let y = dy ? from : 0; y < (dy ? to : GRAIN_SIZE); y++) {
    for (let x = dx ? from : 0; x < (dx ? to : GRAIN_SIZE); x++) {
      sum += Math.abs(at(x + dx, y + dy) - at(x, y));
      count++;
    }
  }
  return sum / count;
}

test('grain changes more across than along', () => {
  expect(roughness(0, 1)).toBeGreaterThan(3 * roughness(1, 0));
});

test('the seam is no rougher than the rest', () => {
  expect(roughness(0, 1, GRAIN_SIZE - 1)).toBeLessThan(2 * roughness(0, 1));
  expect(roughness(1, 0, GRAIN_SIZE - 1)).toBeLessThan(2 * roughness(1, 0));
});

test('grain darkens by no more than it is told, and is opaque', () => {
  const greys = picture.filter((_, i) => i % 4 === 0);
  expect(Math.min(...greys)).toBeGreaterThanOrEqual(255 * 0.6 - 1);
  expect(new Set(picture.filter((_, i) => i % 4 === 3))).toEqual(new Set([255]));
});
