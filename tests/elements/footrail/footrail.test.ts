import { describe, expect, test } from 'vitest';
import { flatten } from '../../../src/base/outline';
import { restOf } from '../../../src/elements/footrail/bracket';
import { joinsOver } from '../../../src/elements/footrail/rails';
import { design, making, newJob, rooms } from '../../../src/flow';
import { bookOf } from '../../../src/job/book';
import { cornersIn, extentAt, reachOf } from '../../properties/measure';
import { findingOf, jobOf, partsOf, rulesOf, runOf } from '../job-of';

/** Pillars 0–100, 1150–1250, 2300–2400; blocks 5 wider. What stands out furthest are the blocks: 12 + 25 = 37. */
const pillar = { rhythm: 'count', bays: 2, width: 100, flutes: 0 };
const rail = { wanted: true };
const madeWith = (footrail: object = {}, elements: object = {}, more: object = {}) =>
  design(jobOf({ elements: { pillar, footrail: { ...rail, ...footrail }, ...elements }, ...more }));

describe('the foot rail', () => {
  test('is not there unless wished', () => {
    expect(design(jobOf({})).parts.some((p) => p.kind === 'footrail')).toBe(false);
    expect(design(jobOf({})).rod.heights.footBracket).toBeUndefined();
  });

  test('lies where it is asked for, from wall to wall', () => {
    const made = madeWith({}, {}, { fit: { scribe: 12 } });
    const [one] = partsOf(made, 'FR');
    const corners = cornersIn(runOf(made), one);
    const span = (of: (c: (typeof corners)[number]) => number) => [
      Math.min(...corners.map(of)),
      Math.max(...corners.map(of)),
    ];
    expect(reachOf(runOf(made), one)).toEqual({ from: 0, to: 2400 });
    // Its middle 37 + 125 = 162 out and 200 up, 22.5 to each side (a chord's error less).
    const [[back, front], [low, high]] = [span((c) => c.d), span((c) => c.z)];
    for (const [found, wanted] of [
      [back, 139.5],
      [front, 184.5],
      [low, 177.5],
      [high, 222.5],
    ])
      expect(Math.abs(found - wanted)).toBeLessThan(0.03);
    expect(one.fitted).toBe('site');
    expect(one.oversize?.map((o) => [o.side, o.amount])).toEqual([
      ['left end', 12],
      ['right end', 12],
    ]);
    expect(one.ends.map((e) => e.kind)).toEqual(['square', 'square']);
  });

  test('rests on brackets that stand on the skin above the skirting, and reach past it', () => {
    const made = madeWith();
    const [bracket] = partsOf(made, 'FB');
    const corners = cornersIn(runOf(made), bracket);
    // From 12 out to 139.5 + 45 + 15; as high as the timber, 75, up to the middle of the rail.
    expect(Math.min(...corners.map((c) => c.d))).toBeCloseTo(12, 9);
    expect(Math.max(...corners.map((c) => c.d))).toBeCloseTo(199.5, 9);
    expect(Math.min(...corners.map((c) => c.z))).toBeCloseTo(125, 9);
    expect(Math.max(...corners.map((c) => c.z))).toBeCloseTo(200, 9);
    expect(bracket.size).toEqual({ length: 187.5, width: 75, thickness: 47 });
    // It would keep a section from passing a door.
    expect(bracket.fitted).toBe('site');
    expect(bracket.work).toEqual(['seat for the rail 22.5 deep in the upper edge, 127.5 to 172.5 from the back']);
  });

  test('has as many brackets as keep within the spacing, equally shared, and from its ends half of it', () => {
    const middles = (spacing: number) =>
      partsOf(madeWith({ spacing }), 'FB').map((p) => {
        const { from, to } = reachOf(runOf(madeWith()), p);
        return Number(((from + to) / 2).toFixed(6));
      });
    // Each bay carries 1200: two of 600 for at most 800; four of 300 for 300.
    expect(middles(800)).toEqual([300, 900, 1500, 2100]);
    expect(middles(600)).toEqual([300, 900, 1500, 2100]);
    // The outer ones would stand at 150 and 1050: block to 105, 10 clear and half of 47 is 138.5 at most, so they may.
    expect(middles(300)).toEqual([150, 450, 750, 1050, 1350, 1650, 1950, 2250]);
    // One for each would be 600 from the end, more than half of 1100.
    expect(middles(1100)).toEqual([300, 900, 1500, 2100]);
    expect(middles(1200)).toEqual([600, 1800]);
  });

  test('moves a bracket beside a pillar, and says a span that then is too wide', () => {
    const wide = { pillar: { ...pillar, width: 400 } };
    const made = madeWith({ spacing: 300 }, wide, { runs: [{ length: 2600 }] });
    // Pillars 0–400, 1100–1500, 2200–2600; blocks to 405: the first bracket no nearer than 405 + 10 + 23.5, from the end counted twice.
    expect(findingOf(made, 'foot-rail-span')).toMatchObject({ severity: 'warn', value: 2 * 438.5, limit: 300 });
  });

  test('is put on on site: its brackets, then the rail; the noggins behind them stay', () => {
    const made = madeWith();
    const steps = making(made).steps.filter(({ what, place }) => place === 'site' && what.includes('foot rail'));
    expect(steps.map((s) => s.what)).toEqual([
      'Glue and screw 4 foot rail brackets to the cladding.',
      'Screw 1 foot rail to the foot rail brackets.',
    ]);
    expect(new Set(partsOf(made, 'NG').map((p) => p.fitted))).toEqual(new Set(['workshop']));
  });

  test('has two noggins behind each bracket, near its lower and its upper edge', () => {
    const made = madeWith();
    const behind = made.framing[0].noggins.filter((n) => n.reasons.includes('foot rail bracket'));
    for (const z of [140, 185])
      for (const x of [300, 900, 1500, 2100])
        expect(behind.some((n) => n.from <= x + 20 && n.to >= x - 20 && n.low + 5.9 <= z && z <= n.high - 5.9)).toBe(
          true,
        );
    // The brackets go from 125 to 200: a screw 15 from each edge.
    const { unit } = made.job;
    const room = rooms.find((one) => one.kind === 'footrail');
    const asked = room?.backing(unit.elements.footrail, { rod: made.rod, book: bookOf(made.job), openings: [] }) ?? [];
    expect(asked.map((b) => (b.kind === 'noggin' ? b.z : NaN)).slice(0, 2)).toEqual([
      expect.closeTo(140, 9),
      expect.closeTo(185, 9),
    ]);
  });

  test.each([
    [90, 1],
    [-90, -1],
    [-45, -0.41421356],
  ])('is mitred at a corner of %d°', (deflectionDeg, tan) => {
    const made = madeWith({}, {}, { runs: [{ length: 2400, deflectionDeg }, { length: 2400 }] });
    const last = partsOf(made, 'FR').at(-1);
    const [first] = partsOf(made, 'FR', 'B');
    if (!last) throw new Error('no rail');
    // The corner rule on each of its lines: at offset d it reaches tan·d beyond the corner, neither more nor less.
    const beyond = cornersIn(runOf(made), last).map((c) => c.x - 2400 - tan * c.d);
    const before = cornersIn(runOf(made, 'B'), first).map((c) => c.x + tan * c.d);
    expect(Math.max(...beyond)).toBeCloseTo(0, 6);
    expect(Math.min(...before)).toBeCloseTo(0, 6);
    const half = beyond.length / 2;
    expect(beyond.filter((b) => Math.abs(b) < 1e-6)).toHaveLength(half);
    expect(last.ends[1].tiltDeg).toBeCloseTo(Math.abs(deflectionDeg) / 2, 6);
  });

  test('stops 50 short of a free end', () => {
    const made = madeWith({}, {}, { rightEnd: { kind: 'free' } });
    expect(reachOf(runOf(made), partsOf(made, 'FR')[0])).toEqual({ from: 0, to: 2350 });
  });

  test('longer than its stock is joined over a bracket', () => {
    const made = madeWith({}, {}, { runs: [{ length: 4800 }] });
    // Pillars at 0, 2350 and 4700: bays carry 2400, three brackets each: 400, 1200, 2000, 2800 … The middle is 2400, 2000 as near as 2800.
    expect(partsOf(made, 'FR').map((p) => reachOf(runOf(made), p))).toEqual([
      { from: 0, to: 2000 },
      { from: 2000, to: 4800 },
    ]);
    expect(rulesOf(made)).not.toContain('longer-than-stock');
    expect(extentAt(runOf(made), partsOf(made, 'FB')[2], 12)).toEqual({ from: 2000 - 23.5, to: 2000 + 23.5 });
  });

  test('says what it does not work out, with a caution', () => {
    const made = madeWith();
    expect(findingOf(made, 'foot-rail-strength')).toMatchObject({ severity: 'note', value: 4 });
    expect(findingOf(made, 'foot-rail-strength').caution).toMatch(/fall/);
  });

  test('says unusual heights, distances and spacings', () => {
    expect(rulesOf(madeWith()).filter((r) => r !== 'foot-rail-strength' && r.startsWith('foot-rail'))).toEqual([]);
    const made = madeWith({ height: 260, out: 90, spacing: 1200 });
    expect(findingOf(made, 'foot-rail-height')).toMatchObject({ severity: 'note', value: 260, limit: 230 });
    expect(findingOf(made, 'foot-rail-out')).toMatchObject({ severity: 'note', value: 90, limit: 100 });
    expect(findingOf(made, 'foot-rail-far-apart')).toMatchObject({ severity: 'note', value: 1200, limit: 1000 });
  });

  test('that can not be carried above the skirting is left out, with what the bracket keeps', () => {
    const made = madeWith({ height: 160 });
    // The rail begins at 137.5, the skirting ends at 120: 17.5; 20 is the least.
    expect(findingOf(made, 'foot-rail-bracket-low')).toMatchObject({ severity: 'stop', value: 17.5, limit: 20 });
    expect(made.parts.some((p) => p.kind === 'footrail')).toBe(false);
    expect(rulesOf(madeWith({ height: 165 }))).not.toContain('foot-rail-bracket-low');
  });

  test('too near, too high, between corners too close, without a place for a bracket: each is left out and said', () => {
    expect(findingOf(madeWith({ out: 50, moulding: 'fat' }, {}, fat), 'foot-rail-too-near').value).toBeCloseTo(10, 9);
    expect(findingOf(madeWith({ height: 500 }, {}, { height: 560 }), 'foot-rail-too-high')).toMatchObject({
      value: 522.5,
      limit: 520,
    });
    const well = madeWith(
      {},
      {},
      { runs: [{ length: 2400, deflectionDeg: -90 }, { length: 440, deflectionDeg: -90 }, { length: 2400 }] },
    );
    // 440 less 184.5 at each end is 71; 100 is the least. And the two rails beside it would face each other across 71.
    expect(findingOf(well, 'foot-rail-no-length').value).toBeCloseTo(71, 9);
    const narrow = madeWith(
      {},
      { pillar: { ...pillar, bays: 4 }, plinth: { overhang: 5 } },
      { runs: [{ length: 780 }] },
    );
    // (780 − 500)/4 = 70 between pillars, 60 between blocks; 47 and 10 on both sides are 67.
    expect(findingOf(narrow, 'foot-rail-no-bracket')).toMatchObject({ severity: 'stop' });
  });

  test('across a well narrower than two of them, both are left out', () => {
    const well = madeWith(
      {},
      {},
      { runs: [{ length: 2400, deflectionDeg: -90 }, { length: 390, deflectionDeg: -90 }, { length: 2400 }] },
    );
    // The brackets' noses reach 199.5 out: 399 of 390.
    expect(rulesOf(well)).toContain('foot-rail-crossed');
    expect(well.parts.some((p) => p.kind === 'footrail')).toBe(false);
  });
});

