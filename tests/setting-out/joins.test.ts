import { describe, expect, it } from 'vitest';
import { design } from '../../src/flow';
import type { JoinMark } from '../../src/vocabulary/job';
import { findingOf, jobOf, partsOf, rulesOf, runOf } from '../elements/job-of';

/** 3000 of frame, pillars of 140 in 4 bays: clear between the end pillars 2720; openings (2720 − 3·140)/4 = 575; centres 785, 1500, 2215. */
const unit = (at: readonly JoinMark[], more = {}) =>
  design(
    jobOf({
      runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }],
      joins: { by: 'hand', at },
      ...more,
    }),
  );

describe('joins worked out', () => {
  it('say no place in the job, for it marks none', () => {
    const made = design(jobOf({ runs: [{ length: 2400 }], joins: { by: 'least' }, carry: { vanLength: 1600 } }));
    expect(runOf(made).joins.map(({ path }) => path)).toEqual([undefined]);
  });
});

describe('joins by hand', () => {
  it('behind a pillar: a stud in each section, plates and skin ending on the line', () => {
    const made = unit([{ run: 1, x: 1500 }]);
    expect(runOf(made).joins).toEqual([
      { id: 'J1', x: 1500, behind: 'pillar', coverFrom: 1430, coverTo: 1570, path: '/unit/joins/at/0' },
    ]);
    expect(runOf(made).sections).toEqual(['S1', 'S2']);
    const { plates, studs } = made.framing[0];
    expect(plates).toEqual([
      { from: 0, to: 1500 },
      { from: 1500, to: 3000 },
    ]);
    // 38 mm studs: 1462 to 1500 and 1500 to 1538.
    expect(studs.filter((s) => s.to > 1460 && s.from < 1540).map((s) => [s.from, s.to])).toEqual([
      [1462, 1500],
      [1500, 1538],
    ]);
    expect(partsOf(made, 'PL').map((p) => p.size.length)).toEqual([1500, 1500, 1500, 1500]);
    for (const skin of partsOf(made, 'CL')) expect(skin.fitted).toBe('workshop');
    expect(made.joins).toEqual([
      { id: 'J1', run: 'A', x: 1500, at: 'run', behind: 'pillar', sections: ['S1', 'S2'], bolts: [150, 450, 850] },
    ]);
  });

  it('what crosses it is site-fitted, and nothing else of the front is', () => {
    const made = unit([{ run: 1, x: 1500 }]);
    const loose = made.parts.filter((p) => p.fitted === 'site' && p.fit !== 'site').map((p) => p.name);
    expect(loose.sort()).toEqual(['pillar board', 'plinth block']);
  });

  it('bolts stand between the plates only', () => {
    // The frame is 1060 high, so its stud is clear from 38 to 1022.
    const made = unit([{ run: 1, x: 1500 }], { fit: { bolts: [50, 400, 1030] } });
    expect(made.joins[0].bolts).toEqual([50, 400]);
  });

  it('off the middle of a pillar it stays where it was put', () => {
    expect(runOf(unit([{ run: 1, x: 1510 }])).joins[0].x).toBe(1510);
  });

  it('at the edge of a bay under a strip of 40', () => {
    // Bay 2 lies between 855 and 1430.
    const made = unit([{ run: 1, x: 880 }]);
    expect(runOf(made).joins).toEqual([
      { id: 'J1', x: 880, behind: 'cover', coverFrom: 855, coverTo: 895, path: '/unit/joins/at/0' },
    ]);
  });

  it('in the field of a bay it is refused, with the nearest pillar', () => {
    const made = unit([{ run: 1, x: 1100 }]);
    expect(runOf(made).joins).toEqual([]);
    expect(findingOf(made, 'join-uncovered')).toMatchObject({
      severity: 'stop',
      value: 1100,
      limit: 785,
      subject: { run: 'A', path: '/unit/joins/at/0' },
    });
  });

  it('three in one pillar: the first stays, the others are refused with the nearest place and nothing else is lost', () => {
    const made = unit([
      { run: 1, x: 1500 },
      { run: 1, x: 1490 },
      { run: 1, x: 1520 },
      { run: 1, x: 785 },
    ]);
    expect(runOf(made).joins.map((j) => j.x)).toEqual([785, 1500]);
    const crowded = made.findings.filter((f) => f.rule === 'join-crowded');
    // Two studs of 38 and 100 clear: 176 mm.
    expect(crowded.map((f) => [f.value, f.limit])).toEqual([
      [1490, 785],
      [1520, 2215],
    ]);
    expect(crowded[0].message).toContain('10 mm from the next join');
    expect(crowded[0].message).toContain('176 mm is the least');
  });

  it('of no run, at no corner: said', () => {
    expect(rulesOf(unit([{ run: 4, x: 100 }]))).toContain('join-in-no-run');
    expect(rulesOf(unit([{ run: 1 }]))).toContain('join-at-no-corner');
  });

  it('at a corner: the mitred boards and blocks are fitted on site, the frames and skins in the workshop', () => {
    const made = design(
      jobOf({
        runs: [{ length: 1800, deflectionDeg: 90 }, { length: 1500 }],
        joins: { by: 'hand', at: [{ run: 1 }] },
      }),
    );
    expect(made.joins).toMatchObject([{ at: 'corner', behind: 'corner', sections: ['S1', 'S2'] }]);
    expect(new Set(partsOf(made, 'ST', 'B').map((p) => p.inSection))).toEqual(new Set(['S2']));
    const corner = made.parts.filter((p) => p.name.startsWith('corner'));
    expect(corner.length).toBeGreaterThanOrEqual(4);
    expect(corner.every((p) => p.fitted === 'site' || p.name === 'corner fillet')).toBe(true);
  });
});

