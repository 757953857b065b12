import { describe, expect, it } from 'vitest';
import { design, making } from '../../src/flow';
import { floorOf } from '../../src/making/floor';
import type { Survey } from '../../src/vocabulary/job';
import { jobOf, partsOf, runOf, type Said } from '../elements/job-of';

const level = (run: number, along: number, height: number) => ({ run, along, height });
const RUNS = [{ length: 2400, deflectionDeg: 90 }, { length: 1800 }];

describe('the floor between surveyed points', () => {
  const { rod } = design(jobOf({ runs: RUNS }));
  const [a, b] = rod.runs;

  it('is straight from one to the next and level beyond them', () => {
    const floor = floorOf([level(1, 2000, -8), level(1, 0, 0)], rod);
    // 500 of 2000: a quarter of −8.
    expect(floor?.at(a, 500)).toBeCloseTo(-2, 9);
    expect(floor?.at(a, 2300)).toBe(-8);
    expect(floor?.at(a, -50)).toBe(0);
    expect(floor?.datum).toBe(0);
    expect(floor?.lowest(a)).toEqual({ x: 2000, height: -8 });
    expect(floor?.lowest(a, 500, 1000)).toEqual({ x: 1000, height: -4 });
  });

  it('runs on round a corner, which is one point of both runs', () => {
    // From 2000 along A to 600 along B is 400 + 600: 10 in 1000. The corner is 400 on.
    const floor = floorOf([level(2, 600, -14), level(1, 2000, -4)], rod);
    expect(floor?.at(a, 2400)).toBeCloseTo(-8, 9);
    expect(floor?.at(b, 0)).toBeCloseTo(-8, 9);
    expect(floor?.at(b, 100)).toBeCloseTo(-9, 9);
    expect(floor?.at(b, 1800)).toBe(-14);
    expect(floor?.notes).toEqual([]);
    expect(floor?.lowest(a)).toEqual({ x: 2400, height: floor?.at(a, 2400) });
    expect(floor?.lowest(b)).toEqual({ x: 600, height: -14 });
    expect(floor?.lowest(b, 0, 500).x).toBe(500);
  });

  it('runs on below a flap, which lies between two runs', () => {
    const flapped = design(
      jobOf({ runs: [{ length: 2000, flap: { width: 600, hinge: 'left', gate: false } }, { length: 1800 }] }),
    ).rod;
    expect(flapped.flaps.map((f) => f.width)).toEqual([600]);
    const [left, right] = flapped.runs;
    // From 1600 along the left run 400 to its end, 600 of flap, 1000 along the right: 20 in 2000, 4 at the flap and 10 behind it.
    const floor = floorOf([level(1, 1600, 0), level(2, 1000, -20)], flapped);
    expect(floor?.at(left, 2000)).toBeCloseTo(-4, 9);
    expect(floor?.at(right, 0)).toBeCloseTo(-10, 9);
  });

  it('of a run without points goes on from its neighbours’, and a note says so', () => {
    // Run B starts at the corner, 2400 along A, where the floor was found 5 down; beyond it is level.
    const floor = floorOf([level(1, 0, 0), level(1, 2400, -5)], rod);
    expect(floor?.at(b, 0)).toBe(-5);
    expect(floor?.at(b, 1800)).toBe(-5);
    const note = 'No level was taken along run B: its floor is taken to go on from the nearest points along the unit.';
    expect(floor?.notes).toEqual([note]);
    expect(floorOf([level(1, 0, 0), level(2, 0, 0)], rod)?.notes).toEqual([]);
    // Between two that have points: from the end of A to the start of C, 1800 further on, from −5 to −14: 5 in 1000.
    const three = design(jobOf({ runs: [RUNS[0], { length: 1800, deflectionDeg: 90 }, { length: 1500 }] })).rod;
    const between = floorOf([level(1, 2400, -5), level(3, 0, -14)], three);
    expect(between?.at(three.runs[1], 1000)).toBeCloseTo(-10, 9);
    expect(between?.lowest(three.runs[1])).toEqual({ x: 1800, height: -14 });
    expect(between?.notes).toEqual([note]);
  });

  it('is not known where nothing was surveyed', () => {
    expect(floorOf([], rod)).toBeUndefined();
  });
});

