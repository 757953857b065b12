import { describe, expect, test } from 'vitest';
import { cutBatches, design } from '../../../src/flow';
import type { Offcut } from '../../../src/vocabulary/cut-plan';
import { findingOf, jobOf, partsOf, rulesOf } from '../../elements/job-of';
import { barsOf, batchOf, sheetsOf, withCutting } from './taken';

const made = design(jobOf({ runs: [{ length: 2400 }], depth: 600 }));
const offcut = (mark: string, material: string, length: number, width?: number): Offcut =>
  width === undefined ? { mark, material, length } : { mark, material, length, width };

describe('offcuts in the rack', () => {
  const rack = [
    offcut('R1', 'mdf-12', 900, 400),
    offcut('R2', 'mdf-12-long', 700, 1200),
    offcut('R3', 'mdf-18', 900, 400),
    offcut('R4', 'sawn-38x63', 1100),
    // A sheet without a width, and one of nothing, are none.
    offcut('R5', 'mdf-12', 900),
    offcut('R6', 'mdf-12', 0, 300),
    offcut('R7', 'unknown', 900, 900),
  ];

  test('are offered with their stuff: of any of its sizes, paid for, one of each, and not trimmed', () => {
    const { stock } = sheetsOf(made, 'mdf-12', rack);
    const common = { price: 0, count: 1, trim: 0, offcut: true };
    expect(stock.slice(2)).toEqual([
      { name: 'R1', length: 900, width: 400, ...common },
      { name: 'R2', length: 700, width: 1200, ...common },
    ]);
    expect(batchOf(cutBatches(made, rack).batches, 'mdf-12').from.slice(2)).toEqual([
      { offcut: 'R1' },
      { offcut: 'R2' },
    ]);
    expect(barsOf(made, 'sawn-38x63', rack).stock.at(-1)).toEqual({ name: 'R4', length: 1100, ...common });
  });

  test('are trimmed where it is decided', () => {
    const trimmed = withCutting(made, { offcutTrim: 2 });
    expect(sheetsOf(trimmed, 'mdf-12', rack).stock.at(-1)?.trim).toBe(2);
    expect(barsOf(trimmed, 'sawn-38x63', rack).stock.at(-1)?.trim).toBe(2);
  });

  test('of hardwood go to the widest blank that they hold, and to no other', () => {
    // The top is 600 deep, the flap's bearers 25.
    const flap = design(
      jobOf({
        runs: [{ length: 1500, flap: { width: 700, hinge: 'left', gate: true } }, { length: 1200 }],
        depth: 600,
      }),
    );
    const oak = [offcut('W', 'oak-40', 800, 610), offcut('N', 'oak-40', 900, 100), offcut('X', 'oak-40', 900)];
    const offered = (id: string) => barsOf(flap, id, oak).stock.flatMap((s) => (s.offcut ? [s.name] : []));
    expect(offered('oak-40:600')).toEqual(['W']);
    expect(offered('oak-40:25')).toEqual(['N']);
  });

  test('more than a problem holds: the largest are offered', () => {
    const many = Array.from({ length: 250 }, (_, i) => offcut(`M${i}`, 'mdf-12', 300 + i, 200));
    const { stock } = sheetsOf(made, 'mdf-12', many);
    expect(stock).toHaveLength(200);
    expect(Math.min(...stock.filter((s) => s.offcut).map((s) => s.length))).toBe(300 + 250 - 198);
  });
});

describe('stuff', () => {
  test('sheets that don’t say that they are one stuff are cut apart', () => {
    const apart = withCutting(made, {}, { 'mdf-12-long': { stuff: undefined } });
    expect(sheetsOf(apart, 'mdf-12').stock).toHaveLength(1);
  });

  test('with a grain nothing may be turned', () => {
    const grained = withCutting(made, {}, { 'mdf-18': { grain: true }, 'mdf-18-long': { grain: true } });
    expect(sheetsOf(grained, 'mdf-18').pieces.map((p) => p.turnable)).toEqual(
      sheetsOf(made, 'mdf-18').pieces.map(() => false),
    );
  });
});

