import { describe, expect, it } from 'vitest';
import { design } from '../../src/flow';
import { mirrorJob } from '../../src/job/mirror';
import { layCarcass } from '../../src/setting-out/carcass';
import type { Design } from '../../src/vocabulary/design';
import type { BayWish, Job, JoinMark } from '../../src/vocabulary/job';
import type { Demands } from '../../src/vocabulary/rod';
import { wishOf } from '../elements/behind-job';
import { findingOf, jobOf, rulesOf, runOf, type Said } from '../elements/job-of';

/*
 * A new job: 1100 high under a 40 top, 400 deep, the top 75 over the frame's face, timber 38 × 63 on edge in front and behind, set back 40.
 * So the carcass lies from d = −63 to 75 − 400 + 40 = −285, and its frames stand 3 clear of a wall.
 */

const job = (said: Said, joins: readonly JoinMark[] = [], bays: readonly BayWish[] = []): Job =>
  jobOf({
    ...said,
    elements: { ...said.elements, carcass: { build: true, ...said.elements?.carcass } },
    fit: { tolerance: 3 },
    joins: { by: 'hand', at: joins },
    bays,
  });

const wish = (bay: number, purpose: BayWish['purpose']) => wishOf({ bay, purpose });

const linesOf = (made: Design, run = 'A'): readonly (readonly [number, number, string])[] =>
  runOf(made, run).crossLines.map((l) => [round(l.from), round(l.to), l.why] as const);
const spacesOf = (made: Design, run = 'A'): readonly (readonly [number, number])[] =>
  runOf(made, run).backBays.map((b) => [round(b.from), round(b.to)] as const);
const round = (x: number): number => Math.round(x * 1000) / 1000;

describe('the planes of the carcass', () => {
  it('lie between the front frame and the set-back of the top', () => {
    expect(design(job({})).rod.carcass).toEqual({
      stock: 'sawn-38x63',
      face: 38,
      depth: 63,
      front: -63,
      back: -285,
      low: 0,
      high: 1060,
      toeDepth: 0,
      rearRail: true,
    });
  });

  it('there is none where none is wished', () => {
    const made = design(job({ elements: { carcass: { build: false } } }));
    expect(made.rod.carcass).toBeUndefined();
    expect(runOf(made).crossLines).toEqual([]);
  });

  it('too shallow: 63 + 100 are the least; a top 253 deep leaves 253 − 75 − 40 − 63 = 75', () => {
    const made = design(job({ depth: 253 }));
    expect(made.rod.carcass).toBeUndefined();
    expect(findingOf(made, 'carcass-too-shallow')).toMatchObject({ severity: 'note', value: 75, limit: 163 });
    // 341 − 75 − 40 − 63 = 163: it just goes.
    expect(design(job({ depth: 341 })).rod.carcass).toBeDefined();
    expect(design(job({ depth: 340.9 })).rod.carcass).toBeUndefined();
    // With feet set in by 120: 63 + 120 + 50.
    const feet = { carcass: { toeHeight: 100, toeDepth: 120 } };
    expect(findingOf(design(job({ elements: feet })), 'carcass-too-shallow')).toMatchObject({ value: 222, limit: 233 });
  });

  it('too low: two rails of 63 and 100 between; a unit 265 high leaves 225 under its top', () => {
    expect(findingOf(design(job({ height: 265 })), 'carcass-too-low')).toMatchObject({ value: 225, limit: 226 });
  });

  it('where the front frame stands on a plinth, the bottom rails lie where it begins, and that is said', () => {
    const made = design(job({}));
    const demands: Demands[] = [
      {
        carcass: {
          stock: 'sawn-38x63',
          face: 38,
          depth: 63,
          setBack: 40,
          lines: 'bays',
          toeHeight: 100,
          toeDepth: 60,
          rearRail: true,
        },
      },
    ];
    const before = { timber: made.rod.timber, frameLow: 120, frameHeight: 1060, overhang: 75, depth: 400 };
    const laid = layCarcass(made.rod.runs, demands, before);
    expect(laid.carcass).toMatchObject({ low: 120, toeDepth: 60 });
    expect(laid.findings).toEqual([
      expect.objectContaining({ rule: 'carcass-rails-raised', severity: 'note', value: 100, limit: 120 }),
    ]);
    expect(laid.runs[0].backBays[0].low).toBe(120 + 63);
    expect(layCarcass(made.rod.runs, demands, { ...before, frameLow: 100 }).findings).toEqual([]);
  });
});

