import { describe, expect, test } from 'vitest';
import { nearest, placesFor, reachOf } from '../../../src/elements/top/joints';
import { design } from '../../../src/flow';
import { mirrorJob } from '../../../src/job/mirror';
import type { Job, JoinMark, Opening } from '../../../src/vocabulary/job';
import { openingOf } from '../behind-job';
import { findingOf, jobOf, partsOf, rulesOf, runOf, type Said } from '../job-of';

const job = (said: Said, unit: Partial<Job['unit']> = {}): Job => {
  const made = jobOf({ depth: 400, ...said });
  return { ...made, unit: { ...made.unit, ...unit } };
};
const hole = (x: number, said: Partial<Opening> = {}) =>
  openingOf({ name: 'tap', through: 'top', use: 'pipe', x, z: 200, width: 60, height: 60, ...said });
const free = { leftEnd: { kind: 'free' }, rightEnd: { kind: 'free' } } as const;
const at = (made: ReturnType<typeof design>, run = 'A'): readonly number[] =>
  (made.marks[run] ?? []).filter((m) => m.reason === 'top joint').map((m) => Number(m.x.toFixed(6)));

describe('places for joints', () => {
  test('lie clear of the slant of the ends, of joins and of openings', () => {
    const reach = reachOf([
      [-75, 0],
      [5000, 0],
      [5000, 400],
      [325, 400],
    ]);
    expect(reach).toEqual({ from: -75, to: 5000, innerFrom: 325, innerTo: 5000 });
    const blocks = [
      { from: 2000, to: 2000, what: 'join J1' },
      { from: 2300, to: 2400, what: 'the opening “tap”' },
    ];
    // 325 + 200; 2000 ∓ 200; 2300 − 200 lies before 2000 + 200, so nothing between them; 2400 + 200; 5000 − 200.
    expect(placesFor(reach, blocks, 200)).toEqual([
      { from: 525, to: 1800 },
      { from: 2600, to: 4800 },
    ]);
    expect(nearest([2050, 4900], reach, blocks)).toEqual({ x: 2050, what: 'join J1', gap: 50 });
  });
});

