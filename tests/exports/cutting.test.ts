import { describe, expect, it } from 'vitest';
import { cuttingCsv, partsCsv } from '../../src/exports/csv';
import { cuttingJson } from '../../src/exports/json';
import { alike } from '../../src/flow';
import { byHand } from '../drawings/fixture';
import { part, readCsv, table } from './read-csv';

describe('the cutting list', () => {
  const rows = table(cuttingCsv(byHand, alike));
  const nets = rows.filter((row) => row.part === 'noggin');

  it('has identical parts in one row, with their number and marks', () => {
    expect(nets.map((row) => [row['number off'], row.marks, row['length mm']])).toEqual([
      ['1', 'A-NG1', '343'],
      ['3', 'A-NG2 A-NG3 A-NG4', '362'],
      ['1', 'A-NG5', '143'],
    ]);
    expect(rows.find((row) => row.part === 'stud')).toMatchObject({ 'number off': '6', material: 'Sawn 38 × 63' });
  });

  it('leaves none out and names none twice', () => {
    const marks = rows.flatMap((row) => row.marks.split(' '));
    expect(marks.sort()).toEqual(byHand.parts.map((one) => one.mark).sort());
    expect(rows.reduce((sum, row) => sum + Number(row['number off']), 0)).toBe(byHand.parts.length);
  });

  it('gives weight each, which with the numbers makes up the whole', () => {
    const whole = byHand.parts.reduce((sum, one) => sum + one.weightKg, 0);
    const sum = rows.reduce((total, row) => total + Number(row['number off']) * Number(row['weight each kg']), 0);
    // Each is rounded to a gram.
    expect(Math.abs(sum - whole)).toBeLessThan(0.0005 * byHand.parts.length);
  });

  it('says all that one cuts by, as the parts table does', () => {
    const heads = (text: string): string[] => readCsv(text)[0];
    const cut = heads(partsCsv(byHand)).filter((head) =>
      /^section|length|width|thick|point|cut|deg|side|same|edge|groove|work|left on/.test(head),
    );
    expect(cut.length).toBeGreaterThan(15);
    expect(heads(cuttingCsv(byHand, alike))).toEqual(expect.arrayContaining(cut));
  });
});

describe('the cutting list of parts with stuff left on', () => {
  const oversize = [
    { side: 'left end', amount: 15, on: 'length', reason: 'to scribe' },
    { side: 'right end', amount: 10, on: 'length', reason: 'to scribe' },
    { side: 'lower edge', amount: 5, on: 'width', reason: 'to fit to the floor' },
  ] as const;
  const cut = (units: 'mm' | 'inch') =>
    table(cuttingCsv({ job: { ...byHand.job, units }, parts: [part({ oversize }), part({ mark: 'A-SK2' })] }, alike));

  it('has the size to saw to, and the finished one beside', () => {
    const [over, plain] = cut('mm');
    // 602.5 + 15 + 10; 120 + 5.
    expect(over).toMatchObject({
      'length mm': '627.5',
      'width mm': '125',
      'exact length mm': '627.5',
      'short point mm': '627.5',
      'finished length mm': '602.5',
      'finished width mm': '120',
    });
    expect(over['left on']).toContain('length + 15 at the left end');
    expect(plain).toMatchObject({ 'length mm': '602.5', 'width mm': '120', 'left on': '', 'finished length mm': '' });
  });

  it('in inches too', () => {
    // 627.5 mm = 24.7047 in; 24 45/64.
    expect(cut('inch')[0]['length in']).toBe('24 45/64"');
  });

  it('as JSON has both sizes', () => {
    const { alike: rows } = JSON.parse(cuttingJson({ job: byHand.job, parts: [part({ oversize })] }, alike));
    expect(rows[0].sawn).toEqual({ length: 627.5, width: 125, thickness: 18, shopLength: 627.5 });
    expect(rows[0].part.size.length).toBe(602.5);
  });
});