describe('cross frames', () => {
  it('two at each join, face to face, and one at each end', () => {
    // Three bays of (3000 − 4 · 140) / 3: pillars cover 953.3–1093.3 and 1906.7–2046.7. Their own lines would be too near.
    const made = design(
      job({ runs: [{ length: 3000, rhythm: { by: 'count', count: 3 } }] }, [
        { run: 1, x: 1000 },
        { run: 1, x: 2000 },
      ]),
    );
    expect(linesOf(made)).toEqual([
      [3, 41, 'end'],
      [962, 1000, 'join'],
      [1000, 1038, 'join'],
      [1962, 2000, 'join'],
      [2000, 2038, 'join'],
      [2959, 2997, 'end'],
    ]);
    expect(spacesOf(made)).toEqual([
      [41, 962],
      [1038, 1962],
      [2038, 2959],
    ]);
    expect(runOf(made).backBays.map((b) => b.bay)).toEqual([0, 1, 2]);
  });

  it('one behind every pillar between: four bays of 575 between pillars of 140, so pillars on 785, 1500 and 2215', () => {
    const run = { length: 3000, rhythm: { by: 'count', count: 4 } as const };
    const made = design(job({ runs: [run] }));
    expect(linesOf(made)).toEqual([
      [3, 41, 'end'],
      [766, 804, 'bay'],
      [1481, 1519, 'bay'],
      [2196, 2234, 'bay'],
      [2959, 2997, 'end'],
    ]);
    expect(runOf(made).backBays).toMatchObject([
      { index: 0, bay: 0, low: 63, high: 997 },
      { index: 1, bay: 1 },
      { index: 2, bay: 2 },
      { index: 3, bay: 3 },
    ]);
    const ends = design(job({ runs: [run], elements: { carcass: { lines: 'ends' } } }));
    expect(linesOf(ends)).toEqual([
      [3, 41, 'end'],
      [2959, 2997, 'end'],
    ]);
  });

  it('stop at an outside corner where the neighbour’s begin: 285 short of it at 90°, 285 · tan 22.5° = 118.051 at 45°', () => {
    const made = design(
      job({ runs: [{ length: 3000, deflectionDeg: 90 }, { length: 2500, deflectionDeg: 45 }, { length: 2000 }] }),
    );
    expect(linesOf(made, 'A').at(-1)).toEqual([2677, 2715, 'end']);
    expect(linesOf(made, 'B')[0]).toEqual([285, 323, 'end']);
    expect(linesOf(made, 'B').at(-1)).toEqual([2343.949, 2381.949, 'end']);
    expect(linesOf(made, 'C')[0]).toEqual([118.051, 156.051, 'end']);
  });

  it('go to the frame’s own end at an inside corner: the through one runs 63 beyond the corner', () => {
    const made = design(job({ runs: [{ length: 3000, deflectionDeg: -90 }, { length: 2500 }] }));
    expect(linesOf(made, 'A').at(-1)).toEqual([3025, 3063, 'end']);
    expect(linesOf(made, 'B')[0]).toEqual([0, 38, 'end']);
  });

  it('stop at the back of a return, which gets none', () => {
    const made = design(
      job({ runs: [{ length: 2400 }], rightEnd: { kind: 'return', length: 300 }, leftEnd: { kind: 'free' } }),
    );
    expect(linesOf(made)[0]).toEqual([0, 38, 'end']);
    expect(linesOf(made).at(-1)).toEqual([2299, 2337, 'end']);
    expect(runOf(made, 'RR').crossLines).toEqual([]);
  });

  it('none where two leave no room: 700 less 285 at each corner is 130, and 2 · 38 + 150 are needed', () => {
    const made = design(job({ runs: [{ deflectionDeg: 90 }, { length: 700, deflectionDeg: 90 }, {}] }));
    expect(runOf(made, 'B').crossLines).toEqual([]);
    expect(findingOf(made, 'carcass-too-short')).toMatchObject({ subject: { run: 'B' }, value: 130, limit: 226 });
    expect(runOf(made, 'A').crossLines.length).toBeGreaterThan(1);
  });

  it('a mirrored unit has them mirrored', () => {
    const said: Said = {
      runs: [
        { length: 3400, deflectionDeg: 63, rhythm: { by: 'marks', marks: [700, 880, 1060, 2000] } },
        { length: 2600, deflectionDeg: -91, through: 'next' },
        { length: 2000 },
      ],
      leftEnd: { kind: 'return', length: 300 },
    };
    const one = design(job(said, [{ run: 2, x: 1300 }]));
    const length = (i: number): number => one.rod.runs.find((r) => r.jobIndex === i)?.length ?? 0;
    const bays = (i: number): number => one.rod.runs.find((r) => r.jobIndex === i)?.bays.length ?? 0;
    const other = design(mirrorJob(one.job, length, bays));
    for (const [a, b] of [
      ['A', 'C'],
      ['B', 'B'],
      ['C', 'A'],
    ]) {
      const { length: long } = runOf(one, a);
      expect(linesOf(one, a).length).toBeGreaterThan(1);
      expect(linesOf(other, b).map(([from, to, why]) => [round(long - to), round(long - from), why]).reverse()).toEqual(linesOf(one, a)); // biome-ignore format: one line
    }
  });
});

describe('the spaces between', () => {
  const run = { length: 3000, rhythm: { by: 'count', count: 4 } as const };

  it('carry what the job says of the bay before them; nothing runs along the floor where something is set in', () => {
    const made = design(job({ runs: [run] }, [], [wish(1, 'doors'), wish(2, 'appliance'), wish(3, 'open')]));
    expect(runOf(made).backBays.map((b) => [b.wish?.purpose, b.low])).toEqual([
      ['doors', 63],
      ['appliance', 0],
      ['open', 0],
      [undefined, 63],
    ]);
    expect(rulesOf(made)).not.toContain('bay-without-space');
  });

  it('where one lies behind two bays that are both to hold something, the second is said to have none', () => {
    const made = design(
      job({ runs: [run], elements: { carcass: { lines: 'ends' } } }, [], [wish(2, 'doors'), wish(3, 'bin')]),
    );
    expect(runOf(made).backBays.map((b) => b.bay)).toEqual([1]);
    expect(findingOf(made, 'bay-without-space')).toMatchObject({
      ...{ severity: 'warn', value: 3, limit: 1 },
      subject: { path: '/unit/bays/1' },
    });
  });

  it('so is a bay without a carcass', () => {
    const made = design(job({ runs: [run], elements: { carcass: { build: false } } }, [], [wish(2, 'doors')]));
    expect(findingOf(made, 'bay-without-space')).toMatchObject({ value: 2, limit: 0 });
  });
});