describe('the top in lengths', () => {
  test('one while it is no longer than can be carried, stuff for the wall included', () => {
    const between = (length: number): Job =>
      job({ runs: [{ length }], rightEnd: { kind: 'free' }, fit: { scribe: 15 } });
    // Between a wall and a free end: 2955 + 30 = 2985, and 15 to scribe: 3000.
    expect(partsOf(design(between(2955)), 'TP').length).toBe(1);
    const made = design(between(2956));
    const lengths = partsOf(made, 'TP');
    expect(lengths.map((p) => p.size.length)).toEqual([1493, 1493]);
    expect(lengths.map((p) => p.where)).toEqual(['length 1 of 2', 'length 2 of 2']);
    expect(at(made)).toEqual([1493]);
    expect(lengths[0].oversize).toMatchObject([{ side: 'left end', amount: 15, on: 'length' }]);
    expect(lengths[1].oversize).toEqual([]);
  });

  test('no longer than the stock', () => {
    // Walnut comes to 2700: 5460 over free ends (5400 + 2·30) takes three.
    const made = design(job({ runs: [{ length: 5400 }], ...free, elements: { top: { hardwood: 'walnut-40' } } }));
    expect(partsOf(made, 'TP').map((p) => p.size.length)).toEqual([1820, 1820, 1820]);
  });

  test('jointed clear of the joins below', () => {
    const joined = (x: number): Job =>
      job(
        { runs: [{ length: 5000, rhythm: { by: 'marks', marks: [x] } }], ...free },
        {
          joins: { by: 'hand', at: [{ run: 1, x }] satisfies JoinMark[] },
        },
      );
    // From −30 to 5030, even at 2500. A join at 2600 leaves up to 2400 or from 2800: 2400 makes the longest 2630, 2800 makes it 2830.
    expect(at(design(joined(2600)))).toEqual([2400]);
    expect(at(design(joined(2350)))).toEqual([2550]);
    expect(at(design(joined(2000)))).toEqual([2500]);
  });

  test('jointed clear of openings through it, and not of those through the front', () => {
    const made = (z: Partial<Opening>) =>
      design(job({ runs: [{ length: 5000 }], ...free }, { openings: [hole(2450, z)] }));
    // The hole is from 2420 to 2480: clear of it up to 2220 or from 2680. 2680 − (−30) = 2710; 5030 − 2220 = 2810.
    expect(at(made({}))).toEqual([2680]);
    const [left, right] = partsOf(made({}), 'TP');
    expect(left.shape.kind === 'board' && left.shape.holes.length).toBe(1);
    expect(right.shape.kind === 'board' && right.shape.holes.length).toBe(0);
    expect(left.work?.[left.work.length - 1]).toBe(
      'hole 60 across for “tap”, its middle 2480 from the left end and 200 back from the front edge',
    );
    expect(at(made({ through: 'front', use: 'socket' }))).toEqual([2500]);
  });

  test('the hole is in the weight', () => {
    const [plain, cut] = [[], [hole(1200)]].map((openings) => partsOf(design(job({ ...free }, { openings })), 'TP')[0]);
    // π·30²·40 mm³ of oak at 710 kg/m³, to what an arc drawn straight is out (less than 1 in 500).
    expect((plain.weightKg - cut.weightKg) / (Math.PI * 900 * 40 * 710e-9)).toBeCloseTo(1, 2);
  });

  test('a joint that can be clear of nothing is said with its nearest, and made as clear as can be', () => {
    // 3100 in lengths up to 1600 (and over free ends of 30, 3160): one joint from 1530 to 1570, but an opening lies from 1450 to 1650.
    const made = design(
      job(
        { runs: [{ length: 3100 }], ...free, elements: { top: { longest: 1600 } } },
        {
          openings: [hole(1550, { use: 'socket', width: 200 })],
        },
      ),
    );
    // Two joints clear of it by 200 would be at 1250 and 1850: lengths of 1280, 600, 1280. So three lengths do it.
    expect(rulesOf(made)).not.toContain('top-joint-near');
    expect(partsOf(made, 'TP').length).toBe(3);
    const tight = design(
      job(
        { runs: [{ length: 3100 }], ...free, elements: { top: { longest: 1600, jointClear: 700 } } },
        {
          openings: [hole(1550, { use: 'socket', width: 200 })],
        },
      ),
    );
    // Clear by c: from −30 + c to 1450 − c and from 1650 + c to 3130 − c. c = 740 is the most the left stretch has; the joints stand
    // 1600 apart at most: 1650 + c − (1450 − c) ≤ 1600, c ≤ 700, so 700 just goes.
    expect(rulesOf(tight)).not.toContain('top-joint-near');
    const tighter = design(
      job(
        { runs: [{ length: 3100 }], ...free, elements: { top: { longest: 1600, jointClear: 720 } } },
        {
          openings: [hole(1550, { use: 'socket', width: 200 })],
        },
      ),
    );
    const said = findingOf(tighter, 'top-joint-near');
    expect(said).toMatchObject({ severity: 'warn', limit: 720, subject: { run: 'A' } });
    expect(said.value).toBeCloseTo(700, 3);
    expect(partsOf(tighter, 'TP').length).toBe(3);
  });

  test('where a joint must lie in an opening the top is made all the same, divided evenly, and no hole is cut across it', () => {
    const made = design(
      job(
        { runs: [{ length: 3000 }], ...free, elements: { top: { longest: 1000 } } },
        {
          openings: [hole(1500, { use: 'socket', width: 1400 })],
        },
      ),
    );
    expect(findingOf(made, 'top-joint-near')).toMatchObject({ severity: 'stop', value: 0, limit: 200 });
    // 3060 in four.
    expect(partsOf(made, 'TP').map((p) => p.size.length)).toEqual([765, 765, 765, 765]);
    expect(rulesOf(made)).toContain('top-opening-near-edge');
  });

  test('its fittings are counted on the length to the left of each joint, and said on both', () => {
    const made = design(job({ runs: [{ length: 5000 }], ...free, elements: { top: { joint: 'dowels' } } }));
    const [left, right] = partsOf(made, 'TP');
    // 400 deep: 3 dowels, 2 bolts.
    expect(left.hardware).toEqual([
      { what: 'dowel', count: 3 },
      { what: 'draw bolt', count: 2 },
    ]);
    expect(right.hardware).toEqual([]);
    expect([left.work?.length, right.work?.length]).toEqual([1, 1]);
    expect(right.work?.[0]).toMatch(/^left end: holes for dowels .* at 50, 200, 350 /);
  });

  test('a mitre between runs is such a joint: as long as the mitre is', () => {
    const made = design(job({ runs: [{ deflectionDeg: 90 }, {}], fit: { scribe: 15 } }));
    const [a, b] = [partsOf(made, 'TP', 'A')[0], partsOf(made, 'TP', 'B')[0]];
    expect([a.meets, b.meets]).toEqual(['right', 'left']);
    // 400·√2 = 565.7; less 100, ⌈465.7/150⌉ = 4 gaps: 5 tenons. Gaps of 116.4, bolts two of them apart: 3.
    expect(a.hardware).toEqual([
      { what: 'loose tenon', count: 5 },
      { what: 'draw bolt', count: 3 },
    ]);
    expect(b.hardware).toEqual([]);
    expect(b.oversize).toMatchObject([{ side: 'right end' }]);
  });

  test('at a butted corner the length that goes through is worked in its edge', () => {
    const made = design(job({ runs: [{ deflectionDeg: 90 }, {}], elements: { top: { corner: 'butted' } } }));
    expect(partsOf(made, 'TP', 'A')[0].work?.[0]).toMatch(/^back edge by the right end: /);
    expect(partsOf(made, 'TP', 'B')[0].work?.[0]).toMatch(/^left end: .* at 50, 200, 350 /);
    expect(partsOf(made, 'TP', 'A')[0].hardware?.[0]).toEqual({ what: 'loose tenon', count: 3 });
  });

  test('no meeting at a return', () => {
    const made = design(job({ rightEnd: { kind: 'return', length: 250 } }));
    expect(partsOf(made, 'TP', 'A')[0]).toMatchObject({ hardware: [], work: [] });
    expect(partsOf(made, 'TP', 'A')[0].meets).toBeUndefined();
  });

  test('is fitted on site, or in the workshop where that is decided and no join is crossed', () => {
    const fitted = (way: string) =>
      partsOf(design(job({ runs: [{ length: 5000 }], ...free, elements: { top: { fitted: way } } })), 'TP').map(
        (p) => p.fitted,
      );
    expect(fitted('site')).toEqual(['site', 'site']);
    expect(fitted('workshop')).toEqual(['workshop', 'workshop']);
  });

  test('is screwed from below, in slots', () => {
    const [hold, behind] = partsOf(design(job({ elements: { carcass: { build: true } } })), 'TP')[0].holds ?? [];
    expect(hold).toMatchObject({ by: 'screw', through: 38, where: { at: 'length', centres: 300 } });
    expect(hold.rule).toContain('slots');
    expect(behind).toMatchObject({ by: 'screw', through: 63 });
  });

  test('in a mirror is divided in the mirror', () => {
    const start = job(
      { runs: [{ length: 7000 }, { length: 3000 }].map((r, i) => ({ ...r, deflectionDeg: i === 0 ? 45 : 0 })) },
      { openings: [hole(2400), hole(4700)] },
    );
    const made = design(start);
    const turned = design(mirrorJob(start));
    const long = runOf(made).length;
    const joints = at(made);
    expect(joints.length).toBeGreaterThan(1);
    expect(at(turned, 'B')).toEqual(joints.map((x) => Number((long - x).toFixed(6))).reverse());
  });
});

