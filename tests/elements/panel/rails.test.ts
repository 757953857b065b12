import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { cornersIn, extentAt, reachOf } from '../../properties/measure';
import { openingOf, wishOf } from '../behind-job';
import { findingOf, jobOf, partsOf, rulesOf, runOf } from '../job-of';

/** Pillars 0–100, 1150–1250, 2300–2400: bays of 1050. Under the top of 40 there are 960 mm; skirting 120. */
const pillar = { rhythm: 'count', bays: 2, width: 100, flutes: 0 };
const two = { margin: 60, rows: 2, rowGap: 80 };
const madeWith = (panel: object, more: object = {}) =>
  design(jobOf({ height: 1000, elements: { pillar, panel: { ...two, ...panel } }, ...more }));

/** Lowest and highest point of parts. */
function heightsOf(made: ReturnType<typeof design>, parts: ReturnType<typeof partsOf>): readonly number[] {
  const zs = parts.flatMap((p) => cornersIn(runOf(made), p).map((c) => c.z));
  return [Math.min(...zs), Math.max(...zs)].map((z) => Number(z.toFixed(6)));
}

describe('a flat rail between two rows', () => {
  test('lies across the bay, in the middle between them', () => {
    const made = madeWith({ rail: true, railHeight: 40 });
    const rails = partsOf(made, 'FL');
    // 120 + 60 to 960 − 60, less 80, halved: 320. The rows are 180–500 and 580–900; the rail 540 ± 20.
    expect(heightsOf(made, rails)).toEqual([520, 560]);
    expect(rails.map((p) => reachOf(runOf(made), p))).toEqual([
      { from: 100, to: 1150 },
      { from: 1250, to: 2300 },
    ]);
    expect(rails[0].size).toEqual({ length: 1050, width: 40, thickness: 12 });
    const behind = made.framing[0].noggins.filter((n) => n.reasons.includes('flat rail'));
    expect(behind.length).toBeGreaterThan(0);
    for (const n of behind) expect(n.low + 6 <= 540 && 540 <= n.high - 6).toBe(true);
  });

  test('for which there is no room is left out, with what it needs', () => {
    const made = madeWith({ rail: true, railHeight: 40, rowGap: 59 });
    // 40 and 10 above and below.
    expect(findingOf(made, 'panel-rail-no-room')).toMatchObject({ severity: 'stop', value: 59, limit: 60 });
    expect(partsOf(made, 'FL')).toEqual([]);
    expect(partsOf(made, 'PM')).toHaveLength(16);
    expect(rulesOf(madeWith({ rail: true, railHeight: 40, rowGap: 60 }))).not.toContain('panel-rail-no-room');
  });

  test('is mitred at a corner without pillar', () => {
    const made = madeWith(
      { rail: true },
      {
        runs: [{ length: 2000, deflectionDeg: 90 }, { length: 2000 }],
        elements: { pillar: { ...pillar, atCorners: false }, panel: { ...two, rail: true } },
      },
    );
    const last = partsOf(made, 'FL').at(-1);
    if (!last) throw new Error('no rail');
    // Cladding 12, rail 12.
    expect(extentAt(runOf(made), last, 12)?.to).toBeCloseTo(2012, 9);
    expect(extentAt(runOf(made), last, 24)?.to).toBeCloseTo(2024, 9);
    expect(last.meets).toBe('right');
  });

  test('thicker than the pillars shows its ends, and longer than its sheet is said', () => {
    const thick = madeWith({ rail: true, railSheet: 'mdf-25' });
    expect(findingOf(thick, 'panel-rail-proud')).toMatchObject({ severity: 'warn', value: 25, limit: 18 });
    const long = madeWith({ rail: true }, { runs: [{ length: 5200 }] });
    // (5200 − 300)/2 = 2450 between pillars; the sheet is 2440.
    expect(findingOf(long, 'panel-rail-too-long')).toMatchObject({ value: 2450, limit: 2440 });
  });
});

