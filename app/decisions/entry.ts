import { formatLength, parseLength } from '../../src/base/lengths';
import type { CountField, LengthField, LengthsField, NumberField } from '../../src/vocabulary/field';

/** What was made of a text typed into a field: a value, or why not. */
export type Entry<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly message: string };

type Units = 'mm' | 'inch';

const no = (message: string): Entry<never> => ({ ok: false, message });
const within = (value: number, min: number, max: number, show: (n: number) => string): Entry<number> =>
  value < min || value > max ? no(`Must be from ${show(min)} to ${show(max)}.`) : { ok: true, value };

/** A length with its unit, for a sentence. */
export const withUnit = (mm: number, units: Units): string =>
  units === 'mm' ? `${formatLength(mm, units)} mm` : formatLength(mm, units);

/** A length typed in the job's units, in mm. */
export function readLength(text: string, field: Pick<LengthField, 'min' | 'max'>, units: Units): Entry<number> {
  if (text.trim() === '') return no('Type a length.');
  const read = parseLength(text, units);
  if (!read.ok) return no(read.issues[0]?.message ?? 'Not a length.');
  return within(read.value, field.min, field.max, (n) => withUnit(n, units));
}

/** A plain number, with a point or a comma; a unit written after it is let be when it is the field's own. */
export function readNumber(text: string, field: Pick<NumberField, 'min' | 'max' | 'unit'>): Entry<number> {
  const bare = text
    .trim()
    .replace(/−/g, '-')
    .replace(field.unit === 'deg' ? /\s*(?:°|deg)$/ : /\s+\S+$/, '');
  if (!/^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/.test(bare)) return no('Type a number, such as 45.');
  return within(Number(bare.replace(',', '.')), field.min, field.max, showNumber);
}

/** A whole number; where the field says odd, an odd one, or 0 where that is allowed. */
export function readCount(text: string, field: Pick<CountField, 'min' | 'max' | 'odd'>): Entry<number> {
  if (!/^\s*\d+\s*$/.test(text)) return no('Type a whole number.');
  const read = within(Number(text), field.min, field.max, showNumber);
  if (read.ok && field.odd && read.value % 2 === 0 && read.value !== 0)
    return no('Must be an odd number, or 0 for none.');
  return read;
}

/** Several lengths with semicolons between them, each greater than the one before. */
export function readLengths(
  text: string,
  field: Pick<LengthsField, 'min' | 'max' | 'maxItems'>,
  units: Units,
): Entry<readonly number[]> {
  const pieces = text
    .split(';')
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '');
  if (pieces.length > field.maxItems)
    return no(`Type at most ${field.maxItems} lengths, with semicolons between them.`);
  const values: number[] = [];
  for (const piece of pieces) {
    const read = readLength(piece, field, units);
    if (!read.ok) return no(`${piece}: ${read.message}`);
    if (values.length > 0 && read.value <= (values.at(-1) ?? 0))
      return no(`${piece}: must be more than the one before it.`);
    values.push(read.value);
  }
  return { ok: true, value: values };
}

/** Words that name something: not empty, and not taken. */
export function readWords(text: string, taken: readonly string[]): Entry<string> {
  const words = text.trim();
  if (words === '') return no('Type a name.');
  return taken.includes(words) ? no(`There is a “${words}” already.`) : { ok: true, value: words };
}

/**
 * A turn from one front to the next, as a surveyor would have found it: the angle between the two fronts, which at an outside
 * corner is measured through the unit and at an inside one in the room before it.
 */
export function cornerWords(deflectionDeg: number): string {
  if (deflectionDeg === 0) return 'straight on, no corner';
  const between = `${showNumber(180 - Math.abs(deflectionDeg))}°`;
  return deflectionDeg > 0
    ? `outside corner of ${between} (between the fronts, measured through the unit)`
    : `inside corner of ${between} (between the fronts, measured in front of the unit)`;
}

/** A number as a person writes it: at most four decimals, no trailing noughts, a true minus. */
export const showNumber = (value: number): string => String(Number(value.toFixed(4))).replace('-', '−');