describe('a moulded front edge', () => {
  const moulded = (said: Said, edge = 'ovolo-9') =>
    design(job({ ...said, elements: { top: { edge, corner: 'butted' } } }));
  test('goes along the front and round free ends, not to walls', () => {
    const top = partsOf(moulded({ rightEnd: { kind: 'free' } }), 'TP')[0];
    expect(top.edges.map((e) => e.edge)).toEqual(['front edge', 'right end']);
    // The finished size stays: the cutter takes its arris only.
    expect(top.size).toEqual({ length: 2430, width: 400, thickness: 40 });
    // The least of stuff goes: a quarter round of 9 leaves 81·(1 − π/4) mm² along 2430 + 400, less at the corner.
    const lost = 2430 * 400 * 40 - top.volumeMm3;
    expect(lost / (81 * (1 - Math.PI / 4) * 2830)).toBeCloseTo(1, 1);
  });
  test('stops nowhere against a butted length: inside corners are mitred, and it is said', () => {
    const made = moulded({ runs: [{ deflectionDeg: -90 }, {}] });
    expect(rulesOf(made)).toContain('top-edge-mitred');
    expect(partsOf(made, 'TP', 'A')[0].ends[1].kind).toBe('mitre');
    expect(rulesOf(moulded({ runs: [{ deflectionDeg: 90 }, {}] }))).not.toContain('top-edge-mitred');
  });
  test('with a cutter that undercuts is refused, and the edge stays square', () => {
    const made = moulded({}, 'torus-12');
    expect(findingOf(made, 'top-edge-unfit')).toMatchObject({ severity: 'stop', limit: 40 });
    expect(partsOf(made, 'TP')[0].edges).toEqual([]);
  });
});