describe('what no stock can yield is said with the joint, and the rest is planned', () => {
  const ruled = (rules: readonly string[], rule: string) => rules.filter((one) => one === rule);

  test('a plate longer than all timber: the design’s own finding, and no other', () => {
    const long = design(jobOf({ runs: [{ length: 4801 }] }));
    const { batches, findings } = cutBatches(long);
    const own = long.findings.filter(({ rule }) => rule === 'longer-than-stock');
    expect(own).toHaveLength(2);
    expect(findings.filter(({ subject }) => subject.part?.startsWith('A-PL'))).toEqual(own);
    expect(findings[0]).toBe(own[0]);
    expect(own[0].remedy).toContain('2 lengths, halved over each other on a stud');
    const { marks } = batchOf(batches, 'sawn-38x63');
    expect(marks.flat(2).some((mark) => mark.startsWith('A-PL'))).toBe(false);
    expect(marks.flat(2)).toEqual(expect.arrayContaining(partsOf(long, 'ST').map(({ mark }) => mark)));
  });

  // 4800 less 20 at each end is 4760. Two lengths with a lap of 63: (4790 + 63)/2 = 2426.5.
  test('one that is too long only for what the trimmed ends leave', () => {
    const long = design(jobOf({ runs: [{ length: 4790 }] }));
    expect(rulesOf(long)).not.toContain('longer-than-stock');
    const { findings } = cutBatches(long);
    expect(
      ruled(
        findings.map((f) => f.rule),
        'longer-than-bar',
      ),
    ).toHaveLength(2);
    expect(findings[0]).toMatchObject({ severity: 'warn', value: 4790, limit: 4760 });
    expect(findings[0].remedy).toContain('2 lengths of 2426.5 mm, halved over each other for 63 mm on a stud');
    expect(cutBatches(withCutting(long, { barTrim: 5 })).findings).toEqual([]);
    // An offcut long enough will do.
    expect(cutBatches(long, [{ mark: 'R', material: 'sawn-38x63', length: 4790 }]).findings).toEqual([]);
  });

  test('a skin larger than the trimmed sheet: butted on a stud', () => {
    const wide = design(jobOf({ runs: [{ length: 3045 }], elements: { cladding: { sheet: 'mdf-12-long', trim: 0 } } }));
    const [skin] = partsOf(wide, 'CL');
    expect(skin.size.length).toBe(3045);
    const { findings, batches } = cutBatches(wide);
    expect(findings).toMatchObject([
      { rule: 'larger-than-sheet', severity: 'warn', subject: { part: skin.mark }, value: 3045, limit: 3040 },
    ]);
    expect(findings[0].remedy).toContain(`2 pieces of 1522.5 × ${skin.size.width} mm: butted over a stud`);
    expect(batches.some(({ id }) => id === 'mdf-12')).toBe(false);
    expect(batches.some(({ id }) => id === 'mdf-18')).toBe(true);
  });

  test('a top longer than the longest blank: butted, with tongues and bolts', () => {
    const [top] = partsOf(made, 'TP');
    const short = withCutting(made, {}, { 'oak-40': { maxLength: 1500 } });
    const { findings } = cutBatches(short);
    expect(findings).toMatchObject([{ rule: 'longer-than-blank', subject: { part: top.mark }, limit: 1500 }]);
    expect(findings[0].remedy).toContain('2 lengths of 1200 mm, butted');
    expect(findings[0].remedy).toContain('bolts');
  });

  test('the finding of the design still says its sizes', () => {
    const long = design(jobOf({ runs: [{ length: 9700 }], elements: { frame: { centres: 600 } } }));
    expect(findingOf(long, 'longer-than-stock').remedy).toContain('Make it in 3 lengths');
  });
});
