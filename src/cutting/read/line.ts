import { type LengthUnits, parseLength } from '../../base/lengths';

/** What one line of a list says of a piece; lengths in mm. A bar's has no width. */
export interface Line {
  readonly name?: string;
  readonly length: number;
  readonly width?: number;
  readonly quantity: number;
}

/** What a column holds. */
export type Column = 'name' | 'length' | 'width' | 'quantity';

/** How a list's lines are to be read. */
export interface LineWays {
  readonly units: LengthUnits;
  /** Sheets have a width. */
  readonly wide: boolean;
  /** As the header says them; absent: by their number. */
  readonly order?: readonly (Column | undefined)[];
}

/** A line that can't be read: why, for people. */
export class Unreadable extends Error {}

const QUANTITY = /^(?:[x×*]\s*)?(\d+)\s*(?:[x×*]|off|pcs?|no)?\.?$/i;

/** "6", "6 off", "x6". */
function quantityOf(text: string): number {
  const number = Number(QUANTITY.exec(text)?.[1] ?? Number.NaN);
  if (number >= 1) return number;
  throw new Unreadable(`'${text}' is no number of pieces`);
}

function lengthOf(text: string, units: LengthUnits, what: Column = 'length'): number {
  if (text === '')
    throw new Unreadable(`no ${what}: "name, length, width, quantity" is understood, parted by tab, ; or comma`);
  const read = parseLength(text, units);
  if (read.ok) return read.value;
  throw new Unreadable(read.issues[0]?.message ?? `'${text}': not a length`);
}

const FIGURE = '\\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞';
/** A sign of multiplication between two measures: after a figure and perhaps its unit, before a figure. */
const TIMES = new RegExp(
  String.raw`(?<=[${FIGURE}](?:\s*(?:mm|cm|m|in|inch|inches|ft|["'″′”’]+))?)\s*[x×*]\s*(?=[${FIGURE}.,])`,
  'i',
);
const NAME_BEFORE = new RegExp(String.raw`^([^${FIGURE}]*[\s,;:])?(.*)$`);

/** A line of cells, or of measures with × between them. */
export function lineOf(text: string, ways: LineWays): Line {
  const cells = cellsOf(text);
  if (ways.order !== undefined && cells.length > 1) return byHeader(cells, ways.order, ways);
  if (TIMES.test(text)) return timesOf(text, ways);
  if (!/[\t;]/.test(text) && /\d,\d/.test(text) && /, /.test(text))
    throw new Unreadable('commas with a space after and without: decimals? Part by tab or ;');
  return byNumber(cells, ways);
}

/** Parted by tabs, else by semicolons, else by commas: so that a decimal comma can be written where a tab or semicolon parts. */
export function cellsOf(text: string): readonly string[] {
  const sign = ['\t', ';', ','].find((one) => text.includes(one)) ?? ',';
  const cells = text.split(sign).map((cell) => cell.trim());
  while (cells.length > 1 && cells.at(-1) === '') cells.pop();
  return cells;
}

function byHeader(cells: readonly string[], order: readonly (Column | undefined)[], ways: LineWays): Line {
  const cell = (column: Column): string => cells[order.indexOf(column)] ?? '';
  const beyond = cells.slice(order.length).find((one) => one !== '');
  if (beyond !== undefined) throw new Unreadable(`'${beyond}' stands under no heading`);
  return lineFrom(cell, ways);
}

function lineFrom(cell: (column: Column) => string, { units, wide }: LineWays): Line {
  const [name, width, quantity] = [cell('name'), cell('width'), cell('quantity')];
  if (!wide && width !== '') throw new Unreadable(`'${width}' is a width, but bars have none`);
  return {
    name: name === '' ? undefined : name,
    length: lengthOf(cell('length'), units),
    width: wide ? lengthOf(width, units, 'width') : undefined,
    quantity: quantity === '' ? 1 : quantityOf(quantity),
  };
}

/** Without a header: name, length, width, quantity. The name, the quantity, and of bars the width may be left out. */
function byNumber(cells: readonly string[], ways: LineWays): Line {
  const sizes: readonly Column[] = ways.wide ? ['length', 'width'] : ['length'];
  const named = !parseLength(cells[0] ?? '', ways.units).ok || cells.length > sizes.length + 1;
  const empty = !ways.wide && named && cells.length === 4 && cells[2] === '';
  const told = empty ? cells.filter((_, i) => i !== 2) : cells;
  const order: readonly Column[] = [...(named ? (['name'] as const) : []), ...sizes, 'quantity'];
  if (told.length > order.length)
    throw new Unreadable(
      `${told.length} things in a line; at most name, ${sizes.join(', ')} and quantity (decimal commas: part by ; or tab)`,
    );
  return lineFrom((column) => told[order.indexOf(column)] ?? '', ways);
}

/** "6 x 782 x 732 shelf", "shelf, 782 x 732": measures with × between, the number first where there is one more, a name before or after. */
function timesOf(text: string, ways: LineWays): Line {
  const factors = text.split(TIMES);
  const [before, first] = nameBefore(factors[0] ?? '');
  const [last, after] = nameAfter(factors.at(-1) ?? '', ways.units);
  if (before !== '' && after !== '') throw new Unreadable(`a name before and one after: '${before}' and '${after}'`);
  const measures = [first, ...factors.slice(1, -1), last];
  const wanted = ways.wide ? 2 : 1;
  if (measures.length !== wanted && measures.length !== wanted + 1)
    throw new Unreadable(`${measures.length} measures; ${wanted} and a number of pieces before are understood`);
  // After a name the number of pieces may stand before the sizes or after them.
  if (measures.length > wanted && before !== '' && Number(last) < Number(first))
    throw new Unreadable(
      `is ${first} or ${last} the number of pieces? The number first and the name last, or parted by commas, is plain`,
    );
  const [quantity, ...sizes] = measures.length > wanted ? measures : ['1', ...measures];
  const [length, width] = sizes.map((size) => lengthOf(size, ways.units));
  const name = before || after;
  return { name: name === '' ? undefined : name, length: length!, width, quantity: quantityOf(quantity!) };
}

const tidyName = (text: string): string => text.replace(/^[\s,;:\t-]+|[\s,;:\t-]+$/g, '');

function nameBefore(text: string): readonly [string, string] {
  const [, name, measure] = NAME_BEFORE.exec(text.trim()) ?? [];
  return [tidyName(name ?? ''), (measure ?? '').trim()];
}

/** The longest beginning that is a length, and what follows. What follows may not begin with a further measure: it could be anything. */
function nameAfter(text: string, units: LengthUnits): readonly [string, string] {
  const words = text
    .trim()
    .split(/\s+|;|,(?!\d)/)
    .filter((word) => word !== '');
  for (let n = words.length; n > 0; n -= 1) {
    const measure = words.slice(0, n).join(' ');
    if (!parseLength(measure, units).ok) continue;
    const rest = words.slice(n);
    if (rest[0] !== undefined && parseLength(rest[0], units).ok)
      throw new Unreadable(`'${rest[0]}' after the measures: a number of pieces stands before them`);
    return [measure, tidyName(rest.join(' '))];
  }
  return [text, ''];
}
