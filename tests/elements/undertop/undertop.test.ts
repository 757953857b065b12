import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { cornersIn, extentAt, reachOf } from '../../properties/measure';
import { findingOf, jobOf, partsOf, rulesOf, runOf } from '../job-of';

/** Pillars 0–100, 1150–1250, 2300–2400. The scotia is 25 high and stands out 18, as the pillars do. */
const pillar = { rhythm: 'count', bays: 2, width: 100, flutes: 0 };
const undertop = { moulding: 'undertop-scotia-25' };
const madeWith = (elements: object, more: object = {}) =>
  design(jobOf({ height: 1000, elements: { pillar, undertop, ...elements }, ...more }));

describe('the moulding under the top', () => {
  test('is not there unless wished', () => {
    expect(partsOf(design(jobOf({})), 'UM')).toEqual([]);
  });

  test.each([
    ['undertop-scotia-25', 25],
    ['undertop-ovolo-20', 20],
    ['undertop-cavetto-32', 32],
  ])('%s lies between the pillars, tight under the top', (moulding, height) => {
    const made = madeWith({ undertop: { moulding } });
    const pieces = partsOf(made, 'UM');
    expect(pieces.map((p) => reachOf(runOf(made), p))).toEqual([
      { from: 100, to: 1150 },
      { from: 1250, to: 2300 },
    ]);
    const corners = pieces.flatMap((p) => cornersIn(runOf(made), p));
    expect(Math.max(...corners.map((c) => c.z))).toBeCloseTo(960, 9);
    expect(Math.min(...corners.map((c) => c.z))).toBeCloseTo(960 - height, 9);
    expect(Math.min(...corners.map((c) => c.d))).toBeCloseTo(12, 9);
    expect(made.rod.heights.underTop).toBe(height);
    expect(rulesOf(made).filter((r) => r.startsWith('undertop'))).toEqual([]);
  });

  test('stands out furthest at its upper edge', () => {
    const made = madeWith({});
    const corners = cornersIn(runOf(made), partsOf(made, 'UM')[0]);
    const most = Math.max(...corners.map((c) => c.d));
    expect(most).toBeCloseTo(30, 9);
    for (const c of corners.filter((one) => one.d > 29.9)) expect(c.z).toBeGreaterThan(950);
  });

  test('is mitred at a corner without pillar', () => {
    const made = madeWith(
      { pillar: { ...pillar, atCorners: false } },
      { runs: [{ length: 2000, deflectionDeg: -90 }, { length: 2000 }] },
    );
    const last = partsOf(made, 'UM').at(-1);
    if (!last) throw new Error('none');
    // 12 and 30 out, an inside corner of 90°: it ends so much before the corner.
    expect(extentAt(runOf(made), last, 12)?.to).toBeCloseTo(2000 - 12, 9);
    expect(extentAt(runOf(made), last, 30)?.to).toBeCloseTo(2000 - 30, 9);
  });

  test('is cut on a join under a strip, and so leaves with both sections', () => {
    const made = madeWith({}, { joins: { by: 'hand', at: [{ run: 1, x: 1275 }] } });
    const pieces = partsOf(made, 'UM');
    expect(pieces.map((p) => reachOf(runOf(made), p))).toEqual([
      { from: 100, to: 1150 },
      { from: 1250, to: 1275 },
      { from: 1275, to: 2300 },
    ]);
    expect(pieces.map((p) => p.inSection)).toEqual(['S1', 'S1', 'S2']);
  });

  test('crosses a join where a scrap would be left, and is then fitted on site', () => {
    const made = madeWith({}, { joins: { by: 'hand', at: [{ run: 1, x: 1260 }] } });
    const [, piece] = partsOf(made, 'UM');
    expect(reachOf(runOf(made), piece)).toEqual({ from: 1250, to: 2300 });
    expect(piece.fitted).toBe('site');
  });

  test('stops at the caps of the pillars', () => {
    const made = madeWith({ pillar: { ...pillar, capHeight: 60, capOverhang: 12 } });
    expect(reachOf(runOf(made), partsOf(made, 'UM')[0])).toEqual({ from: 112, to: 1138 });
  });

  test('further out than the top, or than the pillars, is said', () => {
    const out = madeWith({
      top: { overhang: 29 },
      plinth: { sheet: 'mdf-15' },
      skirting: { moulding: 'skirting-chamfer-95' },
    });
    // 12 of cladding and 18.
    expect(findingOf(out, 'undertop-beyond-top')).toMatchObject({ severity: 'warn', value: 30, limit: 29 });
    expect(rulesOf(madeWith({ top: { overhang: 30 } }))).not.toContain('undertop-beyond-top');
    const proud = madeWith({ pillar: { ...pillar, sheet: 'mdf-15' } });
    expect(findingOf(proud, 'undertop-proud')).toMatchObject({ severity: 'warn', value: 18, limit: 15 });
  });

  test('without room above the skirting is left out', () => {
    const made = madeWith({ undertop: { moulding: 'skirting-torus-145' } }, { height: 300 });
    // 300 − 40 under the top, less skirting of 120: 140; 145 is wanted.
    expect(findingOf(made, 'undertop-no-height')).toMatchObject({ severity: 'stop', value: 140, limit: 145 });
    expect(partsOf(made, 'UM')).toEqual([]);
  });
});