/** A rail 120 thick. */
const fat = {
  stock: {
    'rail-round-45': {
      id: 'fat',
      section: {
        start: [0, 0] as const,
        segments: [
          { to: [40, 0] as const },
          { to: [40, 120] as const },
          { to: [0, 120] as const },
          { to: [0, 0] as const },
        ],
      },
    },
  },
};

describe('a seat', () => {
  const sectionOf = (id: string) => {
    const item = newJob('book').stock.items.find((i) => i.id === id);
    if (item?.kind !== 'moulding') throw new Error(`no moulding ${id}`);
    return item.section;
  };

  test('is the lower half of the rail, as it is drawn', () => {
    const { seat, deep, height } = restOf(sectionOf('rail-round-45'));
    expect([deep, height]).toEqual([22.5, 45]);
    const below = flatten(sectionOf('rail-round-45')).filter(([u]) => u < 22.4);
    for (const p of below) expect(seat).toContainEqual(p);
    // From its front to its back.
    expect(seat[0][1]).toBeGreaterThan(44.9);
    expect(seat.at(-1)?.[1]).toBeLessThan(0.1);
  });

  test('is none where the lower half undercuts: the rail lies on its bracket', () => {
    // A dovetail, wider at its foot.
    const dovetail = {
      start: [0, 0] as const,
      segments: [
        { to: [20, 10] as const },
        { to: [20, 20] as const },
        { to: [0, 30] as const },
        { to: [0, 0] as const },
      ],
    };
    expect(restOf(dovetail)).toEqual({ height: 20, thickness: 30, seat: [], deep: 0 });
  });
});

describe('joins over brackets', () => {
  test('are the fewest, then the most even', () => {
    expect(joinsOver({ from: 0, to: 2900 }, [400, 1200, 2000], 3000, 'left')).toEqual([]);
    expect(joinsOver({ from: 0, to: 3200 }, [400, 1200, 2000, 2800], 3000, 'left')).toEqual([1200]);
    expect(joinsOver({ from: 0, to: 3200 }, [400, 1200, 2000, 2800], 3000, 'right')).toEqual([2000]);
    // In two, neither end keeps within 1700: 2600 and 600. In three it does.
    expect(joinsOver({ from: 0, to: 3200 }, [600, 2000], 1700, 'left')).toEqual([600, 2000]);
    // And where no bracket serves it is left whole, for the stock check to say.
    expect(joinsOver({ from: 0, to: 5000 }, [4000], 2000, 'left')).toEqual([]);
  });
});
