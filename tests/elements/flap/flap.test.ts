import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { mirrorJob } from '../../../src/job/mirror';
import type { Design } from '../../../src/vocabulary/design';
import type { Flap } from '../../../src/vocabulary/job';
import type { Part } from '../../../src/vocabulary/part';
import { cornersIn } from '../../properties/measure';
import { openingOf } from '../behind-job';
import { findingOf, jobOf, partOf, partsOf, rulesOf, runOf, type Said } from '../job-of';

// Two runs in one line with a gap of 800 between: A from 0 to 2000, B from 2800. Frame 63 deep, cladding 12, blocks 25 thick and 150
// high; an oak top of 40 at 1100, so the frame is 1060 high.
const hung = (flap: Partial<Flap> = {}, said: Said = {}): Design =>
  design(
    jobOf({
      runs: [{ length: 2000, flap: { width: 800, hinge: 'left', gate: true, ...flap } }, { length: 1500 }],
      height: 1100,
      depth: 400,
      ...said,
    }),
  );
/** The box of a part in run A's coordinates. */
const boxOf = (made: Design, part: Part): Record<'x' | 'd' | 'z', readonly [number, number]> => {
  const corners = cornersIn(runOf(made), part);
  const span = (pick: (p: (typeof corners)[number]) => number): readonly [number, number] => {
    const all = corners.map((c) => Number(pick(c).toFixed(6)));
    return [Math.min(...all), Math.max(...all)];
  };
  return { x: span((p) => p.x), d: span((p) => p.d), z: span((p) => p.z) };
};

describe('a flap', () => {
  test('fills the gap but for its clearances, in line with the top, and is hinged to the run at its hinges', () => {
    const made = hung();
    const flap = partOf(made, 'LF');
    // 800 − 2·2.5 = 795; as deep as the top, from 75 in front to 325 behind.
    expect(flap.size).toEqual({ length: 795, width: 400, thickness: 40 });
    expect(boxOf(made, flap)).toEqual({ x: [2002.5, 2797.5], d: [-325, 75], z: [1060, 1100] });
    expect(flap).toMatchObject({ material: 'oak-40', finish: 'oil', fitted: 'site', where: 'hinged at the left' });
    expect(flap.weightKg).toBeCloseTo(0.795 * 0.4 * 0.04 * 710, 9);
    expect(partOf(hung({ hinge: 'right' }), 'LF', 'B').where).toBe('hinged at the right');
  });

  test('lies on bearers level with the frame, on jambs that line the frames from the plinth blocks up', () => {
    const made = hung();
    expect(boxOf(made, partOf(made, 'JB', 'A'))).toEqual({ x: [2000, 2025], d: [-63, 12], z: [150, 1060] });
    expect(boxOf(made, partOf(made, 'JB', 'B'))).toEqual({ x: [2775, 2800], d: [-63, 12], z: [150, 1060] });
    expect(boxOf(made, partOf(made, 'LB', 'A'))).toEqual({ x: [2025, 2050], d: [-63, 12], z: [1020, 1060] });
    expect(boxOf(made, partOf(made, 'LB', 'B'))).toEqual({ x: [2750, 2775], d: [-63, 12], z: [1020, 1060] });
    expect(made.parts.filter((p) => p.kind === 'flap').every((p) => p.fitted === 'site' && p.holds?.length)).toBe(true);
  });

  test('has bearers as far back as cross frames carry the top', () => {
    const made = hung({}, { elements: { carcass: { build: true, setBack: 40 } } });
    // 400 − 75 − 40 = 285 behind the frame's face.
    expect(boxOf(made, partOf(made, 'JB', 'A')).d).toEqual([-285, 12]);
    expect(boxOf(made, partOf(made, 'LB', 'B')).d).toEqual([-285, 12]);
    expect(rulesOf(made)).not.toContain('flap-tips');
  });

  test('whose middle lies behind its bearers is said to tip', () => {
    // Its middle is at 75 − 400/2 = −125, the bearers reach to −63.
    expect(findingOf(hung(), 'flap-tips')).toMatchObject({ severity: 'warn', value: 62 });
  });

  test('has two hinges, a stay and a catch; three when it is deep', () => {
    expect(partOf(hung(), 'LF').hardware).toEqual([
      { what: 'counter flap hinge', count: 2 },
      { what: 'stay that holds the flap open', count: 1 },
      { what: 'catch', count: 1 },
    ]);
    const deep = partOf(hung({}, { depth: 501 }), 'LF');
    expect(deep.hardware?.[0].count).toBe(3);
    expect(deep.holds?.[0]).toMatchObject({ where: { at: 'all', each: 18 } });
    expect(partOf(hung({}, { depth: 500 }), 'LF').hardware?.[0].count).toBe(2);
  });

  test('has the moulded edge of the top', () => {
    const made = hung({}, { elements: { top: { edge: 'ovolo-9' } } });
    expect(partOf(made, 'LF').edges).toEqual([{ edge: 'front edge', work: 'moulded', cutter: 'Ovolo 9' }]);
    // The tops beside it are square where it lies against them.
    expect(partOf(made, 'TP', 'A').edges.map((e) => e.edge)).toEqual(['front edge']);
    expect(partOf(hung({}, { elements: { top: { edge: 'torus-12' } } }), 'LF').edges).toEqual([]);
  });

  test('lifted, stands as high as it is long, with a caution', () => {
    expect(findingOf(hung(), 'flap-opens')).toMatchObject({
      severity: 'note',
      value: 1895,
      caution: expect.stringContaining('fingers'),
    });
  });

  test('heavy in the hands is said: half its weight over 5 kg', () => {
    // 0.795·0.4·0.04·710/2 = 4.5 kg; 600 deep 6.8 kg.
    expect(rulesOf(hung())).not.toContain('flap-heavy');
    const heavy = findingOf(hung({}, { depth: 600 }), 'flap-heavy');
    expect(heavy.value).toBeCloseTo(6.77, 2);
    expect(heavy.limit).toBe(5);
  });

  test('leaves a way through that is held against doors', () => {
    // 800 − 2·25 − 2·25 = 700 between bearers; the open gate and stop take 15 + 2.5 + 18 = 35.5, less than the bearers.
    expect(findingOf(hung(), 'flap-passage')).toMatchObject({ severity: 'note', value: 700, limit: 800 });
    expect(findingOf(hung({ width: 699 }), 'flap-passage')).toMatchObject({ severity: 'warn', value: 599, limit: 600 });
    expect(rulesOf(hung({ width: 900 }))).not.toContain('flap-passage');
    // Narrow bearers, and the gate counts: 800 − 50 − 35.5.
    const thin = hung({}, { elements: { flap: { bearer: 12 } } });
    expect(findingOf(thin, 'flap-passage').value).toBeCloseTo(714.5, 9);
    expect(findingOf(hung({ gate: false }, { elements: { flap: { bearer: 12 } } }), 'flap-passage').value).toBe(726);
  });

  test('longer than the stock is said', () => {
    const made = hung({ width: 1500 }, { stock: { 'oak-40': { maxLength: 1400 } } });
    expect(findingOf(made, 'flap-longer-than-stock')).toMatchObject({ value: 1495, limit: 1400 });
  });

  test('is marked where it is hinged, on the rod of the run that it hangs on', () => {
    expect(
      hung()
        .marks.A.filter((m) => m.reason.startsWith('flap'))
        .map((m) => m.x),
    ).toEqual([2002.5]);
    const right = hung({ hinge: 'right' });
    expect(right.marks.B.filter((m) => m.reason.startsWith('flap')).map((m) => m.x)).toEqual([-2.5]);
  });

  test('is in the way of an opening', () => {
    const tap = openingOf({ name: 'tap', through: 'top', use: 'pipe', x: 2400, z: 200, width: 60, height: 60 });
    const made = hung({}, { openings: [tap] });
    expect(partOf(made, 'LF').shape).toMatchObject({ holes: [] });
    expect(partOf(made, 'TP', 'A').shape).toMatchObject({ holes: [] });
    expect(made.findings.some((f) => f.subject.path === '/unit/openings/0')).toBe(true);
  });
});

