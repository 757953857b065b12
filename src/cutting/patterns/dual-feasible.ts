/*
 * Dual feasible functions: pieces that fit in a length one beside the other keep fitting in a length of 1 when each is replaced by what the
 * function says. Applied to both sides of pieces they turn areas into weights of which no sheet holds more than 1, guillotine or not.
 */

/** From a side, 0 up to the capacity, to a part of 1. */
export type DualFeasible = (side: number) => number;

/**
 * Those worth trying for pieces with such sides: the side itself; large ones as a whole and small ones as nothing (Fekete & Schepers, "New
 * classes of fast lower bounds for bin packing problems", Mathematical Programming 91, 2001, U and u); steps of k counted from both ends
 * (Carlier, Clautiaux & Moukrim, "New reduction procedures and lower bounds for the two-dimensional bin packing problem with fixed
 * orientation", Computers & Operations Research 34, 2007, f0 with steps). `most`: of the two families with a parameter taken from the sides.
 */
export function dualFeasible(capacity: number, sides: readonly number[], most: number): readonly DualFeasible[] {
  const small = [...new Set(sides.map((s) => Math.min(s, capacity - s)))].filter((s) => s > 0).sort((a, b) => a - b);
  const chosen = small.filter((_, i) => small.length <= most || i % Math.ceil(small.length / most) === 0);
  return [
    (x) => x / capacity,
    ...[1, 2, 3, 4, 5].map((k) => rounded(capacity, k)),
    ...chosen.flatMap((s) => [largeAsWhole(capacity, s), stepped(capacity, s)]),
  ];
}

/** u(k): exact multiples of 1/(k + 1) stay, others go down to a multiple of 1/k. */
function rounded(capacity: number, k: number): DualFeasible {
  return (x) => (((k + 1) * x) % capacity === 0 ? x / capacity : Math.floor(((k + 1) * x) / capacity) / k);
}

/** Below the least: nothing; over the capacity less the least: all. */
function largeAsWhole(capacity: number, least: number): DualFeasible {
  return (x) => (x < least ? 0 : x > capacity - least ? 1 : x / capacity);
}

/** How many steps fit in a side up to the half; beyond it, all that fit less those that fit in the rest. */
function stepped(capacity: number, step: number): DualFeasible {
  const all = Math.floor(capacity / step);
  return (x) => {
    if (2 * x > capacity) return (2 * (all - Math.floor((capacity - x) / step))) / (2 * all);
    if (2 * x === capacity) return 0.5;
    return Math.floor(x / step) / all;
  };
}
