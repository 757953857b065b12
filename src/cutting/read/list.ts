import type { LengthUnits } from '../../base/lengths';
import type { BarPiece, SheetPiece } from '../../vocabulary/cut-problem';
import type { Issue, Result } from '../../vocabulary/result';
import { MOST } from '../most';
import { fewest, MOST_CHARACTERS, SIZE, tooMany } from './limits';
import { type Column, cellsOf, type Line, type LineWays, lineOf, Unreadable } from './line';

/** What a list doesn't say itself. */
export interface ListDefaults {
  readonly kind: 'bars' | 'sheets';
  /** Of lengths without a unit. */
  readonly units: LengthUnits;
  /** Pieces of sheets may be turned. */
  readonly turnable?: boolean;
}

export type ListRead = { readonly warnings: readonly Issue[] } & (
  | { readonly kind: 'bars'; readonly pieces: readonly BarPiece[] }
  | { readonly kind: 'sheets'; readonly pieces: readonly SheetPiece[] }
);

/** What people write over the columns. */
const HEADINGS: Readonly<Record<Column, readonly string[]>> = {
  name: ['name', 'piece', 'part', 'item', 'description', 'label', 'mark'],
  length: ['length', 'long', 'l'],
  width: ['width', 'wide', 'w'],
  quantity: ['quantity', 'qty', 'number', 'count', 'off', 'no', 'pcs'],
};

/**
 * Reads a list pasted or typed, a piece a line: "name, length, width, quantity" (parted by tabs, semicolons or commas; bars without a width; name
 * and quantity may be left out), or "6 x 782 x 732 shelf". A line of headings may stand first, and then says the order. Lengths as
 * `parseLength` reads them. Empty lines and those that begin with # are passed over. Never throws; an issue's path is `/lines/n`, n
 * counted from 1, and what can't be read is not guessed.
 */
export function readCutList(text: string, defaults: ListDefaults): Result<ListRead> {
  if (text.length > MOST_CHARACTERS)
    return refused([{ path: '', message: `at most ${MOST_CHARACTERS} characters are read` }]);
  const lines = text
    .split(/\r\n|\r|\n/)
    .map((line, i) => ({ line: line.replace(/^\uFEFF/, '').trimEnd(), path: `/lines/${i + 1}` }))
    .filter(({ line }) => line.trim() !== '' && !line.trimStart().startsWith('#'));
  const header = headerOf(lines[0]?.line ?? '');
  const told = header === undefined ? lines : lines.slice(1);
  if (told.length === 0)
    return refused([{ path: '', message: 'no piece: a line such as "shelf, 782, 732, 6" is needed' }]);
  if (told.length > MOST.pieces)
    return refused([{ path: '', message: `${told.length} lines; at most ${MOST.pieces} are read` }]);

  const ways: LineWays = { units: defaults.units, wide: defaults.kind === 'sheets', order: header?.order };
  const read = told.map(({ line, path }) => ({ path, ...attempt(line, ways) }));
  const issues = read.flatMap(({ path, why }) => (why === undefined ? [] : [{ path, message: why }]));
  if (issues.length > 0) return refused(issues);
  const pieces = read.flatMap(({ piece }) => piece ?? []);
  const much = tooMany(pieces, '');
  if (much) return refused([much]);
  const warnings = (header?.unread ?? []).map((name) => ({ path: lines[0]!.path, message: `'${name}' is not read` }));
  return { ok: true, value: { ...asPieces(pieces, defaults), warnings } };
}

const refused = (issues: readonly Issue[]): Result<never> => ({ ok: false, issues: fewest(issues) });

function headerOf(line: string): (Pick<LineWays, 'order'> & { readonly unread: readonly string[] }) | undefined {
  const names = cellsOf(line);
  const order = names.map((name) => columnOf(name));
  if (/\d/.test(line) || !order.includes('length')) return undefined;
  return { order, unread: names.filter((name, i) => name !== '' && order[i] === undefined) };
}

/** "Length (mm)" is a length. */
function columnOf(heading: string): Column | undefined {
  const word = heading
    .replace(/\(.*?\)|[.:"]/g, '')
    .trim()
    .toLowerCase();
  return (Object.keys(HEADINGS) as Column[]).find((column) => HEADINGS[column].includes(word));
}

function attempt(text: string, ways: LineWays): { readonly piece?: Line; readonly why?: string } {
  try {
    const piece = lineOf(text, ways);
    const off = [piece.length, piece.width].find(
      (size) => size !== undefined && !(size >= SIZE.least && size <= SIZE.most),
    );
    if (off !== undefined) return { why: `${off} mm; sizes are from ${SIZE.least} to ${SIZE.most} mm` };
    return { piece };
  } catch (error) {
    if (error instanceof Unreadable) return { why: error.message };
    throw error;
  }
}

function asPieces(lines: readonly Line[], { kind, turnable }: ListDefaults) {
  if (kind === 'bars') return { kind, pieces: lines.map(({ name, length, quantity }) => ({ name, length, quantity })) };
  return { kind, pieces: lines.map((line) => ({ ...line, width: line.width ?? 0, turnable })) };
}
