import { describe, expect, test } from 'vitest';
import { cutBatches, design } from '../../../src/flow';
import { job } from '../../reference/l-counter-job';
import { AMOUNTS, COUNT, PARTS } from '../../reference/l-counter-sums';
import { barsOf, batchOf, counted, sheetsOf, withCutting } from './taken';

/*
 * What is cut for the L-shaped counter, by hand from its list of parts (`tests/reference/l-counter-frame.ts`, `l-counter-front.ts`): 15 is left
 * on at the wall, kerfs 3.2 and 2.4, no trimming over size.
 */

const made = design(job);
const { batches, findings } = cutBatches(made);

describe('the batches of the L-shaped counter', () => {
  test('one for each stuff, and nothing that can’t be cut', () => {
    expect(findings).toEqual([]);
    expect(Object.fromEntries(batches.map(({ id, marks }) => [id, marks.flat(2).length]))).toEqual({
      'sawn-38x63': COUNT.PL + COUNT.ST + COUNT.NG + COUNT.CR + COUNT.RP + COUNT.RA,
      'mdf-12': COUNT.CL,
      'mdf-25': COUNT.BK + COUNT.BR,
      'mdf-18': COUNT.PI + COUNT.SH + COUNT.DR,
      'skirting-ogee-120': COUNT.SK,
      'panel-ogee-30': COUNT.PM,
      // Both tops are 600 deep.
      'oak-40:600': COUNT.TP,
      'sawn-25x38': COUNT.SB,
    });
    expect(batches.flatMap(({ marks }) => marks.flat(2)).sort()).toEqual(made.parts.map((p) => p.mark).sort());
    expect(made.parts).toHaveLength(PARTS);
  });

  test.each(['sawn-38x63', 'sawn-25x38', 'skirting-ogee-120', 'panel-ogee-30'])('metres of %s', (id) => {
    const mm = barsOf(made, id).pieces.reduce((sum, { length, quantity }) => sum + length * quantity, 0);
    expect(mm / 1000).toBeCloseTo(AMOUNTS[id], 9);
  });

  test('frame timber: 974 seventeen times, 173 eight times (twice the gaps beside the stud at 293)', () => {
    const all = counted(barsOf(made, 'sawn-38x63'));
    expect(all).toContain('17 × 974');
    expect(all).toContain('8 × 173');
    expect(all).toContain('12 × 359');
    expect(all).toContain('2 × 1272');
  });

  test('small stuff', () => {
    expect(counted(barsOf(made, 'sawn-25x38'))).toEqual(['2 × 612', '4 × 397']);
    expect(counted(barsOf(made, 'skirting-ogee-120'))).toEqual(['3 × 501', '2 × 420']);
    expect(counted(barsOf(made, 'panel-ogee-30'))).toEqual(['6 × 371', '10 × 790', '4 × 290']);
  });

  // Skin: 691 + 15 left on; 1272 + 12 and 1170 + 12, the long face of the mitre. All 1045 high.
  test('skin', () => {
    const skin = sheetsOf(made, 'mdf-12');
    expect(counted(skin)).toEqual(['1 × 706 × 1045', '1 × 1284 × 1045', '1 × 1182 × 1045']);
    expect(skin).toMatchObject({ kerf: 3.2, trim: 5, leastOffcut: { length: 300, width: 100 } });
    expect(skin.pieces.every((piece) => piece.turnable)).toBe(true);
    // Both sizes of the stuff, at their prices.
    expect(skin.stock.map(({ length, width, price }) => [length, width, price])).toEqual([
      [2440, 1220, 2400],
      [3050, 1220, 3000],
    ]);
    expect(batchOf(batches, 'mdf-12').from).toEqual([{ item: 'mdf-12' }, { item: 'mdf-12-long' }]);
  });

  // Pillars 900 × 120, the one at the wall 15 wider; corner boards by their face, 100. Shelves 610 × 421, doors 1032 × 371.5.
  test('MDF 18', () => {
    expect(counted(sheetsOf(made, 'mdf-18'))).toEqual([
      '1 × 900 × 135',
      '4 × 900 × 120',
      '2 × 900 × 100',
      '2 × 610 × 421',
      '2 × 1032 × 371.5',
    ]);
  });

  /*
   * Blocks 125 + 15, three of 130, two of 112, one of 150, and the return of 100: 1004; eight saw cuts of 2.4, one after each, 19.2; 10 spare: a
   * strip of 1033.2, no longer than 1200.
   */
  test('plinth blocks come from one strip', () => {
    expect(counted(sheetsOf(made, 'mdf-25'))).toEqual(['1 × 1033.2 × 150']);
    const [[strip]] = batchOf(batches, 'mdf-25').marks;
    const lengthOf = (mark: string) => made.parts.find((p) => p.mark === mark)?.size.length;
    expect(strip.map((mark) => Math.round(lengthOf(mark) ?? 0))).toEqual([150, 125, 130, 130, 130, 112, 112, 100]);
  });

  /*
   * No longer than 500: 150 + 140 + 130, three cuts and 10 spare make 437.2, and the next would make 551.6; then 130 + 130 + 112, three cuts and 10
   * make 389.2, where the next would make 503.6 (but for the last, of 100: 491.6); then 112 alone.
   */
  test('or from three shorter ones', () => {
    const shorter = withCutting(made, { longestStrip: 500 });
    expect(counted(sheetsOf(shorter, 'mdf-25'))).toEqual(['1 × 437.2 × 150', '1 × 491.6 × 150', '1 × 112 × 150']);
    // Shorter than any block: each by itself, twins together.
    expect(counted(sheetsOf(withCutting(made, { longestStrip: 100 }), 'mdf-25'))).toEqual([
      '1 × 150 × 150',
      '1 × 140 × 150',
      '3 × 130 × 150',
      '2 × 112 × 150',
      '1 × 100 × 150',
    ]);
  });

  // Run A 2038 along its front and 15 left on at the wall; run B 1275. Mitred across 600 of width, the front the longer.
  test('tops, from blanks 600 wide', () => {
    const top = barsOf(made, 'oak-40:600');
    expect(top).toMatchObject({ kerf: 3.2, trim: 0, section: { width: 600, thickness: 40, turns: ['swung'] } });
    expect(top.pieces.map(({ length, ends }) => [length, ends])).toEqual([
      [
        2053,
        [
          [0, 0],
          [-1, 0],
        ],
      ],
      [
        1275,
        [
          [1, 0],
          [0, 0],
        ],
      ],
    ]);
    // £205 a square metre: 0.6 × 0.3 is 36.90, and 0.6 × 3.6 is 442.80.
    expect(top.stock.map(({ length }) => length)).toEqual(Array.from({ length: 12 }, (_, i) => 300 * (i + 1)));
    expect(top.stock[0].price).toBe(3690);
    expect(top.stock[11].price).toBe(44280);
  });

  /*
   * Members mitred at both ends: between them whole cuts at 45°, 2.4·√2 = 3.394 along the bar. Frames of A 2·(371 + 790) + 3·3.394 = 2332.18,
   * of B 2·(290 + 790) + 10.18 = 2170.18.
   */
  test('panel frames each from one bar, where it is wished and can be', () => {
    expect(barsOf(made, 'panel-ogee-30').pieces.some((p) => p.together)).toBe(false);
    const bound = barsOf(withCutting(made, { framesTogether: true }), 'panel-ogee-30');
    const sets = new Map<string | undefined, number>();
    for (const { together, quantity } of bound.pieces) sets.set(together, (sets.get(together) ?? 0) + quantity);
    expect([...sets.values()]).toEqual([4, 4, 4, 4, 4]);
    expect(sets.has(undefined)).toBe(false);
    // 2400 less 40 at each end is 2320: too short for the three of A.
    const only = { 'panel-ogee-30': { lengths: [{ length: 2400, pricePence: 504 }] } };
    const short = cutBatches(withCutting(made, { framesTogether: true, barTrim: 40 }, only));
    expect(short.findings.map(({ rule }) => rule)).toEqual(Array(3).fill('set-not-from-one-bar'));
    expect(short.findings[0]).toMatchObject({ severity: 'note', limit: 2320 });
    expect(short.findings[0].value).toBeCloseTo(2332.182, 3);
    const { problem } = batchOf(short.batches, 'panel-ogee-30');
    expect(problem.pieces.filter((p) => p.together).reduce((sum, p) => sum + p.quantity, 0)).toBe(8);
    expect(problem.pieces.reduce((sum, p) => sum + p.quantity, 0)).toBe(20);
  });

  test('sawn over size by 3 on each side: what is worked, or all', () => {
    const over = (oversizeOn: 'worked' | 'all', id: string) =>
      counted(sheetsOf(withCutting(made, { oversizeOn, oversize: 3 }), id));
    // Not the one at the wall, whose edges are square.
    expect(over('worked', 'mdf-12')).toEqual(['1 × 706 × 1045', '1 × 1290 × 1051', '1 × 1188 × 1051']);
    expect(over('all', 'mdf-12')).toEqual(['1 × 712 × 1051', '1 × 1290 × 1051', '1 × 1188 × 1051']);
    expect(over('worked', 'mdf-25')).toEqual(['1 × 1039.2 × 156']);
    expect(over('worked', 'mdf-18').slice(0, 3)).toEqual(['1 × 900 × 135', '4 × 900 × 120', '2 × 906 × 106']);
  });

  test('stages and the longest cut are left open unless decided', () => {
    expect(sheetsOf(made, 'mdf-12').stages).toBeUndefined();
    expect(sheetsOf(made, 'mdf-12').longestCut).toBeUndefined();
    const decided = sheetsOf(withCutting(made, { stages: '2', longestCut: 1300, trimsFree: false }), 'mdf-12');
    expect(decided).toMatchObject({ stages: 2, longestCut: 1300, trimsFree: false });
  });
});
