import { describe, expect, test } from 'vitest';
import { flatten } from '../../../src/base/outline';
import { polygonArea } from '../../../src/base/polygon';
import { upperEdgeOf } from '../../../src/elements/skirting/board';
import { cutsIn, divide } from '../../../src/elements/skirting/cuts';
import { design, newJob } from '../../../src/flow';
import type { Outline } from '../../../src/vocabulary/geometry';
import type { Opening } from '../../../src/vocabulary/job';
import type { PlacedOpening } from '../../../src/vocabulary/opening';
import { reachOf } from '../../properties/measure';
import { openingOf } from '../behind-job';
import { findingOf, jobOf, partsOf, rulesOf, runOf } from '../job-of';

/** Pillars 0–100, 1150–1250, 2300–2400; blocks 5 wider on each side: skirting from 105 to 1145 and from 1255 to 2295. */
const elements = { pillar: { rhythm: 'count', bays: 2, width: 100 }, panel: { rows: 0 } };
const open = (said: Partial<Opening>) =>
  openingOf({ name: 'waste', use: 'pipe', x: 400, z: 66, width: 16, height: 16, ...said });
const madeWith = (openings: readonly Opening[], moulding = 'skirting-ogee-120') =>
  design(jobOf({ elements: { ...elements, skirting: { moulding } }, openings }));

describe('an opening through the skirting', () => {
  test('that stays below the moulding is a hole: the piece is a board, and loses the hole only', () => {
    const made = madeWith([open({})]);
    const [cut, whole] = partsOf(made, 'SK');
    expect(cut.shape.kind).toBe('board');
    expect(whole.shape.kind).toBe('stick');
    expect(cut.size).toEqual({ length: 1040, width: 120, thickness: 18 });
    expect(reachOf(runOf(made), cut)).toEqual({ from: 105, to: 1145 });
    // A hole 16 across through 18: π·8²·18 = 3619 mm³, less what the chords leave.
    expect(whole.volumeMm3 - cut.volumeMm3).toBeGreaterThan(3560);
    expect(whole.volumeMm3 - cut.volumeMm3).toBeLessThan(Math.PI * 64 * 18);
    // 400 from the run's datum is 400 − 105 from the left end.
    expect(cut.work).toEqual(['hole 16 round for waste, centre 295 from the left end and 66 above the floor']);
    expect(rulesOf(made)).not.toContain('skirting-by-hand');
  });

  test('that reaches the moulding is a notch through the upper edge', () => {
    const made = madeWith([open({ name: 'sockets', use: 'socket', x: 700, z: 100, width: 80, height: 60 })]);
    const [cut, whole] = partsOf(made, 'SK');
    // 80 wide at 660 to 740, less 105; from 100 − 30 up.
    expect(cut.work).toEqual(['notch for sockets, from 555 to 635 from the left end, down to 70 above the floor']);
    if (cut.shape.kind !== 'board' || whole.shape.kind !== 'stick') throw new Error('a board, and a stick');
    expect(cut.shape.outline).toContainEqual([555, 70]);
    // What is gone is the section above 70, 80 long.
    const above = flatten(whole.shape.section).map(([u, v]) => [Math.max(u, 70), v] as const);
    expect(whole.volumeMm3 - cut.volumeMm3).toBeCloseTo(polygonArea(above) * 80, 3);
  });

  test('of a moulding that undercuts is left to the hand, and the piece is shown whole', () => {
    const made = madeWith([open({ z: 80 })], 'skirting-torus-145');
    expect(findingOf(made, 'skirting-by-hand')).toMatchObject({ severity: 'warn', value: 72, limit: 145 });
    expect(partsOf(made, 'SK')[0].shape.kind).toBe('stick');
  });

  test('above the skirting changes nothing', () => {
    const made = madeWith([open({ z: 128.1 })]);
    expect(partsOf(made, 'SK')[0].work).toBeUndefined();
    expect(partsOf(made, 'SK')[0].shape.kind).toBe('stick');
  });

  test('beside a block, where too little would be left, ends the piece at its side', () => {
    // From 108 to 188: 3 mm would be left beside the block.
    const made = madeWith([open({ name: '', use: 'socket', x: 148, z: 80, width: 80, height: 60 })]);
    const [cut] = partsOf(made, 'SK');
    expect(reachOf(runOf(made), cut)).toEqual({ from: 188, to: 1145 });
    expect(cut.work).toEqual(['stops at the right side of the opening for opening 1']);
    expect(findingOf(made, 'skirting-cut-at-opening')).toMatchObject({ severity: 'note', value: 50, limit: 15 });
  });

  test('in a piece that is mitred is measured from its long point, and the mitre stays', () => {
    const made = design(
      jobOf({
        runs: [{ length: 2000, deflectionDeg: 90 }, { length: 1600 }],
        elements: { ...elements, pillar: { ...elements.pillar, atCorners: false } },
        openings: [open({ run: 2, x: 300 })],
      }),
    );
    const [cut] = partsOf(made, 'SK', 'B');
    // The face begins 12 + 18 = 30 before the corner.
    expect(cut.work).toEqual([
      'hole 16 round for waste, centre 330 from the long point of the left end and 66 above the floor',
    ]);
    expect(cut.ends[0]).toMatchObject({ kind: 'bevel', longSide: 'face' });
    expect(cut.ends[0].tiltDeg).toBeCloseTo(45, 9);
    expect(reachOf(runOf(made, 'B'), cut).from).toBeCloseTo(-30, 9);
  });
});

