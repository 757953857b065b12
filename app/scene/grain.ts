/** Side of the grain picture in points. */
export const GRAIN_SIZE = 256;

/** A number from 0 to 1 for each lattice point, always the same one: an integer hash of our own. */
function lattice(x: number, y: number): number {
  let h = Math.imul(x, 0x27d4eb2f) ^ Math.imul(y, 0x165667b1);
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d);
  h ^= h >>> 12;
  return (h >>> 0) / 0xffffffff;
}

/** Smooth noise that repeats after `across` × `down` cells. */
function noise(x: number, y: number, across: number, down: number): number {
  const cx = Math.floor(x);
  const cy = Math.floor(y);
  const ease = (t: number): number => t * t * (3 - 2 * t);
  const tx = ease(x - cx);
  const ty = ease(y - cy);
  const at = (i: number, j: number): number => lattice((cx + i) % across, (cy + j) % down);
  const upper = at(0, 0) * (1 - tx) + at(1, 0) * tx;
  const lower = at(0, 1) * (1 - tx) + at(1, 1) * tx;
  return upper * (1 - ty) + lower * ty;
}

/**
 * Wood grain as grey values, row by row, RGBA: streaks along the rows that wander a little, broad growth bands under fine
 * fibres. Repeats seamlessly both ways. `depth` is how much darker the darkest streak is, 0 to 1.
 */
export function grainPicture(depth: number): Uint8Array {
  const size = GRAIN_SIZE;
  const out = new Uint8Array(4 * size * size);
  for (let j = 0; j < size; j++) {
    for (let i = 0; i < size; i++) {
      const u = i / size;
      const v = j / size;
      const wander = noise(u * 3, v * 4, 3, 4) * 1.4;
      const bands = noise(u * 2, (v * 14 + wander) % 14, 2, 14);
      const fibres = noise(u * 10, v * 96, 10, 96);
      const tone = 255 * (1 - depth * (0.65 * bands + 0.35 * fibres));
      out.fill(Math.round(tone), 4 * (j * size + i), 4 * (j * size + i) + 3);
      out[4 * (j * size + i) + 3] = 255;
    }
  }
  return out;
}