describe('a gate', () => {
  test('fills the gap below the bearers, hung at the hinge side, its stop in front of it at the other', () => {
    const made = hung();
    // Between jambs: 2025 + 2.5 to 2775 − 2.5. From 30 to 1060 − 40 − 3. Its face lies a stop's 18 mm behind the cladding's.
    expect(boxOf(made, partOf(made, 'GT'))).toEqual({ x: [2027.5, 2772.5], d: [-24, -6], z: [30, 1017] });
    expect(boxOf(made, partOf(made, 'GS', 'B'))).toEqual({ x: [2760, 2775], d: [-6, 12], z: [150, 1017] });
    const right = hung({ hinge: 'right' });
    expect(partOf(right, 'GT', 'B').where).toBe('below the flap, hung at the right');
    expect(boxOf(right, partOf(right, 'GS', 'A')).x).toEqual([2025, 2040]);
  });

  test('only where it is wished', () => {
    const made = hung({ gate: false });
    expect(made.parts.filter((p) => p.code === 'GT' || p.code === 'GS')).toEqual([]);
    expect(rulesOf(made)).not.toContain('gate-swings');
  });

  test('is notched where the plinth blocks are thicker than the jambs', () => {
    const made = hung({}, { elements: { flap: { jamb: 'mdf-12' } } });
    const gate = partOf(made, 'GT');
    // Blocks 25, jambs 12: 13 off both lower corners, up to 150 + 2.5. Width 800 − 24 − 5 = 771.
    expect(gate.size.width).toBe(771);
    expect(gate.volumeMm3).toBeCloseTo((771 * 987 - 2 * 13 * 122.5) * 18, 6);
    // Clear of the blocks from the floor up it needs none.
    const high = hung({}, { elements: { flap: { jamb: 'mdf-12', floorClear: 150 } } });
    expect(partOf(high, 'GT').volumeMm3).toBeCloseTo(771 * 867 * 18, 6);
  });

  test('needs floor behind it', () => {
    // 745 wide, hung 57 in front of the jamb's back: −6 − (−63).
    const swings = findingOf(hung(), 'gate-swings');
    expect(swings).toMatchObject({ severity: 'note', value: 745 });
    expect(swings.message).toContain('stands 688 mm out behind the jamb');
  });

  test('meets a run that stands there', () => {
    // A U: the last run goes back behind the gap, the backs of its studs 63 nearer than its face. The gate opens to 6 + 745 = 751.
    const u = (back: number): Design =>
      hung(
        {},
        {
          runs: [
            { length: 2000, flap: { width: 800, hinge: 'left', gate: true } },
            { length: 700, deflectionDeg: 90 },
            { length: back, deflectionDeg: 90 },
            { length: 1600 },
          ],
        },
      );
    expect(findingOf(u(800), 'gate-hits-run').message).toContain('run D stands in it');
    expect(rulesOf(u(820))).not.toContain('gate-hits-run');
  });

  test('has a third hinge where it is high', () => {
    expect(partOf(hung(), 'GT').hardware?.[0]).toEqual({ what: 'hinge', count: 2 });
    expect(partOf(hung({}, { height: 1120 }), 'GT').hardware?.[0]).toEqual({ what: 'hinge', count: 3 });
  });
});

