import { describe, expect, it } from 'vitest';
import { massCentre } from '../../src/base/solid/mass';
import { design, newJob } from '../../src/flow';
import { breachesOf } from '../../src/sections/limits';
import { boundsInRoom } from '../base/bounds';
import { findingOf, jobOf, rulesOf } from '../elements/job-of';

const wide = { vanLength: 6000, vanWidth: 2000, vanHeight: 2000, people: 4, liftKg: 50 };

describe('a section', () => {
  const made = design(
    jobOf({
      runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }],
      joins: { by: 'hand', at: [{ run: 1, x: 785 }] },
    }),
  );

  it('has the box, weight and parts of what is fitted to it in the workshop', () => {
    const [first, second] = made.sections;
    expect(first.pieces).toEqual([{ run: 'A', from: 0, to: 785 }]);
    expect(second.pieces).toEqual([{ run: 'A', from: 785, to: 3000 }]);
    for (const section of made.sections) {
      const parts = made.parts.filter((p) => p.inSection === section.id);
      expect(section.parts).toEqual(parts.map((p) => p.mark));
      expect(section.weightKg).toBeCloseTo(
        parts.reduce((sum, p) => sum + p.weightKg, 0),
        9,
      );
      // The run lies along x, so the box is the room's.
      const boxes = parts.map(boundsInRoom);
      const reach = (k: 0 | 1 | 2): number =>
        Math.max(...boxes.map((b) => b.max[k])) - Math.min(...boxes.map((b) => b.min[k]));
      expect(section.size.length).toBeCloseTo(reach(0), 9);
      expect(section.size.depth).toBeCloseTo(reach(1), 9);
      expect(section.size.height).toBeCloseTo(reach(2), 9);
    }
    expect(first.size.length).toBe(785);
  });

  it('leaves the shop with what is left on to scribe', () => {
    const scribed = design(
      jobOf({
        runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }],
        joins: { by: 'hand', at: [{ run: 1, x: 785 }] },
        fit: { scribe: 15 },
      }),
    );
    expect(scribed.sections.map((s) => s.size.length)).toEqual([785 + 15, 3000 - 785 + 15]);
  });

  it('balances where its parts’ weights do, and is lifted as far on one side of that as on the other', () => {
    for (const section of made.sections) {
      const parts = made.parts.filter((p) => p.inSection === section.id);
      const moment = parts.reduce((sum, p) => sum + p.weightKg * massCentre(p)[0], 0);
      expect(section.centreOfGravity[0]).toBeCloseTo(moment / section.weightKg, 6);
      const [a, b] = section.liftingPoints.map((p) => p[0] - section.centreOfGravity[0]);
      expect(a + b).toBeCloseTo(0, 6);
      expect(b).toBeGreaterThan(0);
      // Under the top plate: 1060 less 38; in the middle of 63 mm of frame.
      for (const [x, y, z] of section.liftingPoints) {
        expect([y, z]).toEqual([expect.closeTo(31.5, 6), 1022]);
        expect(x).toBeGreaterThan(section.pieces[0].from + 0.2 * section.size.length - 1e-6);
        expect(x).toBeLessThan(section.pieces[0].to - 0.2 * section.size.length + 1e-6);
      }
    }
  });

  it('the centre of mass of a mitred board is that of a trapezium', () => {
    // Long side a, short side b, height h: the centre lies h/3·(a + 2b)/(a + b) from the long side (a table of centroids).
    const [a, b, h] = [100, 60, 30];
    const centre = massCentre({
      shape: {
        kind: 'board',
        thickness: 10,
        holes: [],
        outline: [
          [0, 0],
          [a, 0],
          [a - 20, h],
          [20, h],
        ],
        edges: [0, 1, 2, 3].map(() => ({ kind: 'square' as const, steps: [] })),
      },
      place: { origin: [5, 0, 0], along: [1, 0, 0], across: [0, 1, 0], out: [0, 0, 1] },
    });
    expect(centre[0]).toBeCloseTo(55, 9);
    expect(centre[1]).toBeCloseTo(((h / 3) * (a + 2 * b)) / (a + b), 9);
    expect(centre[2]).toBeCloseTo(5, 9);
  });
});

describe('limits of the way', () => {
  const carry = { ...newJob('way').carry, ...wide };
  const load = { length: 1800, depth: 500, height: 1060, weightKg: 30 };

  it('a load within all of them breaks none', () => expect(breachesOf(load, carry)).toEqual([]));

  it('each is told by number and limit', () => {
    expect(breachesOf({ ...load, length: 6100 }, carry)).toMatchObject([
      { what: 'length in the van', value: 6100, limit: 6000, byCutting: true },
    ]);
    // Three of four people count: 50 × 3 / 2 = 75.
    expect(breachesOf({ ...load, weightKg: 80 }, carry)).toMatchObject([{ what: 'weight', value: 80, limit: 75 }]);
    // On its back it would be 1060 wide and 750 high: upright it lacks less.
    expect(breachesOf({ ...load, depth: 750 }, carry)).toMatchObject([
      { what: 'depth through the narrowest door on the way', value: 750, limit: 717, byCutting: false },
    ]);
  });

  it('on its back through a low wide door it passes', () => {
    const low = { ...carry, routeDoorWidth: 1200, routeDoorHeight: 800 };
    expect(breachesOf(load, low)).toEqual([]);
  });

  it('round a corridor’s turn', () => {
    // 900 into 1200, 400 wide: 2153.9.
    const turn = { ...carry, corridorBefore: 900, corridorAfter: 1200 };
    expect(breachesOf({ ...load, depth: 400, length: 2100 }, turn)).toEqual([]);
    expect(breachesOf({ ...load, depth: 400, length: 2200 }, turn)[0].limit).toBeCloseTo(2153.9, 1);
  });
});