describe('packers', () => {
  const fall = { levels: [level(1, 0, 0), level(1, 2400, -12)] };

  it('stand under every stud, as thick as the floor lies below its highest point', () => {
    const made = design(jobOf({ survey: fall }));
    const { packers } = making(made).site;
    const studs = made.framing[0].studs;
    // 12 mm in 2400: 5 in a thousand. The first stud, 19 along, would have 0.095: none.
    const wanted = studs.map((s) => ((s.from + s.to) / 2) * 0.005);
    expect(packers.map((p) => p.thickness).map((t) => Math.round(t * 1e6))).toEqual(
      wanted.filter((t) => t > 0.5).map((t) => Math.round(t * 1e6)),
    );
    expect(packers.every((p) => partsOf(made, 'ST').some((stud) => stud.mark === p.part))).toBe(true);
    expect(packers.at(-1)?.thickness).toBeCloseTo((2400 - 19) * 0.005, 6);
  });

  it('stand under rear posts too, by where they stand along the run', () => {
    const made = design(jobOf({ survey: fall, elements: { carcass: { build: true, toeDepth: 0, toeHeight: 0 } } }));
    const { packers } = making(made).site;
    const rear = made.parts.filter((p) => p.kind === 'carcass' && p.from === 'framed' && p.place.origin[2] < 0.5);
    const packed = new Set(packers.map((p) => p.part));
    const below = rear.filter((p) => Math.abs(p.place.along[2]) > 0.99 && p.place.origin[0] > 150);
    expect(below.length).toBeGreaterThan(0);
    expect(below.filter((p) => !packed.has(p.mark)).map((p) => p.mark)).toEqual([]);
    for (const p of packers) expect(p.thickness).toBeCloseTo(p.x * 0.005, 6);
  });

  it('are none under rails, which the posts at their ends carry', () => {
    const runs = [{ length: 1800, rhythm: { by: 'count', count: 3 } as const }];
    const made = design(
      jobOf({ runs, survey: fall, elements: { carcass: { build: true, toeDepth: 0, toeHeight: 0 } } }),
    );
    const lying = made.parts.filter((p) => p.code === 'CR' || p.code === 'RA').filter((p) => p.place.origin[2] < 0.5);
    // Four cross frames with a rail at their foot each, three rear rails of less than 600 between them.
    expect(lying.length).toBeGreaterThanOrEqual(7);
    for (const p of lying) expect(p.size.length).toBeLessThan(600);
    const names = making(made).site.packers.map((p) => made.parts.find(({ mark }) => mark === p.part)?.name);
    expect([...new Set(names)].sort()).toEqual(['rear post', 'stud']);
  });

  it('are under the middle of a rear rail that is longer than 600 between its posts', () => {
    const made = design(
      jobOf({ survey: fall, elements: { carcass: { build: true, toeDepth: 0, toeHeight: 0, lines: 'ends' } } }),
    );
    // Between the posts 2400 − 2 · 38 = 2324: four spaces of 581, three packers.
    const [rail] = partsOf(made, 'RA').filter((p) => p.place.origin[2] < 0.5);
    expect(rail.size.length).toBeCloseTo(2324, 9);
    const under = making(made).site.packers.filter((p) => p.part === rail.mark);
    expect(under.map((p) => p.x)).toEqual([38 + 581, 38 + 2 * 581, 38 + 3 * 581].map((x) => expect.closeTo(x, 6)));
  });

  it('stand under the feet, and under a kick board where a stud stands on the plate above it', () => {
    const feet = design(jobOf({ survey: fall, elements: { carcass: { build: true, toeDepth: 60, toeHeight: 100 } } }));
    const packed = new Set(making(feet).site.packers.map((p) => p.part));
    const [first, ...others] = partsOf(feet, 'FP');
    expect(others.length).toBeGreaterThan(0);
    expect(packed.has(first.mark)).toBe(false);
    expect(others.filter((p) => !packed.has(p.mark))).toEqual([]);
    const kicked = design(jobOf({ survey: fall, elements: { plinth: { style: 'kicked', recess: 30, height: 100 } } }));
    const { packers } = making(kicked).site;
    const studs = kicked.framing[0].studs.map((s) => (s.from + s.to) / 2);
    expect(packers.map((p) => p.x)).toEqual(studs.slice(1).map((x) => expect.closeTo(x, 6)));
  });

  it('are none on a level floor, and none without a survey', () => {
    expect(making(design(jobOf({ survey: { levels: [level(1, 0, 3), level(1, 2400, 3)] } }))).site.packers).toEqual([]);
    expect(making(design(jobOf({}))).site).toMatchObject({ packers: [], notes: [] });
  });
});

const walls = (said: Partial<Survey['walls'][number]>): Partial<Survey> => ({
  walls: [
    { name: 'Left wall', directionDeg: 90, leanDeg: 0, ...said },
    { name: 'Right wall', directionDeg: 90, leanDeg: 0, ...said },
  ],
});
const between = {
  leftEnd: { kind: 'wall', wall: 'Left wall' },
  rightEnd: { kind: 'wall', wall: 'Right wall' },
  height: 1100,
  depth: 400,
  fit: { scribe: 15 },
} as const;