describe('the upper edge of a section', () => {
  const sectionOf = (id: string): Outline => {
    const item = newJob('book').stock.items.find((i) => i.id === id);
    if (item?.kind !== 'moulding') throw new Error(`no moulding ${id}`);
    return item.section;
  };

  test('is found where it is single-valued', () => {
    // Chamfer 6 deep, 12 high, on 95 × 15.
    const edge = upperEdgeOf(sectionOf('skirting-chamfer-95'));
    expect(edge).toMatchObject({ height: 95, thickness: 15, plainTo: 83 });
    expect(edge?.edge.steps).toEqual([
      [0, 0],
      [9, 0],
      [15, -12],
    ]);
  });

  test.each([['skirting-torus-145'], ['rail-round-45'], ['panel-bead-25'], ['panel-ogee-30'], ['undertop-scotia-25']])(
    '%s has none that a board can have',
    (id) => {
      expect(upperEdgeOf(sectionOf(id))).toBeUndefined();
    },
  );
});

describe('openings in a row', () => {
  const at = (from: number, to: number, low = 50, high = 70): PlacedOpening => ({
    index: 0,
    name: `${from}`,
    run: 'A',
    through: 'front',
    use: 'socket',
    round: false,
    from,
    to,
    low,
    high,
  });

  test('closer than 15 are cut as one', () => {
    const cuts = cutsIn([at(300, 320), at(334, 350, 40, 60), at(365, 380)], { from: 0, to: 1000, height: 120 });
    expect(cuts).toEqual([
      { from: 300, to: 350, low: 40, high: 70, round: false, first: 0, names: ['300', '334'] },
      { from: 365, to: 380, low: 50, high: 70, round: false, first: 0, names: ['365'] },
    ]);
  });

  test('that go down to the floor divide the piece', () => {
    const cuts = cutsIn([at(300, 320, 10), at(600, 650)], { from: 0, to: 1000, height: 120 });
    const { stretches, gaps } = divide({ from: 0, to: 1000, clearFrom: 0, clearTo: 1000 }, cuts);
    expect(gaps.map((g) => g.from)).toEqual([300]);
    expect(stretches.map((s) => [s.from, s.to, s.cuts.length])).toEqual([
      [0, 300, 0],
      [320, 1000, 1],
    ]);
  });
});
