/** From where to where something reaches, mm: to be widened by one thing after another. */
export interface Reach {
  least: number;
  most: number;
}

/** Nothing yet. */
export const nothing = (): Reach => ({ least: Infinity, most: -Infinity });

export function cover(reach: Reach, least: number, most: number): void {
  if (least < reach.least) reach.least = least;
  if (most > reach.most) reach.most = most;
}

/** Nothing has none. */
export const lengthOf = ({ least, most }: Reach): number => Math.max(0, most - least);
