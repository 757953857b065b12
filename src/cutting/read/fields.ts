import type { Issue } from '../../vocabulary/result';

/**
 * A foreign value, where in the file it was found, and what was found wrong so far. Readers go on after something is refused, so that everything
 * is told at once; what they give back then is worth nothing, and whoever asked looks at the issues first.
 */
export interface Found {
  readonly value: unknown;
  /** A JSON pointer (RFC 6901). */
  readonly path: string;
  readonly issues: Issue[];
}

/** What stands within something found. */
const within = ({ path, issues }: Found, key: string | number, value: unknown): Found => ({
  value,
  path: `${path}/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`,
  issues,
});

/** What refused things have within isn't told again. */
const silenced = (found: Found): Found => ({ ...found, issues: [] });

const SHOWN = 40;

/** A foreign value in plain words, short enough for a message. */
function inWords(value: unknown): string {
  if (value === null) return 'null';
  if (typeof value === 'string') return `the text ${JSON.stringify(value.slice(0, SHOWN))}`;
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (typeof value === 'object') return 'a group of named values';
  return String(value);
}

/** Notes that something else than `allowed` (a noun phrase) was found. */
export function refuse({ value, path, issues }: Found, allowed: string): void {
  const message = value === undefined ? `missing: needs ${allowed}` : `found ${inWords(value)}; allowed is ${allowed}`;
  issues.push({ path, message });
}

/** The fields of a group that has no other names than those known. */
export function groupOf(found: Found, known: readonly string[]): (key: string) => Found {
  const { value } = found;
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    refuse(found, 'a group of named values');
    return (key) => within(silenced(found), key, undefined);
  }
  const fields = new Map(Object.entries(value));
  for (const key of fields.keys()) {
    if (known.includes(key)) continue;
    found.issues.push({ path: within(found, key, 0).path, message: `not known here; known are ${known.join(', ')}` });
  }
  return (key) => within(found, key, fields.get(key));
}

/** A list, each of it read at its own place; nothing is read when there are too few or too many. */
export function listOf<T>(
  found: Found,
  { least = 1, most, of }: { readonly least?: number; readonly most: number; readonly of: string },
  read: (item: Found) => T,
): readonly T[] {
  const { value } = found;
  if (Array.isArray(value) && value.length >= least && value.length <= most)
    return value.map((item, i) => read(within(found, i, item)));
  refuse(found, `a list of ${least} to ${most} ${of}`);
  return [];
}

/** Two of a kind. */
export function pairOf<T>(found: Found, allowed: string, read: (item: Found) => T): readonly [T, T] {
  const { value } = found;
  const whole = Array.isArray(value) && value.length === 2;
  if (!whole) refuse(found, allowed);
  const [from, [first, second]] = whole ? [found, value] : [silenced(found), []];
  return [read(within(from, 0, first)), read(within(from, 1, second))];
}

/** What a number may be, both included. */
export interface Range {
  readonly least: number;
  readonly most: number;
  readonly whole?: true;
  /** Absent: of nothing in particular. */
  readonly unit?: string;
}

export function numberOf(found: Found, { least, most, whole, unit }: Range): number {
  const { value } = found;
  if (typeof value === 'number' && value >= least && value <= most && (!whole || Number.isInteger(value))) return value;
  refuse(found, `a ${whole ? 'whole ' : ''}number from ${least} to ${most}${unit ? ` ${unit}` : ''}`);
  return Number.NaN;
}

/** Reads what may be absent. */
export const maybe = <T>(found: Found, read: (found: Found) => T): T | undefined =>
  found.value === undefined ? undefined : read(found);

const LONGEST_TEXT = 200;

export function textOf(found: Found): string {
  const { value } = found;
  if (typeof value === 'string' && value.length > 0 && value.length <= LONGEST_TEXT) return value;
  refuse(found, `a text of 1 to ${LONGEST_TEXT} characters`);
  return '';
}

export function flagOf(found: Found): boolean {
  if (typeof found.value !== 'boolean') refuse(found, 'true or false');
  return found.value === true;
}

export function oneOf<T extends string>(found: Found, options: readonly T[]): T {
  const one = options.find((option) => option === found.value);
  if (one === undefined) refuse(found, options.map((option) => `"${option}"`).join(' or '));
  return one ?? (options[0] as T);
}
