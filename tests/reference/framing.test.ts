import { describe, expect, test } from 'vitest';
import { design } from '../../src/flow';
import type { Design } from '../../src/vocabulary/design';
import type { Decision } from '../../src/vocabulary/field';
import { jobOf, partsOf, runOf } from '../elements/job-of';
import { reachOf } from '../properties/measure';

// Stud setting-out, worked by hand: studs of width t, first and last flush, centres at most c: n = ceil((R − t)/c) + 1. On the module
// (usual in the UK and US: from memory) centres t/2, c, 2c … R − t/2, measured from the datum end; equally (R − t)/(n − 1).

/** A frame alone: no pillar or joint asks for a stud of its own (a sheet as long as the run), one row of noggins, behind the skirting. */
function framed(length: number, frame: Readonly<Record<string, Decision>>): Design {
  return design(
    jobOf({
      runs: [{ length }],
      height: 1000 + 40,
      elements: {
        frame: { timber: 'sawn-38x63', lay: 'edge', nogginRows: 0, ...frame },
        pillar: { width: 80, rhythm: 'count', bays: 1 },
        panel: { rows: 0 },
        top: { hardwood: 'oak-40' },
      },
      stock: { 'mdf-12': { length: 6000 } },
    }),
  );
}
const centresOf = (made: Design): readonly number[] =>
  partsOf(made, 'ST')
    .map((p) => reachOf(runOf(made), p))
    .map(({ from, to }) => (from + to) / 2);

describe('a frame of 3600 at 400 centres, studs and plates of 38, 1000 high', () => {
  const made = framed(3600, { centres: 400, method: 'module' });
  const studs = partsOf(made, 'ST').map((p) => reachOf(runOf(made), p));

  test('ten studs, on the module from the left', () => {
    const expected = [19, 400, 800, 1200, 1600, 2000, 2400, 2800, 3200, 3581];
    const found = centresOf(made);
    expect(found).toHaveLength(expected.length);
    for (const [i, x] of expected.entries()) expect(found[i]).toBeCloseTo(x, 9);
  });

  test('clear between them: 343, seven of 362, 343, together 3220', () => {
    const gaps = studs.slice(1).map((s, i) => s.from - studs[i].to);
    for (const [i, gap] of [343, 362, 362, 362, 362, 362, 362, 362, 343].entries()) expect(gaps[i]).toBeCloseTo(gap, 9);
    expect(gaps.reduce((a, b) => a + b, 0)).toBeCloseTo(3220, 9);
  });

  test('from the right the same, mirrored', () => {
    const found = centresOf(framed(3600, { centres: 400, method: 'module', datum: 'right' }));
    for (const [i, x] of centresOf(made).entries()) expect(found[9 - i]).toBeCloseTo(3600 - x, 9);
  });

  test('studs are 924 long; plates, studs and one row of noggins come to 19 660', () => {
    for (const stud of partsOf(made, 'ST')) expect(stud.size.length).toBeCloseTo(924, 9);
    const run = (code: string): number => partsOf(made, code).reduce((sum, p) => sum + p.size.length, 0);
    expect(run('PL')).toBeCloseTo(7200, 9);
    expect(run('ST')).toBeCloseTo(9240, 9);
    expect(run('NG')).toBeCloseTo(3220, 9);
    expect(run('PL') + run('ST') + run('NG')).toBeCloseTo(19_660, 9);
  });

  test('equally: 395.78 from centre to centre', () => {
    const found = centresOf(framed(3600, { centres: 400, method: 'equal' }));
    expect(found).toHaveLength(10);
    for (const [i, x] of found.slice(1).entries()) expect(x - found[i]).toBeCloseTo(395.78, 2);
  });
});

describe('how many studs', () => {
  // n = ceil((R − 38)/c) + 1; 406.4 is 16 inches.
  test.each([
    [2400, 600, 5],
    [2438, 600, 5],
    [2439, 600, 6],
    [3600, 600, 7],
    [4800, 400, 13],
    [4800, 406.4, 13],
    [1238, 400, 4],
    [1239, 400, 5],
  ])('%d at %d: %d', (length, centres, count) => {
    expect(centresOf(framed(length, { centres, method: 'equal' }))).toHaveLength(count);
  });
});
