import type { Issue } from '../vocabulary/result';
import { pointer } from './words';

/** Longest file that is read, in characters: a large real job takes some 50 thousand. */
export const MOST_CHARACTERS = 5_000_000;
/** A job nests 8 deep (a segment's point in the stock book). */
const MOST_DEEP = 16;
/** Longest list or group; the schema's own bounds are lower. */
const MOST_IN_ONE = 5_000;
/** Values in all. */
const MOST_VALUES = 200_000;

/**
 * What keeps a parsed file from being looked at more closely: too deep, too long or too much of it, or a name that stands for
 * something else in this language. Never recurses; stops at the first finding.
 */
export function tooMuch(root: unknown): Issue | null {
  const waiting: { value: unknown; path: readonly string[] }[] = [{ value: root, path: [] }];
  let seen = 0;
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const { value, path } = next;
    if (typeof value !== 'object' || value === null) continue;
    if (path.length >= MOST_DEEP) return issue(path, `nested more than ${MOST_DEEP} deep`);
    const keys = Object.keys(value);
    if (keys.length > MOST_IN_ONE) {
      return issue(path, `found ${keys.length} things in one place; at most ${MOST_IN_ONE} are allowed`);
    }
    seen += keys.length;
    if (seen > MOST_VALUES) return issue([], `holds more than ${MOST_VALUES} values`);
    for (const key of keys) {
      const within = [...path, key];
      if (key === '__proto__') return issue(within, 'not known here: no name in a job file is "__proto__"');
      waiting.push({ value: (value as Record<string, unknown>)[key], path: within });
    }
  }
  return null;
}

const issue = (path: readonly string[], message: string): Issue => ({ path: pointer(path), message });