describe('a flap', () => {
  it('parts two sections, and the next run begins beyond its gap', () => {
    const made = design(
      jobOf({
        runs: [{ length: 1500, flap: { width: 700, hinge: 'left', gate: true } }, { length: 1200 }],
      }),
    );
    expect(made.rod.flaps).toEqual([{ left: 'A', right: 'B', width: 700, hinge: 'left', gate: true }]);
    expect(runOf(made, 'B').origin).toEqual([2200, 0]);
    expect(made.joins).toMatchObject([{ at: 'flap', behind: 'gap', bolts: [], sections: ['S1', 'S2'] }]);
    expect(runOf(made, 'A').right).toMatchObject({ kind: 'free', flap: true, neighbour: 'B', topBeyond: 0 });
  });

  it('in a corner is refused with the angle, and the corner stays', () => {
    const flap = { width: 700, hinge: 'left' as const, gate: true };
    const made = design(jobOf({ runs: [{ length: 1500, deflectionDeg: 90, flap }, { length: 1200 }] }));
    expect(findingOf(made, 'flap-in-corner')).toMatchObject({ severity: 'stop', value: 90, limit: 0 });
    expect(made.rod.flaps).toEqual([]);
    const plain = design(jobOf({ runs: [{ length: 1500, deflectionDeg: 90 }, { length: 1200 }] }));
    expect(made.parts).toEqual(plain.parts);
  });

  it('after the last run leads nowhere', () => {
    const flap = { width: 700, hinge: 'left' as const, gate: true };
    expect(rulesOf(design(jobOf({ runs: [{ length: 1500, flap }] })))).toContain('flap-leads-nowhere');
  });
});

describe('tolerances gathered', () => {
  it('are taken off the frame at a wall, once', () => {
    const made = design(jobOf({ runs: [{ length: 2000 }], rightEnd: { kind: 'free' }, fit: { tolerance: 5 } }));
    expect(made.framing[0]).toMatchObject({ from: 5, to: 2000 });
    expect(partsOf(made, 'PL')[0].size.length).toBe(1995);
    expect(made.rod.runs[0].length).toBe(2000);
  });
});
