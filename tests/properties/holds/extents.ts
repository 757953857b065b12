import type { Extent } from '../measure';

/** From left to right. */
export const rising = (extents: readonly Extent[]): readonly Extent[] => [...extents].sort((a, b) => a.from - b.from);

/** From each to the next; negative where they overlap. */
export const gapsOf = (extents: readonly Extent[]): readonly number[] =>
  extents.slice(1).map((e, i) => e.from - extents[i].to);

export const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
export const width = ({ from, to }: Extent): number => to - from;
