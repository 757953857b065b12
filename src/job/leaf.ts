import { z } from 'zod';
import type { Decision, Field } from '../vocabulary/field';
import { anyOf, complaint, inWords } from './words';

/** A message of the schema, made from what was found. */
export const says = (allowed: string) => ({ error: (issue: { input?: unknown }) => complaint(issue.input, allowed) });

/** What a field allows, in plain words. */
function allowedIn(field: Field): string {
  switch (field.kind) {
    case 'length':
      return `a length from ${field.min} to ${field.max} mm`;
    case 'number':
      return `a number from ${field.min} to ${field.max} ${field.unit}`;
    case 'count':
      return field.odd
        ? `one of ${anyOf(oddCounts(field.min, field.max).map(String))}`
        : `a whole number from ${field.min} to ${field.max}`;
    case 'choice':
      return anyOf(field.options.map((option) => `"${option.value}"`));
    case 'switch':
      return 'true or false';
    case 'stock':
      return `the id of a ${field.of} in the book${field.optional ? ' or ""' : ''}`;
    case 'lengths':
      return `a list of at most ${field.maxItems} lengths from ${field.min} to ${field.max} mm`;
  }
}

const oddCounts = (min: number, max: number): number[] =>
  Array.from({ length: max - min + 1 }, (_, i) => min + i).filter((n) => n % 2 === 1 || n === 0);

/** The values that a field takes, with its words; no default. */
export function valuesOf(field: Field): z.ZodType<Decision> {
  return bare(field).meta({ title: field.label, description: `${unitOf(field)}${field.help}` });
}

/** A number field's values, typed as a number. */
export const numberOf = (field: Field & { readonly default: number }): z.ZodType<number> =>
  valuesOf(field) as z.ZodType<number>;

/** As `valuesOf`, its default taken where the file is silent. */
export const decisionOf = (field: Field): z.ZodType<Decision> => valuesOf(field).default(field.default as never);

function bare(field: Field): z.ZodType<Decision> {
  const told = says(allowedIn(field));
  switch (field.kind) {
    case 'length':
    case 'number':
      return z.number(told).min(field.min, told).max(field.max, told);
    case 'count':
      return field.odd
        ? z.literal(oddCounts(field.min, field.max), told)
        : z.int(told).min(field.min, told).max(field.max, told);
    case 'choice':
      return z.enum(
        field.options.map((option) => option.value),
        told,
      );
    case 'switch':
      return z.boolean(told);
    case 'stock':
      return field.optional ? z.union([z.literal(''), id()], told) : id(allowedIn(field));
    case 'lengths':
      return z.array(z.number(told).min(field.min, told).max(field.max, told), told).max(field.maxItems, told);
  }
}

function unitOf(field: Field): string {
  if (field.kind === 'length') return 'Millimetres. ';
  if (field.kind === 'lengths') return 'Millimetres, rising. ';
  if (field.kind !== 'number') return '';
  return { deg: 'Degrees. ', 'kg/m³': 'kg/m³. ', pence: 'Pence. ', ratio: '', kg: 'kg. ' }[field.unit];
}

/** A name that other places of the file refer to. */
export function id(allowed = 'an id of 1 to 60 letters, digits, dots and dashes'): z.ZodType<string> {
  return z.string(says(allowed)).regex(/^[A-Za-z0-9][A-Za-z0-9.-]{0,59}$/, says(allowed));
}

/** Free text, kept as it is. */
export function text(title: string, most: number, least = 0): z.ZodType<string> {
  const told = says(`text of ${least} to ${most} characters`);
  const bounded = {
    error: (issue: { input?: unknown }) =>
      `found text of ${lengthOf(issue.input)} characters; allowed are ${least} to ${most}`,
  };
  return z.string(told).min(least, bounded).max(most, bounded).meta({ title });
}

const lengthOf = (value: unknown): number => (typeof value === 'string' ? value.length : 0);

/** A group of named values and no others. */
export function group<S extends z.ZodRawShape>(shape: S) {
  const known = anyOf(Object.keys(shape));
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys'
        ? `not known here; known are ${known}`
        : complaint(issue.input, 'a group of named values: { … }'),
  });
}

/** One of several groups, told apart by the word under `key`. The message for a word that is none of them. */
export function toldApartBy(key: string, words: readonly string[]) {
  const allowed = anyOf(words.map((word) => `"${word}"`));
  return {
    error: ({ input }: { input?: unknown }) =>
      typeof input === 'object' && input !== null && !Array.isArray(input)
        ? complaint(Object.hasOwn(input, key) ? (input as Record<string, unknown>)[key] : undefined, allowed)
        : complaint(input, `a group of named values with "${key}": ${allowed}`),
  };
}

/** A list of `least` to `most` things. */
export function listOf<T extends z.ZodType>(of: T, least: number, most: number, things: string) {
  const allowed = `a list of ${least} to ${most} ${things}`;
  const told = { error: (issue: { input?: unknown }) => `found ${inWords(issue.input)}; allowed is ${allowed}` };
  return z.array(of, says(allowed)).min(least, told).max(most, told);
}