describe('what can’t be hung is left out, and said', () => {
  const none = (made: Design): void => expect(made.parts.filter((p) => p.kind === 'flap')).toEqual([]);

  test('a gap that its linings fill', () => {
    // 300 − 2·(25 + 30) = 190.
    const made = hung({ width: 300 }, { elements: { flap: { bearer: 30 } } });
    expect(findingOf(made, 'flap-too-narrow')).toMatchObject({ severity: 'stop', value: 190, limit: 200 });
    none(made);
    expect(rulesOf(hung({ width: 300 }))).not.toContain('flap-too-narrow');
  });

  test('a unit too low for jambs and bearers', () => {
    // 320 − 40 − 150 = 130; a bearer of 40 and 100 of jamb are 140.
    const made = hung({}, { height: 320 });
    expect(findingOf(made, 'flap-no-height')).toMatchObject({ severity: 'stop', value: 130, limit: 140 });
    none(made);
  });

  test('a gate without height: the flap stays', () => {
    // Under the bearers 360 − 40 − 43 = 277; above the floor 200: 77.
    const made = hung({}, { height: 360, elements: { flap: { floorClear: 200 } } });
    expect(findingOf(made, 'gate-no-height')).toMatchObject({ severity: 'stop', value: 77, limit: 100 });
    expect(partsOf(made, 'GT')).toEqual([]);
    expect(partsOf(made, 'LF').length).toBe(1);
  });

  test('a gap into which another run reaches', () => {
    const runs = [
      { length: 2000, flap: { width: 800, hinge: 'left' as const, gate: true } },
      { length: 300, deflectionDeg: 90 },
      { length: 1500 },
    ];
    // Run C turns back: its top reaches 325 behind its frame's face, 25 past the left end of B.
    const made = hung({}, { runs });
    expect(findingOf(made, 'flap-meets-run')).toMatchObject({ severity: 'stop', subject: { run: 'A' } });
    none(made);
    const clear = hung({}, { runs: [runs[0], { ...runs[1], length: 330 }, runs[2]] });
    expect(rulesOf(clear)).not.toContain('flap-meets-run');
  });

  test('a run too short to carry it', () => {
    const made = hung(
      {},
      {
        runs: [
          { length: 2000, flap: { width: 800, hinge: 'left', gate: true } },
          { length: 100, deflectionDeg: 150, over: 'top' },
          { length: 2500 },
        ],
      },
    );
    expect(runOf(made, 'B').sound).toBe(false);
    expect(findingOf(made, 'flap-no-run').message).toContain('run B is too short');
    none(made);
  });
});

test('in a mirror everything hangs at the other hand', () => {
  const start = jobOf({
    runs: [{ length: 2000, flap: { width: 700, hinge: 'left', gate: true } }, { length: 1500 }],
    elements: { flap: { jamb: 'mdf-12' } },
  });
  const [made, turned] = [design(start), design(mirrorJob(start))];
  expect(turned.rod.flaps).toMatchObject([{ hinge: 'right', width: 700 }]);
  // Run A of the mirror is run B, 1500 long; a place x from the left end of A becomes 1500 + 700 + 2000 − x from the left of the mirror's A.
  const whole = 1500 + 700 + 2000;
  for (const code of ['LF', 'GT', 'GS', 'JB', 'LB']) {
    const boxes = (d: Design, flip: boolean) =>
      d.parts
        .filter((p) => p.code === code && p.kind === 'flap')
        .map((p) => boxOf(d, p))
        .map(({ x, d: out, z }) => ({ x: flip ? [whole - x[1], whole - x[0]] : x, d: out, z }))
        .sort((a, b) => a.x[0] - b.x[0]);
    expect(boxes(turned, false)).toEqual(boxes(made, true));
    expect(boxes(made, false).length).toBeGreaterThan(0);
  }
});
