/**
 * Whether a corner of a top is butted: where it turns by `leastDeg` or more (undefined: nowhere); inside corners not where the front edge is
 * moulded (`mitredInside`), for it can't stop against a length. Degrees.
 */
export const isButted = (deflectionDeg: number, leastDeg: number | undefined, mitredInside: boolean): boolean =>
  leastDeg !== undefined && Math.abs(deflectionDeg) >= leastDeg && !(mitredInside && deflectionDeg < 0);
