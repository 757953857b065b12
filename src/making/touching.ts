import type { Contact } from '../vocabulary/making';

/** Marks that each part touches. */
export type Touching = ReadonlyMap<string, readonly string[]>;

/** For each part that touches any, which ones. */
export function touchingOf(contacts: readonly Contact[]): Touching {
  const by = new Map<string, string[]>();
  const add = (a: string, b: string): void => {
    const mine = by.get(a);
    if (mine) mine.push(b);
    else by.set(a, [b]);
  };
  for (const { a, b } of contacts) {
    add(a, b);
    add(b, a);
  }
  return by;
}
