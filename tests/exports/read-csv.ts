import { partsCsv } from '../../src/exports/csv';
import type { Part } from '../../src/vocabulary/part';
import { box, byHand } from '../drawings/fixture';

/** Reads CSV by the grammar of RFC 4180, section 2: the other side of the writer, written apart from it. */
export function readCsv(marked: string): string[][] {
  const text = marked.replace(/^\ufeff/, '');
  const rows: string[][] = [];
  let row: string[] = [];
  const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/y;
  while (cell.lastIndex < text.length) {
    const at = cell.lastIndex;
    const found = cell.exec(text);
    if (!found) throw new Error(`not RFC 4180 at ${at}: ${text.slice(at, at + 20)}`);
    row.push(found[1]?.replace(/""/g, '"') ?? found[2]);
    if (found[3] === ',') continue;
    rows.push(row);
    row = [];
  }
  return rows;
}

export const table = (text: string): Record<string, string>[] => {
  const [head, ...rows] = readCsv(text);
  return rows.map((row) => Object.fromEntries(head.map((name, i) => [name, row[i]])));
};

export const part = (change: Partial<Part> = {}): Part => ({
  ...box({
    kind: 'skirting',
    mark: 'A-SK1',
    name: 'skirting',
    from: 'finished',
    x: [100, 702.5],
    z: [0, 120],
    d: [12, 30],
  }),
  ...change,
});
export const withParts = (parts: readonly Part[], units: 'mm' | 'inch' = 'mm') =>
  partsCsv({ job: { ...byHand.job, units }, parts });
