import { describe, expect, test } from 'vitest';
import { fluteWidth, grooves } from '../../src/elements/pillar/flutes';
import { design } from '../../src/flow';
import { jobOf, partsOf, runOf } from '../elements/job-of';
import { cornersIn, extentAt, reachOf } from '../properties/measure';

// Equal division, worked by hand: n openings between n + 1 equal stiles s, p = (W − (n + 1)s)/n; with unequal end stiles e,
// p = (W − 2e − (n − 1)s)/n; stile centres s/2 + i(p + s).

describe('a front of 3600 with 6 pillars of 100', () => {
  // 12 mm skin, 18 mm pillars; skirting 95 high under an opening of 800; 40 mm top.
  const made = design(
    jobOf({
      runs: [{ length: 3600 }],
      height: 95 + 800 + 40,
      elements: {
        cladding: { sheet: 'mdf-12' },
        pillar: { sheet: 'mdf-18', width: 100, rhythm: 'count', bays: 5, flutes: 0 },
        skirting: { moulding: 'skirting-chamfer-95' },
        panel: { moulding: 'panel-ogee-30', margin: 75 },
        top: { hardwood: 'oak-40' },
      },
    }),
  );
  const run = runOf(made);
  const pillars = partsOf(made, 'PI').map((p) => reachOf(run, p));

  test('bays of 600', () => {
    expect(pillars).toHaveLength(6);
    for (const [i, pillar] of pillars.slice(1).entries()) expect(pillar.from - pillars[i].to).toBeCloseTo(600, 9);
  });

  test('centres at 50, 750, 1450, 2150, 2850, 3550', () => {
    const centres = pillars.map(({ from, to }) => (from + to) / 2);
    for (const [i, centre] of [50, 750, 1450, 2150, 2850, 3550].entries()) expect(centres[i]).toBeCloseTo(centre, 9);
  });

  // Panel mould, margin m: outside (p − 2m) × (h − 2m); inside less two widths; stock = 2 × (sum of the outside sizes).
  test('panel frames 450 × 650 outside, 390 × 590 inside, of 2200 each', () => {
    const pieces = partsOf(made, 'PM');
    expect(pieces).toHaveLength(20);
    for (let bay = 0; bay < 5; bay++) {
      const [bottom, right, top, left] = pieces.slice(4 * bay, 4 * bay + 4);
      for (const level of [bottom, top]) {
        expect(level.size.length).toBeCloseTo(450, 9);
        expect(level.shortPoint).toBeCloseTo(390, 9);
      }
      for (const upright of [left, right]) {
        expect(upright.size.length).toBeCloseTo(650, 9);
        expect(upright.shortPoint).toBeCloseTo(590, 9);
      }
      expect([bottom, right, top, left].reduce((sum, p) => sum + p.size.length, 0)).toBeCloseTo(2200, 9);
      const heights = cornersIn(run, right).map((c) => c.z);
      expect([Math.min(...heights), Math.max(...heights)]).toEqual([95 + 75, 95 + 725]);
    }
  });

  test('margins of 75 to both pillars', () => {
    const edges = partsOf(made, 'PM')
      .filter((p) => /bottom/.test(p.where))
      .map((p) => reachOf(run, p));
    for (const [i, { from, to }] of edges.entries()) {
      expect(from - pillars[i].to).toBeCloseTo(75, 9);
      expect(pillars[i + 1].from - to).toBeCloseTo(75, 9);
    }
  });
});

describe('bays between end boards of another width', () => {
  // W 3000 on the face, e 120, s 90: p = (3000 − 240 − (n − 1)·90)/n.
  test.each([
    [1, 2760],
    [2, 1335],
    [3, 860],
    [4, 622.5],
    [5, 480],
  ])('%d bays of %d', (n, p) => {
    const corner = { kind: 'return', length: 300 } as const;
    const made = design(
      jobOf({
        runs: [{ length: 3000, over: 'pillar' }],
        leftEnd: corner,
        rightEnd: corner,
        elements: { pillar: { width: 90, cornerWidth: 120, rhythm: 'count', bays: n, flutes: 0 } },
      }),
    );
    const face = made.rod.layers.pillar.outer;
    const seen = partsOf(made, 'PI').map((part) => extentAt(runOf(made), part, face));
    expect(seen).toHaveLength(n + 1);
    for (let i = 0; i < n; i++) expect((seen[i + 1]?.from ?? 0) - (seen[i]?.to ?? 0)).toBeCloseTo(p, 9);
  });
});

// f = (W − 2e)/(n + (n − 1)r), r the fillet's share of a flute: plane geometry, printed to 3 decimals.
describe('flutes on a pilaster', () => {
  test.each([
    [150, 7, 15, 13.333, 4.444],
    [100, 5, 12.5, 11.842, 3.947],
    [120, 7, 10, 11.111, 3.704],
  ])('%d wide, %d flutes, margin %d: flutes %d, fillets %d', (face, count, margin, flute, fillet) => {
    const exact = (face - 2 * margin) / (count + (count - 1) / 3) / 3;
    expect(exact).toBeCloseTo(fillet, 3);
    const width = fluteWidth(face, 18, count, margin, exact, 3);
    expect(width).toBeCloseTo(flute, 3);
    if (typeof width !== 'number') throw new Error(width);
    const cut = grooves(face, { count, width, spacing: exact, depth: 3, stop: 0 });
    expect(cut[0].centre - width / 2).toBeCloseTo(margin, 9);
    expect(face - cut[count - 1].centre - width / 2).toBeCloseTo(margin, 9);
  });

  // "Not more than one third nor less than one fourth" of the flute: Rudiments of Ancient Architecture (1810).
  test('the fillets that a new job has are classical', () => {
    const [groove, next] = partsOf(design(jobOf({})), 'PI')[0].grooves;
    const fillet = next.centre - groove.centre - groove.width;
    expect(fillet / groove.width).toBeGreaterThanOrEqual(1 / 4);
    expect(fillet / groove.width).toBeLessThanOrEqual(1 / 3);
  });
});
