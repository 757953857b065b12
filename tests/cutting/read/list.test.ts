import { describe, expect, it } from 'vitest';
import { type ListDefaults, readCutList } from '../../../src/cutting/read';

const SHEETS: ListDefaults = { kind: 'sheets', units: 'mm', turnable: true };
const BARS: ListDefaults = { kind: 'bars', units: 'mm' };

/** "6 × 782 × 732 shelf", or what is said. */
function told(text: string, defaults: ListDefaults): readonly string[] {
  const read = readCutList(text, defaults);
  if (!read.ok) return read.issues.map(({ path, message }) => `${path} ${message}`);
  return read.value.pieces.map((piece) => {
    const sizes = 'width' in piece ? [piece.length, piece.width] : [piece.length];
    return [[piece.quantity, ...sizes].join(' × '), ...(piece.name ? [piece.name] : [])].join(' ');
  });
}

describe('a list of pieces for sheets', () => {
  it.each([
    ['shelf, 782, 732, 6', '6 × 782 × 732 shelf'],
    ['shelf\t782.5\t732\t6', '6 × 782.5 × 732 shelf'],
    ['shelf;782,5;732;6 off', '6 × 782.5 × 732 shelf'],
    ['782, 732, 2', '2 × 782 × 732'],
    ['782,732', '1 × 782 × 732'],
    ['101, 782, 732, 2', '2 × 782 × 732 101'],
    ['6 x 782 x 732 shelf', '6 × 782 × 732 shelf'],
    ['6 × 782 × 732, shelf', '6 × 782 × 732 shelf'],
    ['shelf: 6*782*732', '6 × 782 × 732 shelf'],
    ['shelf, 782 x 732', '1 × 782 × 732 shelf'],
    ['6 x 782,5 x 732,25 long shelf', '6 × 782.5 × 732.25 long shelf'],
    ['6 x 30 3/4" x 28 7/8" shelf', '6 × 781.05 × 733.425 shelf'],
    ['2 x 1.2 m x 60 cm top', '2 × 1200 × 600 top'],
  ])('reads %j', (line, piece) => {
    expect(told(line, SHEETS)).toEqual([piece]);
  });

  it.each([
    ['shelf,782,5,732,6', /5 things in a line.*decimal commas/],
    ['shelf, 782,5, 732', /commas with a space after and without/],
    ['6 x 782 x 732 12 shelf', /'12' after the measures/],
    ['a 6 x 782 x 732 b', /a name before and one after/],
    ['2 x 3 x 4 x 5', /4 measures; 2 and a number/],
    ['shelf 500 x 380 x 2', /is 500 or 2 the number of pieces\?/],
    ['shelf, 0, 300', /0 mm; sizes are from 0\.1 to 2000000 mm/],
    ['shelf, 782', /no width/],
    ['shelf', /no length/],
    ['shelf, 782, 732, some', /'some' is no number of pieces/],
    ['shelf, 782, 732, 0', /'0' is no number of pieces/],
    ['shelf, 1,234.5.6 , 732', /not a length|not a number|commas/],
  ])('does not guess what %j means', (line, why) => {
    const lines = told(`# sizes to saw\n\n${line}\nside, 500, 400`, SHEETS);
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(/^\/lines\/3 /);
    expect(lines[0]).toMatch(why);
  });

  it('follows a line of headings, and says which column is not read', () => {
    const text = 'Qty;Part;Edge;Length (mm);Width (mm)\r\n6;shelf;oak;782,5;732\r\n2;side;;900;400';
    expect(told(text, SHEETS)).toEqual(['6 × 782.5 × 732 shelf', '2 × 900 × 400 side']);
    const read = readCutList(text, SHEETS);
    expect(read.ok && read.value.warnings).toEqual([{ path: '/lines/1', message: "'Edge' is not read" }]);
    expect(told('name,length,width\nshelf,782,732,6', SHEETS)[0]).toMatch(/'6' stands under no heading/);
  });

  it('has inches where the job has, and pieces that may be turned where they may', () => {
    expect(told('30 3/4, 28 7/8', { ...SHEETS, units: 'inch' })).toEqual(['1 × 781.05 × 733.425']);
    const read = readCutList('782, 732', SHEETS);
    expect(read.ok && read.value).toEqual({
      kind: 'sheets',
      pieces: [{ length: 782, width: 732, quantity: 1, turnable: true }],
      warnings: [],
    });
  });
});

describe('a list of pieces for bars', () => {
  it.each([
    ['rail, 873, 26', '26 × 873 rail'],
    ['rail, 873, , 26', '26 × 873 rail'],
    ['873, 26', '26 × 873'],
    ['873', '1 × 873'],
    ['26 x 873 rail', '26 × 873 rail'],
    ['3 x 1.2 m rail', '3 × 1200 rail'],
    ['rail;1 200;4', '4 × 1200 rail'],
    ['stile, 47 1/4", 2', '2 × 1200.15 stile'],
    ['name, length, width, quantity\nrail, 873, , 26', '26 × 873 rail'],
  ])('reads %j', (line, piece) => {
    expect(told(line, BARS)).toEqual([piece]);
  });

  it('refuses a width', () => {
    expect(told('name, length, width\nrail, 873, 40', BARS)[0]).toMatch(/'40' is a width, but bars have none/);
    expect(told('rail, 873, 40, 2', BARS)[0]).toMatch(/4 things in a line/);
  });
});

describe('a list of any kind', () => {
  it('has something in it, and not too much', () => {
    expect(told('# nothing\n\n', BARS)[0]).toMatch(/no piece/);
    expect(told('length, quantity', BARS)[0]).toMatch(/no piece/);
    expect(told('873, 5001', BARS)[0]).toMatch(/5001 pieces in all/);
    expect(told('8\n'.repeat(5001), BARS)[0]).toMatch(/5001 lines/);
    expect(told('x\n'.repeat(30), BARS)).toHaveLength(20);
  });
});
