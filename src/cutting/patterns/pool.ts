import type { Pattern } from './pattern';

/** The patterns at hand, none twice. */
export interface Pool {
  readonly patterns: readonly Pattern[];
  /** True when it is new. */
  add(pattern: Pattern): boolean;
}

export function emptyPool(): Pool {
  const patterns: Pattern[] = [];
  const known = new Set<string>();
  return {
    patterns,
    add(pattern) {
      const key = `${pattern.sheet}:${pattern.counts.join()}`;
      if (known.has(key)) return false;
      known.add(key);
      patterns.push(pattern);
      return true;
    },
  };
}
