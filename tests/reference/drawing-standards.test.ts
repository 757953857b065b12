import { describe, expect, test } from 'vitest';
import { PEN_MM } from '../../src/exports/sheet/ink';
import { CAPTION_MM, NOTE_MM, TITLE_MM } from '../../src/exports/sheet/lettering';
import { drawingSpace, fits, SHEETS } from '../../src/exports/sheet/sheets';
import { BLOCK_WIDTH } from '../../src/exports/sheet/title-block';
import { sheetSvg } from '../../src/exports/svg';
import { design, elevation } from '../../src/flow';
import { jobOf } from '../elements/job-of';

/** Line widths of ISO 128-2:2020 in mm (the series second-hand; the rest from memory): each √2 of the one before, rounded. */
const WIDTHS = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2];

describe('lines (ISO 128-2; construction drawings, once ISO 128-23:1999)', () => {
  test('pens are of the series, in the group 0.35: narrow, wide and extra wide as 1 : 2 : 4', () => {
    expect(PEN_MM).toEqual({ narrow: 0.18, wide: 0.35, 'extra-wide': 0.7 });
    const [narrow, wide, extra] = [PEN_MM.narrow, PEN_MM.wide, PEN_MM['extra-wide']].map((w) => WIDTHS.indexOf(w));
    expect([wide - narrow, extra - wide]).toEqual([2, 2]);
  });

  test('a sheet as written uses these widths and no others; its frame is 0.7 (ISO 5457:1999, from memory)', () => {
    const svg = sheetSvg(elevation(design(jobOf({})), 'A', 'front'), { job: 'test', unit: 'Counter', units: 'mm' });
    const widths = new Set([...svg.matchAll(/stroke-width="([\d.]+)"/g)].map(([, w]) => Number(w)));
    expect([...widths].sort()).toEqual([0.18, 0.35, 0.7]);
  });
});

describe('sheets', () => {
  // ISO 216: A0 is a square metre, the sides as 1 : √2, each size half the one before, cut to whole mm.
  test('are of ISO 216, trimmed', () => {
    const expected: Record<string, readonly number[]> = {
      A1: [841, 594],
      A2: [594, 420],
      A3: [420, 297],
      A4: [297, 210],
    };
    expect(Object.fromEntries(SHEETS.map((s) => [s.name, [s.width, s.height]]))).toEqual(expected);
    for (const { width, height } of SHEETS) expect(Math.abs(width / height - Math.SQRT2)).toBeLessThan(0.003);
  });

  // ISO 5457:1999 table 1 (from memory, and by trimmed size less 20 and 10, and 10 and 10). The withdrawn edition of 1980 had other borders.
  test('leave the drawing space of ISO 5457:1999', () => {
    const expected: Record<string, readonly number[]> = { A1: [811, 574], A2: [564, 400], A3: [390, 277] };
    for (const sheet of SHEETS) {
      const { min, max } = drawingSpace(sheet);
      expect([min[0], min[1], sheet.width - max[0], sheet.height - max[1]]).toEqual([20, 10, 10, 10]);
      if (expected[sheet.name]) expect([max[0] - min[0], max[1] - min[1]]).toEqual(expected[sheet.name]);
    }
  });

  test('have a title block no wider than 180 (ISO 5457, ISO 7200; from memory)', () => {
    expect(BLOCK_WIDTH).toBeLessThanOrEqual(180);
  });
});

describe('scales (ISO 5455, from memory)', () => {
  const reductions = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

  test('are standard ones', () => {
    for (const extent of [50, 300, 900, 2400, 12_000, 40_000])
      for (const { scale } of fits(extent)) expect(reductions).toContain(scale);
  });

  test('an elevation that fits at 1:10 or 1:20 is drawn so (UK joinery practice, from memory)', () => {
    expect(fits(2400)[0].scale).toBe(10);
  });
});

describe('lettering (ISO 3098-1)', () => {
  test('heights are of the series', () => {
    for (const height of [CAPTION_MM, NOTE_MM, TITLE_MM]) expect([1.8, 2.5, 3.5, 5, 7, 10, 14, 20]).toContain(height);
  });
});
