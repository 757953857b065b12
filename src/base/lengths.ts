import type { Result } from '../vocabulary/result';

/** Millimetres in an inch, exact by definition (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;

export type LengthUnits = 'mm' | 'inch';

/** What each way of writing a unit is worth in mm. */
const UNITS: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: MM_PER_INCH,
  inch: MM_PER_INCH,
  inches: MM_PER_INCH,
  '"': MM_PER_INCH,
  ft: 12 * MM_PER_INCH,
  foot: 12 * MM_PER_INCH,
  feet: 12 * MM_PER_INCH,
  "'": 12 * MM_PER_INCH,
};
const INCH = 'in|inch|inches|"';
const FOOT = "ft|foot|feet|'";

const UNDERSTOOD = `understood are 1203.5, 1200 mm, 120 cm, 1.2 m, 47 1/4", 3' 11 1/4", 3 ft 11 in`;

/** Fractions that have a sign of their own, as one types them. */
const SIGNS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const FRACTION = String.raw`\d+\s*/\s*\d+`;
const DECIMAL = String.raw`(?:\d[\d.,]*(?: \d{3})*(?:[.,]\d*)?|[.,]\d+)`;
/** A decimal number, a fraction, or a whole number and a fraction with a space or a hyphen between. */
const QUANTITY = String.raw`(?:\d+(?:\s+|\s*-\s*)${FRACTION}|${FRACTION}|${DECIMAL})`;
const ONE = new RegExp(String.raw`^(${QUANTITY})\s*(mm|cm|m|${INCH}|${FOOT})?$`);
const FEET_AND_INCHES = new RegExp(
  String.raw`^(${QUANTITY})\s*(?:${FOOT})(?:\s+|\s*-\s*|(?=[\d.,]))(${QUANTITY})\s*(?:${INCH})?$`,
);

/**
 * Reads a length as a joiner writes it, into mm. A number without a unit is in `units`, but a rule's fraction (47 1/4) is inches; a
 * written unit always wins. Never
 * throws: what can't be read, or could be read in two ways, comes back as an issue that says what it got and what is understood.
 */
export function parseLength(text: string, units: LengthUnits): Result<number> {
  const tidy = tidied(text);
  if (tidy === '') return refuse(text, 'nothing to read');
  const negative = tidy.startsWith('-');
  const body = negative ? tidy.slice(1).trim() : tidy;

  const both = FEET_AND_INCHES.exec(body);
  const one = both ? null : ONE.exec(body);
  if (!both && !one) return refuse(text, 'not a length');
  const bare = one?.[1] ?? '';
  const unit = one?.[2] ?? unitOf(bare, units);
  if (unit === undefined) return refuse(text, 'a fraction of a millimetre, or of an inch? Write the unit');
  const parts = both
    ? [
        { written: both[1], worth: UNITS.ft },
        { written: both[2], worth: UNITS.in },
      ]
    : [{ written: bare, worth: UNITS[unit] }];
  let mm = 0;
  for (const { written, worth } of parts) {
    const quantity = quantityOf(written);
    if (typeof quantity === 'string') return refuse(text, quantity);
    mm += quantity * worth;
  }
  if (!Number.isFinite(mm)) return refuse(text, 'beyond any number');
  // Fifteen digits drop the noise of multiplying by 25.4, so that 36" is 914.4 and not 914.3999999999999.
  const clean = Number(mm.toPrecision(15));
  return { ok: true, value: negative && clean !== 0 ? -clean : clean };
}

/** A fraction of a rule is read as inches wherever it stands: nobody measures quarters of a millimetre. */
const RULE_FRACTION = /(?:^|\s|-)(\d+)\s*\/\s*(2|4|8|16|32|64)$/;

/** The unit of a number that has none written; nothing where it can't be told. */
function unitOf(written: string, units: LengthUnits): 'mm' | 'in' | undefined {
  if (units === 'inch') return 'in';
  if (!written.includes('/')) return 'mm';
  const fraction = RULE_FRACTION.exec(written);
  return fraction && Number(fraction[1]) < Number(fraction[2]) ? 'in' : undefined;
}

function tidied(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => ` ${SIGNS[sign]} `)
    .replace(/[⁄∕]/g, '/')
    .replace(/[−–]/g, '-')
    .replace(/[“”″]|''|′′|’’/g, '"')
    .replace(/[‘’′]/g, "'")
    .replace(/\s+/g, ' ')
    .replace(/ (["'])/g, '$1')
    .trim()
    .toLowerCase();
}

/** The value of a quantity, or what is wrong with it. */
function quantityOf(written: string): number | string {
  const fraction = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*\/\s*(\d+)$/.exec(written);
  if (!fraction) return decimalOf(written);
  const [, whole, over, under] = fraction;
  if (Number(under) === 0) return `a fraction over nothing, ${over}/${under}`;
  return Number(whole ?? 0) + Number(over) / Number(under);
}

function decimalOf(written: string): number | string {
  if (/^(\d*\.\d+|\d+\.?)$/.test(written)) return Number(written);
  if (/^\d{1,3}( \d{3})+([.,]\d+)?$/.test(written)) return Number(written.replace(/ /g, '').replace(',', '.'));
  // A lone comma before three digits may part thousands or decimals: a thousandfold difference, so it is asked back.
  if (/^[1-9]\d{0,2},\d{3}$/.test(written)) {
    return `it may mean ${written.replace(',', '')} or ${written.replace(',', '.')}: write it without the comma`;
  }
  if (/^(\d*,\d+|\d+,)$/.test(written)) return Number(written.replace(',', '.'));
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(written)) return Number(written.replace(/,/g, ''));
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(written)) return Number(written.replace(/\./g, '').replace(',', '.'));
  return `'${written}' is not a number`;
}

function refuse(text: string, why: string): Result<number> {
  const got = text.length > 40 ? `${text.slice(0, 40)}…` : text;
  return { ok: false, issues: [{ path: '', message: `'${got}': ${why}; ${UNDERSTOOD}` }] };
}

/** Inches are shown to this part of an inch, the finest on a shop rule. */
const INCH_PARTS = 64;

/**
 * A length for people: in mm to at most two decimals, without unit ("1203.5"); in inches to the nearest 1/64, reduced, with the
 * inch mark (`47 1/4"`). `parseLength` reads both back. Throws for a number that is not finite.
 */
export function formatLength(mm: number, units: LengthUnits): string {
  mustBeFinite(mm);
  if (units === 'mm') return plain(mm, 2);
  const parts = Math.round((Math.abs(mm) * INCH_PARTS) / MM_PER_INCH);
  if (parts === 0) return '0"';
  const whole = Math.floor(parts / INCH_PARTS);
  let [over, under] = [parts % INCH_PARTS, INCH_PARTS];
  while (over % 2 === 0 && over > 0) [over, under] = [over / 2, under / 2];
  const fraction = over > 0 ? `${over}/${under}` : '';
  return `${mm < 0 ? '-' : ''}${whole > 0 ? whole : ''}${whole > 0 && fraction ? ' ' : ''}${fraction}"`;
}

function mustBeFinite(mm: number): void {
  if (!Number.isFinite(mm)) throw new Error(`a length of ${mm} mm can't be shown; it must be finite`);
}

function plain(value: number, decimals: number): string {
  if (Math.abs(value) >= 1e15) throw new Error(`a length of ${value} can't be shown; below 1e15 it can`);
  const text = value.toFixed(decimals).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
