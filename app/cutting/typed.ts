import type { LengthUnits } from '../../src/base/lengths';
import { checkCutProblem, readCutList } from '../../src/cut';
import type { CutBatch } from '../../src/vocabulary/cut-plan';
import { readLength } from '../decisions/entry';

/** A list without a job as it is being typed: texts, not yet read. */
export interface TypedList {
  readonly kind: 'bars' | 'sheets';
  readonly kerf: string;
  readonly trim: string;
  /** How often the direction of cutting may change; '' any. */
  readonly stages: string;
  readonly turnable: boolean;
  readonly stock: readonly TypedStock[];
  readonly pieces: string;
}

/** One kind of bar or sheet to be had. No price anywhere: the least stuff is sought. No count: as many as one likes. */
export interface TypedStock {
  readonly length: string;
  readonly width: string;
  readonly price: string;
  readonly count: string;
}

export const NO_STOCK: TypedStock = { length: '', width: '', price: '', count: '' };

/** A usual sheet to begin with (2440 × 1220 as sold in the UK, from memory). Units are written: the job may be in inches. */
export const FIRST_LIST: TypedList = {
  kind: 'sheets',
  kerf: '3 mm',
  trim: '5 mm',
  stages: '',
  turnable: true,
  stock: [{ length: '2440 mm', width: '1220 mm', price: '', count: '' }],
  pieces: '',
};

export type TypedRead =
  | { readonly ok: true; readonly batch: CutBatch; readonly warnings: readonly string[] }
  | { readonly ok: false; readonly lines: readonly string[] };

const SIZE = { min: 0.1, max: 20_000 };
/** Nothing that is sawn loses more to the blade or by its edges (a guess on the safe side). */
const LOSS = { min: 0, max: 500 };

/** Reads a list as it is typed; what can't be read is said line by line. */
export function readTyped(list: TypedList, units: LengthUnits): TypedRead {
  const { kind, turnable } = list;
  const wrong: string[] = [];
  const measure = (text: string, what: string, limits: { min: number; max: number }): number => {
    const read = readLength(text, limits, units);
    if (!read.ok) wrong.push(`${what}: ${read.message}`);
    return read.ok ? read.value : 0;
  };
  const [kerf, trim] = [measure(list.kerf, 'Saw kerf', LOSS), measure(list.trim, 'Trim', LOSS)];
  const stock = list.stock.map((one, i) => {
    const what = `Stock ${i + 1}`;
    return {
      length: measure(one.length, `${what}, length`, SIZE),
      ...(kind === 'sheets' ? { width: measure(one.width, `${what}, width`, SIZE) } : {}),
      ...plain(one.price, 'price', what, wrong),
      ...plain(one.count, 'count', what, wrong),
    };
  });
  const read = readCutList(list.pieces, { kind, units, turnable });
  if (!read.ok) wrong.push(...read.issues.map(({ path, message }) => lineWords(path, message)));
  if (!read.ok || wrong.length > 0) return { ok: false, lines: wrong };
  const stages = kind === 'sheets' && list.stages !== '' ? { stages: Number(list.stages) } : {};
  const checked = checkCutProblem({ kind, kerf, trim, ...stages, stock, pieces: read.value.pieces });
  if (!checked.ok) return { ok: false, lines: checked.issues.map(({ path, message }) => pathWords(path, message)) };
  const { problem, warnings } = checked.value;
  return {
    ok: true,
    batch: {
      id: 'typed',
      name: 'The list as typed',
      problem,
      marks: problem.pieces.map(() => []),
      from: problem.stock.map(() => ({})),
    },
    warnings: [
      ...read.value.warnings.map(({ path, message }) => lineWords(path, message)),
      ...warnings.map(({ path, message }) => pathWords(path, message)),
    ],
  };
}

/** A number that may be left out. */
function plain(
  text: string,
  key: 'price' | 'count',
  what: string,
  wrong: string[],
): { [key in 'price' | 'count']?: number } {
  if (text.trim() === '') return {};
  const value = Number(text.trim().replace(',', '.'));
  if (Number.isFinite(value)) return { [key]: value };
  wrong.push(`${what}, ${key}: Type a number, or leave it out.`);
  return {};
}

/** `/lines/3` in words. */
function lineWords(path: string, message: string): string {
  const line = /^\/lines\/(\d+)/.exec(path)?.[1];
  return line === undefined ? message : `Line ${line}: ${message}`;
}

/** `/stock/0/price` in words. */
function pathWords(path: string, message: string): string {
  const [, list, place, field] = path.split('/');
  const thing = list === 'stock' ? 'Stock' : list === 'pieces' ? 'Piece' : (list ?? '');
  const number = place === undefined ? '' : ` ${Number(place) + 1}`;
  const said = [`${thing}${number}`, field].filter(Boolean).join(', ');
  return said ? `${said}: ${message}` : message;
}