describe('scribes at walls', () => {
  it('take what the wall leans over the height and is out of square over the depth', () => {
    // The front to the underside of the top, 1100 − 40: tan 1° · 1060 = 18.502; the top at 1100: 19.201; tan 2° · 400 = 13.968.
    // Turned counter-clockwise, the wall at the right gapes in front, at the left behind.
    const { scribes } = making(design(jobOf({ ...between, survey: walls({ directionDeg: 92, leanDeg: 1 }) }))).site;
    const [front, top] = [1060, 1100].map((height) => height * Math.tan(Math.PI / 180));
    const askew = 400 * Math.tan(Math.PI / 90);
    const rows = scribes.map((s) => [s.where.split(' end of run')[0], s.length, s.left]);
    expect(rows).toEqual([
      ['front, left', 1060, 15],
      ['end of the top, left', 400, 15],
      ['front, right', 1060, 15],
      ['end of the top, right', 400, 15],
    ]);
    const most = scribes.map((s) => s.most);
    for (const [i, value] of [front, askew + top, front + askew, askew + top].entries())
      expect(most[i]).toBeCloseTo(value, 9);
  });

  it('open to the floor where the wall leans in: the top meets it', () => {
    const { scribes } = making(design(jobOf({ ...between, survey: walls({ leanDeg: -1 }) }))).site;
    expect(scribes.map((s) => Math.round(s.most * 100) / 100)).toEqual([18.5, 0, 18.5, 0]);
  });

  it('are told without a figure where the wall was not surveyed, and not at all at a free end', () => {
    const { scribes } = making(design(jobOf({ rightEnd: { kind: 'free' }, fit: { scribe: 15 } }))).site;
    expect(scribes.map((s) => [s.where, s.most])).toEqual([
      ['front, left end of run A, wall not surveyed', 0],
      ['end of the top, left end of run A, wall not surveyed', 0],
    ]);
  });
});

describe('scribes at the floor', () => {
  it('take the floor’s fall in each run from what comes down to it', () => {
    const made = design(
      jobOf({ runs: RUNS, survey: { levels: [level(1, 0, 0), level(1, 2400, -6), level(2, 1800, -9)] } }),
    );
    const floor = making(made).site.scribes.filter((s) => s.where.startsWith('floor'));
    expect(floor.map((s) => [s.run, s.most])).toEqual([
      ['A', 6],
      ['B', 9],
    ]);
    expect(floor[0].where).toMatch(/plinth block.*skirting/);
    expect(floor[0].length).toBe(runOf(made).length);
  });
});

describe('notches over skirting that stays', () => {
  const skirting = walls({ skirtingHeight: 120, skirtingThickness: 18 });

  it('are cut into what comes nearer to the wall than the skirting is thick, below its height', () => {
    const made = design(jobOf({ ...between, survey: skirting }));
    const [left, right] = making(made).site.notches;
    expect(left).toMatchObject({ run: 'A', where: 'left end of run A, Left wall', height: 120, thickness: 18 });
    const names = (marks: readonly string[]) => [
      ...new Set(marks.map((m) => made.parts.find((p) => p.mark === m)?.name)),
    ];
    // The bottom plate, the end stud (from 38 up), the skin, the pillar's block at the end; not the top, not the pillar board above it.
    for (const notch of [left, right]) {
      expect(names(notch.parts)).toEqual(expect.arrayContaining(['plate', 'stud', 'cladding', 'plinth block']));
      expect(names(notch.parts)).not.toContain('top');
      expect(names(notch.parts)).not.toContain('pillar board');
    }
    const [plates, studs] = [partsOf(made, 'PL'), partsOf(made, 'ST')];
    expect(left.parts).toContain(plates[0].mark);
    expect(left.parts).not.toContain(plates[1].mark);
    expect(left.parts).toContain(studs[0].mark);
    expect(right.parts).toContain(studs.at(-1)?.mark);
    expect(right.parts).not.toContain(studs[0].mark);
  });

  it('are none where there is no skirting, or the frame stands clear of it', () => {
    expect(making(design(jobOf({ ...between, survey: walls({}) }))).site.notches).toEqual([]);
    const clear = design(jobOf({ ...between, survey: skirting, fit: { tolerance: 20 } }));
    const studs = new Set(partsOf(clear, 'ST').map((p) => p.mark));
    for (const { parts } of making(clear).site.notches) expect(parts.filter((mark) => studs.has(mark))).toEqual([]);
  });
});

describe('the end of a worktop at a wall', () => {
  const madeWith = (directionDeg: number, more: Said = {}) =>
    making(
      design(
        jobOf({
          runs: [{ length: 3000 }],
          depth: 640,
          leftEnd: { kind: 'wall', wall: 'west' },
          rightEnd: { kind: 'free' },
          survey: { walls: [{ name: 'west', directionDeg, leanDeg: 0 }] },
          elements: { carcass: { build: true }, worktop: { height: 850, depth: 300 }, top: { overhang: 75 } },
          ...more,
        }),
      ),
    ).site.scribes.filter(({ where }) => where.includes('worktop'));
  const TAN = Math.tan((2 * Math.PI) / 180);

  it('is scribed by what the wall takes where it lies, from 75 + 63 to 438 back from the front of the top', () => {
    // The wall opens to the back: it is touched in front.
    expect(madeWith(92)).toMatchObject([{ length: 300, most: expect.closeTo(438 * TAN, 9) }]);
    // It opens to the front: touched 640 back, where the top ends.
    expect(madeWith(88)).toMatchObject([{ length: 300, most: expect.closeTo((640 - 138) * TAN, 9) }]);
  });

  it('is not there where a join leaves no room for two cross frames beside the wall', () => {
    const rhythm = { by: 'marks' as const, marks: [215] };
    const joined: Said = { runs: [{ length: 3000, rhythm }], joins: { by: 'hand', at: [{ run: 1, x: 215 }] } };
    expect(madeWith(92, joined)).toEqual([]);
  });
});
