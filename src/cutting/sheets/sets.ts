import { SHIFT, WHAT } from './fields';
import type { Forest } from './forest';

/** Takes off all pieces of a set. */
export function clearSet({ memory: M, at, scaled, clear }: Forest, set: number): void {
  for (let i = M[at.pieces] - 1; i >= 0; i--) {
    const node = M[at.pieces + 1 + i];
    if (i < M[at.pieces] && scaled.kinds[M[(node << SHIFT) + WHAT]].set === set) clear(node);
  }
}

/**
 * Leaves only whole sets: takes off those of which not all pieces are on, and lets the room be used by others.
 * @param plant puts in what is missing, without some sets
 */
export function keepWholeSets(forest: Forest, plant: (without: Uint8Array) => void): void {
  const { memory: M, at, scaled } = forest;
  const without = new Uint8Array(scaled.sets.length);
  for (;;) {
    let cleared = false;
    scaled.sets.forEach((kinds, set) => {
      if (without[set] === 1 || kinds.every((kind) => M[at.missing + kind] === 0)) return;
      clearSet(forest, set);
      without[set] = 1;
      cleared = true;
    });
    if (!cleared) return;
    plant(without);
  }
}