describe('panel frames keep clear', () => {
  test('of a moulding under the top: the margin is measured from its lower edge', () => {
    const made = madeWith(
      { rows: 1 },
      { elements: { pillar, panel: { margin: 60 }, undertop: { moulding: 'undertop-scotia-25' } } },
    );
    // 960 − 25 − 60.
    expect(heightsOf(made, partsOf(made, 'PM'))).toEqual([180, 875]);
  });

  test('of a plinth along the whole foot: the margin is measured from its upper edge', () => {
    for (const style of ['plain', 'kicked']) {
      const made = madeWith({}, { elements: { pillar, panel: { margin: 60 }, plinth: { style, height: 105 } } });
      expect(heightsOf(made, partsOf(made, 'PM'))).toEqual([165, 900]);
    }
  });

  test('of the brackets of a foot rail, where these reach higher than the margin', () => {
    const foot = (height: number) => ({ pillar, panel: { margin: 60 }, footrail: { wanted: true, height } });
    const low = madeWith({}, { elements: foot(165) });
    const high = madeWith({}, { elements: foot(230) });
    // Brackets reach to the middle of the rail, and 10 more are kept: 175 is below 180, 240 above it.
    expect(heightsOf(low, partsOf(low, 'PM'))[0]).toBe(180);
    expect(heightsOf(high, partsOf(high, 'PM'))[0]).toBe(240);
  });

  test('of a strip over a join, or are left out, with by how much they meet it', () => {
    const joins = { by: 'hand' as const, at: [{ run: 1, x: 1270 }] };
    const made = madeWith({ margin: 25 }, { joins });
    // The strip covers 1250 to 1290; the frame would begin at 1275.
    expect(findingOf(made, 'panel-at-cover')).toMatchObject({ severity: 'stop', value: 15, limit: 0 });
    expect(partsOf(made, 'PM').every((p) => p.where.startsWith('bay 1'))).toBe(true);
    expect(rulesOf(madeWith({ margin: 40 }, { joins }))).not.toContain('panel-at-cover');
  });

  test('of a block that reaches under them', () => {
    const made = madeWith({}, { elements: { pillar, panel: { margin: 20 }, plinth: { overhang: 32, height: 150 } } });
    // Skirting 120 and 20 is below the block's 150; the block stands 32 into the bay, 12 more than the margin.
    expect(findingOf(made, 'panel-at-pillar')).toMatchObject({ severity: 'stop', limit: 0 });
    expect(findingOf(made, 'panel-at-pillar').value).toBeCloseTo(12, 9);
    expect(partsOf(made, 'PM')).toEqual([]);
  });

  test('of a bay that is to have none', () => {
    const made = madeWith({ rail: true }, { bays: [wishOf({ panels: false })] });
    expect([...partsOf(made, 'PM'), ...partsOf(made, 'FL')].every((p) => p.where.startsWith('bay 2'))).toBe(true);
    expect(partsOf(made, 'PM')).toHaveLength(8);
  });
});

describe('an opening', () => {
  const grille = (z: number) => openingOf({ name: 'grille', use: 'grille', x: 625, z, width: 200, height: 100 });

  test('inside the field of a frame has its place; on a member it is refused, by name', () => {
    // One row, 180 to 900: its lower member 180–210.
    const panel = { margin: 60, rows: 1 };
    expect(madeWith(panel, { openings: [grille(500)] }).openings).toHaveLength(1);
    const refused = madeWith(panel, { openings: [grille(240)] });
    expect(refused.openings).toEqual([]);
    // From 190 up: 20 of it on the member.
    expect(findingOf(refused, 'opening-refused').message).toContain('meets panel frame in bay 1 by 20 mm');
  });

  test('on a flat rail is refused', () => {
    const refused = madeWith({ rail: true }, { openings: [grille(540)] });
    expect(refused.openings).toEqual([]);
  });
});
