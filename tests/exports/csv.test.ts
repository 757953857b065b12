import { describe, expect, it } from 'vitest';
import { partsCsv, rodCsv } from '../../src/exports/csv';
import { csvText } from '../../src/exports/table/csv-text';
import { byHand } from '../drawings/fixture';
import { part, readCsv, table, withParts } from './read-csv';

describe('the text of a table', () => {
  it('quotes commas, quotes and line ends, and ends every row with CRLF (RFC 4180)', () => {
    const cells = ['plain', 'a,b', 'a "b"', 'a\nb', 'a\r\nb', '', 'é 38 × 63'];
    expect(
      csvText(
        ['x'],
        cells.map((cell) => [cell]),
      ),
    ).toBe('\ufeffx\r\nplain\r\n"a,b"\r\n"a ""b"""\r\n"a\nb"\r\n"a\r\nb"\r\n\r\né 38 × 63\r\n');
  });

  it.each(['=1+2', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '=HYPERLINK("http://x","y")'])(
    'makes %j harmless in a spreadsheet',
    (text) => {
      expect(readCsv(csvText(['x'], [[text]]))[1]).toEqual([`'${text}`]);
    },
  );

  it('begins with the mark of UTF-8, once, as bytes too, so that a spreadsheet reads × and ° right', () => {
    const bytes = new TextEncoder().encode(csvText(['38 × 63'], [['45°']]));
    expect([...bytes.slice(0, 4)]).toEqual([0xef, 0xbb, 0xbf, '3'.charCodeAt(0)]);
    expect(csvText(['x'], [['y']]).match(/\ufeff/g)).toHaveLength(1);
  });

  it('leaves numbers numbers, also negative ones, and writes no minus zero', () => {
    expect(csvText(['x'], [[-1.5], [0], [-0], [null]])).toBe('\ufeffx\r\n-1.5\r\n0\r\n0\r\n\r\n');
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('throws for %d, which no table may hold', (value) => {
    expect(() => csvText(['x'], [[value]])).toThrow(String(value));
  });
});

describe('the parts table', () => {
  it('has a row of sizes, ends, place and weight for each part', () => {
    const rows = table(partsCsv(byHand));
    expect(rows).toHaveLength(byHand.parts.length);
    expect(rows.find((row) => row.mark === 'A-NG2')).toMatchObject({
      run: 'A',
      part: 'noggin',
      material: 'Sawn 38 × 63',
      'length mm': '362',
      'width mm': '38',
      'thickness mm': '63',
      'start cut': 'square',
      'start saw deg': '0',
      'other end the same': 'yes',
      'x mm along first run': '419',
      'y mm to the back': '63',
      'z mm above floor': '486',
    });
    expect(rows[0]).not.toHaveProperty('number');
  });

  it('shows the shop length, the exact one and the short point apart', () => {
    const rows = table(
      withParts([
        part({ shopLength: 1242, size: { length: 1241.8765, width: 120, thickness: 18 }, shortPoint: 1223.87654 }),
      ]),
    );
    expect(rows[0]).toMatchObject({ 'length mm': '1242', 'exact length mm': '1241.88', 'short point mm': '1224' });
  });

  it('says of each end how it is cut', () => {
    const mitre = { kind: 'mitre', angleDeg: 45.75, sawDeg: 44.25, tiltDeg: 0, longSide: 'face' } as const;
    const square = { kind: 'square', angleDeg: 90, sawDeg: 0, tiltDeg: 0, longSide: 'none' } as const;
    expect(table(withParts([part({ ends: [mitre, square] })]))[0]).toMatchObject({
      'start cut': 'mitre',
      'start angle deg': '45.75',
      'start saw deg': '44.25',
      'start long side': 'face',
      'other end cut': 'square',
      'other end the same': 'no',
    });
    expect(table(withParts([part({ ends: [mitre, mitre] })]))[0]['other end the same']).toBe('yes');
    expect(table(withParts([part({ ends: [mitre, { ...mitre, longSide: 'back' }] })]))[0]['other end the same']).toBe(
      'no',
    );
  });

  it('rounds lengths to the step of the job, places too, and the exact one to a hundredth', () => {
    const size = { length: 1241.8765, width: 120.26, thickness: 18.04 };
    const place = { ...part().place, origin: [1.26, -2.26, 3.26] as const };
    const rows = (roundingStep: number) =>
      table(
        partsCsv({
          job: { ...byHand.job, tools: { ...byHand.job.tools, roundingStep } },
          parts: [part({ size, place })],
        }),
      )[0];
    expect(rows(0.1)).toMatchObject({ 'exact length mm': '1241.88', 'width mm': '120.3', 'thickness mm': '18' });
    expect(rows(0.5)).toMatchObject({ 'exact length mm': '1241.88', 'width mm': '120.5', 'thickness mm': '18' });
    expect(rows(0.1)).toMatchObject({
      'x mm along first run': '1.3',
      'y mm to the back': '-2.3',
      'z mm above floor': '3.3',
    });
  });

  it('gives a section that is no rectangle in words', () => {
    const rows = table(withParts([part({ section: 'triangle 44.5 × 44.5 × 63' }), part()]));
    expect(rows.map((row) => row.section)).toEqual(['triangle 44.5 × 44.5 × 63', '']);
  });

  it('lists edge work and grooves in words', () => {
    const rows = table(
      withParts([
        part({
          edges: [
            { edge: 'left edge', work: 'bevelled', angleDeg: 45, backWidth: 98.04 },
            { edge: 'upper edge', work: 'moulded', cutter: 'ovolo-9' },
          ],
          grooves: [
            { centre: 26, width: 12, depth: 5, radius: 6.1 },
            { centre: 43.4, width: 12, depth: 5, radius: 6.1 },
            { centre: 60, width: 6, depth: 3, radius: 3 },
          ],
        }),
      ]),
    );
    expect(rows[0]['edge work']).toBe('left edge bevelled 45°, back 98 wide; upper edge moulded ovolo-9');
    expect(rows[0].grooves).toBe(
      '2 flutes 12 wide, 5 deep, radius 6, centres 26, 43.5 from the left edge of the face; ' +
        '1 flute 6 wide, 3 deep, radius 3, centre 60 from the left edge of the face',
    );
  });

  it('says when it is fitted, on which section it leaves, and what holds it', () => {
    const holds = [
      { by: 'screw', through: 18, where: { at: 'ends', each: 2 }, rule: 'common practice, no source: two at each end' },
      { by: 'glue', through: 0, where: { at: 'all', each: 1 }, glue: 'pva', rule: 'from memory' },
    ] as const;
    const { inSection, ...loose } = part({ fitted: 'site', holds });
    expect(inSection).toBe('S1');
    const rows = table(withParts([part({ hardware: [{ what: 'butt hinge 63', count: 2 }] }), loose]));
    expect(rows[0]).toMatchObject({ fitted: 'workshop', 'leaves on section': 'S1', 'held by': '' });
    expect(rows[0].ironmongery).toBe('2 butt hinge 63');
    expect(rows[1]).toMatchObject({ fitted: 'site', 'leaves on section': '', ironmongery: '' });
    expect(rows[1]['held by']).toBe('screw: common practice, no source: two at each end; glue: from memory');
  });

  it('says what is left on beyond the finished sizes, other work, and where flutes stop', () => {
    const rows = table(
      withParts([
        part({
          oversize: [
            { side: 'left end', amount: 15, on: 'length', reason: 'to scribe' },
            { side: 'lower edge', amount: 4.26, on: 'width', reason: 'to fit to the floor' },
          ],
          work: ['hole 60, centre 210 from the left end', 'notch 40 × 12'],
          grooves: [
            { centre: 26, width: 12, depth: 5, radius: 6.1, stops: [30, 45] },
            { centre: 43, width: 12, depth: 5, radius: 6.1, stops: [30, 45] },
            { centre: 60, width: 12, depth: 5, radius: 6.1 },
          ],
        }),
      ]),
    );
    expect(rows[0]['left on']).toBe(
      'length + 15 at the left end, to scribe; width + 4.5 at the lower edge, to fit to the floor',
    );
    expect(rows[0]).toMatchObject({ 'length mm': '602.5', 'width mm': '120' });
    expect(rows[0]['other work']).toBe('hole 60, centre 210 from the left end; notch 40 × 12');
    expect(rows[0].grooves).toBe(
      '2 flutes 12 wide, 5 deep, radius 6, stopped 30 from the lower and 45 from the upper end, ' +
        'centres 26, 43 from the left edge of the face; ' +
        '1 flute 12 wide, 5 deep, radius 6, centre 60 from the left edge of the face',
    );
  });

  it('keeps a name that looks like a formula from being one', () => {
    const rows = table(withParts([part({ name: '=cmd|" /C calc"!A0', where: '@bay, "1"' })]));
    expect(rows[0].part).toBe(`'=cmd|" /C calc"!A0`);
    expect(rows[0].where).toBe(`'@bay, "1"`);
  });

  it('adds inches as text for a job in inches, and keeps the millimetres', () => {
    // 602.5 mm = 23.7205 in; 23 46/64 = 23 23/32.
    const rows = table(withParts([part()], 'inch'));
    expect(rows[0]).toMatchObject({ 'length mm': '602.5', 'length in': '23 23/32"', 'width in': '4 23/32"' });
    expect(table(withParts([part()]))[0]).not.toHaveProperty('length in');
  });
});

describe('the rod table', () => {
  it('has the marks of each run in order along it', () => {
    const rows = table(rodCsv(byHand));
    expect(rows.map((row) => Number(row['x mm from the left end of the frame line']))).toEqual([
      19, 70, 400, 800, 800, 900, 1200, 1600, 1730, 1781,
    ]);
    expect(rows[1]).toMatchObject({ run: 'A', lane: 'front', reason: 'pillar centre' });
  });
});
