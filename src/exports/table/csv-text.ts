/** What a cell may hold. Null leaves it empty. */
export type Cell = string | number | null;

/** Tells a spreadsheet that the text is UTF-8: without it, some take × and ° for two signs each. */
const UTF8_MARK = '\ufeff';

/**
 * A table as CSV (RFC 4180) behind a byte order mark: commas, CRLF after every row, cells quoted where they hold a comma, a quote or
 * a line end, quotes doubled. A spreadsheet takes a text that begins with = + - @, a tab or a carriage return for a formula, so such a text gets an
 * apostrophe before it; a number stays a number. A number that is not finite throws: the engine makes none.
 */
export function csvText(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const lines = [header, ...rows].map((row) => row.map(cellText).join(','));
  return UTF8_MARK + lines.map((text) => `${text}\r\n`).join('');
}

function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') {
    if (!Number.isFinite(cell)) throw new RangeError(`a table cell holds ${cell}; only finite numbers are allowed`);
    return String(cell + 0);
  }
  const harmless = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replace(/"/g, '""')}"` : harmless;
}

/** Rounds for a table: `step` is the unit of the last place shown. */
export const rounded = (value: number, step: number): number => {
  const places = Math.max(0, Math.round(-Math.log10(step)));
  return Number((Math.round(value / step) * step).toFixed(places));
};
