import { useState } from 'react';

/** Rows of a list in the job, and what each is known by on the page while it is on the board. */
export interface Keyed {
  readonly rows: readonly object[];
  readonly keys: readonly number[];
  /** The first number that no row has had yet. */
  readonly next: number;
}

/**
 * The rows after an edit. Edits leave alone what they don't change, so where a row was added or taken away the others are found again as
 * the same objects (one that the same edit changed is begun anew); where as many rows stand as before, they are the same rows, whatever
 * they say now.
 */
export function keyed(before: Keyed, rows: readonly object[]): Keyed {
  const inPlace = rows.length === before.rows.length;
  let { next } = before;
  const keys = rows.map((row, i) => before.keys[inPlace ? i : before.rows.indexOf(row)] ?? next++);
  return { rows, keys, next };
}

const NONE: Keyed = { rows: [], keys: [], next: 0 };

/** A key for each row of a list, by which what is half typed, unfolded or focused stays with its row and goes with it. */
export function useRowKeys(rows: readonly object[]): readonly number[] {
  const [seen, setSeen] = useState(() => keyed(NONE, rows));
  if (seen.rows === rows) return seen.keys;
  const now = keyed(seen, rows);
  setSeen(now);
  return now.keys;
}
