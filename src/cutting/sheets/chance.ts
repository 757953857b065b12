/** Numbers by chance, the same ones for the same seed. */
export interface Chance {
  /** A whole number from 0 to below `n` (n ≤ 2^31). */
  below(n: number): number;
  /** From 0 to below 1. */
  part(): number;
}

const BITS_32 = 2 ** 32;
/** Spreads small seeds over all bits: the golden ratio's fraction of 2^32, as in Knuth's multiplicative hashing. */
const SPREAD = 0x9e3779b1;

/** Marsaglia's generator with the shifts 13, 17, 5 (Xorshift RNGs, Journal of Statistical Software 8(14), 2003). */
export function chanceOf(seed: number): Chance {
  let state = (Math.imul(seed | 0, SPREAD) ^ 0x5bd1e995) | 0 || 1;
  const next = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return state >>> 0;
  };
  for (let i = 0; i < 8; i++) next();
  return {
    below: (n) => Math.floor((next() / BITS_32) * n),
    part: () => next() / BITS_32,
  };
}