describe('the fewest sections', () => {
  const least = (more: Parameters<typeof jobOf>[0]) => design(jobOf({ joins: { by: 'least' }, ...more }));

  it('none where one piece can be carried', () => {
    const made = least({ runs: [{ length: 2000 }], carry: wide });
    expect(made.joins).toEqual([]);
    expect(made.sections).toHaveLength(1);
  });

  it('as few as the van asks for, as even as can be, each behind a pillar', () => {
    // 6000 in 6 bays of pillars at 140: clear 5720, openings (5720 − 5·140)/6 = 836.67, pitch 976.67; a van of 2400 takes two bays: three sections.
    const made = least({
      runs: [{ length: 6000, rhythm: { by: 'count', count: 6 } }],
      carry: { ...wide, vanLength: 2400 },
    });
    // Pillar centres at 70 + 70 + 836.67 + 70 = 1046.67, then 976.67 further each: 2023.33, 3000, 3976.67.
    expect(made.joins.map((j) => [j.behind, Math.round(j.x)])).toEqual([
      ['pillar', 2023],
      ['pillar', 3977],
    ]);
    expect(made.sections.map((s) => Math.round(s.size.length))).toEqual([2023, 1953, 2023]);
  });

  it('stands under no strip while there is a pillar between the ends, though the sections stay too long', () => {
    // One pillar, in the middle of 3600; a van of 1700 would want joins at the edges of the bays too, at 160, 1710, 1890 and 3440.
    const made = least({
      runs: [{ length: 3600, rhythm: { by: 'count', count: 2 } }],
      carry: { ...wide, vanLength: 1700 },
    });
    expect(made.joins.map((j) => [j.behind, j.x])).toEqual([['pillar', 1800]]);
    expect(made.findings.filter((f) => f.rule === 'section-too-big').map((f) => [f.value, f.limit])).toEqual([
      [1800, 1700],
      [1800, 1700],
    ]);
  });

  it('stands under a strip at the edge of a bay where there is no pillar between the ends', () => {
    // One bay between pillars of 200, from 200 to 2400: strips of 40 at its edges, joins at 220 and 2380. A van of 2500 asks for one of them.
    const made = least({
      runs: [{ length: 2600, rhythm: { by: 'count', count: 1 } }],
      elements: { pillar: { width: 200 } },
      carry: { ...wide, vanLength: 2500 },
    });
    expect(made.joins.map((j) => j.behind)).toEqual(['cover']);
    expect([220, 2380]).toContain(made.joins[0].x);
    expect(made.sections.map((s) => s.size.length).sort((a, b) => a - b)).toEqual([220, 2380]);
    expect(rulesOf(made)).not.toContain('section-too-big');
  });

  it('says what can’t be carried even so, with number, limit and caution', () => {
    const made = least({ runs: [{ length: 2400 }], carry: { ...wide, people: 1, liftKg: 8 } });
    const finding = findingOf(made, 'section-too-heavy');
    expect(finding.limit).toBe(8);
    expect(finding.value).toBeGreaterThan(8);
    expect(finding.caution).toContain('Plan the lift');
    expect(made.joins.length).toBeGreaterThan(0);
  });

  it('a height that no cutting cures does not cut the unit to pieces', () => {
    const made = least({
      runs: [{ length: 2000 }],
      height: 1200,
      carry: { ...wide, routeDoorWidth: 300, routeDoorHeight: 1000 },
    });
    expect(rulesOf(made)).toContain('section-too-big');
    expect(made.sections).toHaveLength(1);
  });

  it('a corner is a place to part it: an L too deep for the van', () => {
    const made = least({
      runs: [{ length: 2600, deflectionDeg: 90 }, { length: 2600 }],
      carry: { ...wide, vanLength: 3000, vanWidth: 1000, vanHeight: 1300 },
    });
    expect(made.joins.map((j) => j.at)).toEqual(['corner']);
  });

  it('the same as seen in a mirror', () => {
    const runs = [{ length: 5200 }];
    const made = least({ runs, carry: { ...wide, vanLength: 2400 } });
    const xs = made.joins.map((j) => j.x);
    expect(xs.map((x) => 5200 - x).reverse()).toEqual(xs.map((x) => expect.closeTo(x, 6)));
  });
});
