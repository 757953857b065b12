import { describe, expect, test } from 'vitest';
import { areaOf } from '../../../src/base/outline';
import { skinHeights } from '../../../src/elements/cladding/lay';
import { parts } from '../../../src/elements/cladding/parts';
import { alike, design } from '../../../src/flow';
import { bookOf } from '../../../src/job/book';
import type { Opening } from '../../../src/vocabulary/job';
import type { Board } from '../../../src/vocabulary/shape';
import { openingOf } from '../behind-job';
import { findingOf, jobOf, partsOf, rulesOf, type Said } from '../job-of';

const socket = (said: Partial<Opening> = {}): Opening => openingOf({ x: 1200, z: 600, ...said });
/** Plain bays: no panel frames. The sheet of 12 begins 5 above the floor. */
const made = (said: Said, openings: readonly Opening[] = []) =>
  design(
    jobOf({
      height: 1100,
      openings,
      ...said,
      elements: { panel: { rows: 0 }, cladding: { floorGap: 5 }, ...said.elements },
    }),
  );
const boardOf = (d: ReturnType<typeof made>, i = 0): Board => partsOf(d, 'CL')[i].shape as Board;

describe('holes in the skin', () => {
  const run: Said = { runs: [{ length: 2000, rhythm: { by: 'count', count: 1 } }] };
  test('a square one, marked out from the left and from the floor', () => {
    const d = made(run, [socket({ x: 420, z: 300 })]);
    const [piece] = partsOf(d, 'CL');
    // 420 − 72.5 = 347.5 from the left; 300 − 42.5 − 5 = 252.5 above the lower edge.
    expect(boardOf(d).holes).toEqual([
      {
        start: [347.5, 252.5],
        segments: [{ to: [492.5, 252.5] }, { to: [492.5, 337.5] }, { to: [347.5, 337.5] }, { to: [347.5, 252.5] }],
      },
    ]);
    expect(piece.work).toEqual(['hole 145 × 85, middle 420 from the left, 300 from the floor']);
    // The sheet is 2000 × (1060 − 5) × 12; the hole takes 145 × 85 × 12.
    expect(piece.volumeMm3).toBeCloseTo(12 * (2000 * 1055 - 145 * 85), 3);
  });
  test('a round one for a pipe', () => {
    const d = made(run, [socket({ use: 'pipe', width: 60, x: 420, z: 300 })]);
    const [hole] = boardOf(d).holes;
    expect(areaOf(hole)).toBeCloseTo(Math.PI * 30 * 30, 6);
    expect(partsOf(d, 'CL')[0].work).toEqual(['round hole 60, middle 420 from the left, 300 from the floor']);
  });
  test('in the piece in which it falls, from that piece’s edge', () => {
    // Joined behind the pillar on 1500.
    const d = made(
      { runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }], joins: { by: 'hand', at: [{ run: 1, x: 1500 }] } },
      [socket({ x: 1800 })],
    );
    expect(partsOf(d, 'CL').map((p) => p.work)).toEqual([
      undefined,
      ['hole 145 × 85, middle 300 from the left, 600 from the floor'],
    ]);
  });
  test('none for what goes through the top', () =>
    expect(boardOf(made(run, [socket({ through: 'top', z: 300, x: 1000 })])).holes).toEqual([]));
  test('stay 20 mm from the edges of the sheet', () => {
    // Up to 40 clear of the floor the sheet's edge lies higher than the plate: 40 + 20 + 42.5 = 102.5.
    const d = made({ ...run, elements: { cladding: { floorGap: 40 } } }, [socket({ z: 90 })]);
    expect(findingOf(d, 'opening-refused').message).toContain('the lower edge of the cladding by 12.5 mm');
    expect(findingOf(d, 'opening-refused').remedy).toContain('12.5 mm up, to 102.5 mm');
  });
  test('make pieces that are otherwise the same unlike', () => {
    const joined: Said = {
      runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }],
      joins: { by: 'hand', at: [{ run: 1, x: 1500 }] },
    };
    const groups = (openings: readonly Opening[]) => alike(partsOf(made(joined, openings), 'CL')).map((g) => g.marks);
    expect(groups([])).toEqual([['A-CL1', 'A-CL2']]);
    expect(groups([socket({ x: 400 }), socket({ x: 1900 })])).toEqual([['A-CL1', 'A-CL2']]);
    expect(groups([socket({ x: 400 }), socket({ x: 1910 })])).toEqual([['A-CL1'], ['A-CL2']]);
  });
});

describe('a joint of the skin', () => {
  /** One bay; lines on 400: a sheet of 2420 takes 4200 in two on 2000 or 2400, most evenly on 2000. */
  const long: Said = { runs: [{ length: 4200, rhythm: { by: 'count', count: 1 } }] };
  const joints = (openings: readonly Opening[]) =>
    made(long, openings)
      .marks.A.filter((m) => m.reason === 'cladding joint')
      .map((m) => m.x);
  test('is moved off an opening', () => {
    expect(joints([])).toEqual([2000]);
    expect(joints([socket({ x: 2050 })])).toEqual([2400]);
    // The stud behind it reaches 19 and 5 are kept clear: 2000 + 24 + 72.5 = 2096.5.
    expect(joints([socket({ x: 2096.5 })])).toEqual([2000]);
    expect(joints([socket({ x: 2096.4 })])).toEqual([2400]);
  });
  test('has its own stud in spite of it', () => {
    const d = made(long, [socket({ x: 2050 })]);
    expect(d.framing[0].studs.filter((s) => s.reasons.includes('cladding joint')).map((s) => s.from)).toEqual([2381]);
    expect(rulesOf(d)).not.toContain('cladding-not-divisible');
  });
  test('with no place left: one piece, said, and the holes are cut', () => {
    // A sheet of 980 must be joined on every second line at least; from 1600 to 2800 there is none left.
    const d = made({ ...long, stock: { 'mdf-12': { length: 1000 } } }, [socket({ x: 2000 }), socket({ x: 2400 })]);
    expect(findingOf(d, 'cladding-not-divisible')).toMatchObject({ severity: 'stop', value: 4200, limit: 980 });
    expect(boardOf(d).holes).toHaveLength(2);
  });
});

describe('the skin at joins', () => {
  const at = (x: number, more: Said = {}) =>
    made({
      runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }],
      joins: { by: 'hand', at: [{ run: 1, x }] },
      ...more,
    });
  test('ends there, and asks for no stud of its own', () => {
    const d = at(785);
    // 785 and then 2215, which one sheet of 2420 covers.
    expect(partsOf(d, 'CL').map((p) => p.size.length)).toEqual([785, 2215]);
    expect(d.framing[0].studs.flatMap((s) => s.reasons)).not.toContain('cladding joint');
    expect(partsOf(d, 'CL').every((p) => p.fitted === 'workshop')).toBe(true);
  });
  test('is divided further within a section where it is longer than a sheet', () => {
    const d = at(1500, {
      runs: [{ length: 5400, rhythm: { by: 'count', count: 8 } }],
      joins: { by: 'hand', at: [{ run: 1, x: 722.5 }] },
    });
    // Bays (5400 − 2·140 − 7·140)/8 = 517.5: pillars on 727.5, 1385, 2042.5, 2700, 3357.5, 4015, 4672.5. In two it would have to be cut
    // between 2980 and 3142.5, where no pillar stands; so in three, behind pillars.
    const lengths = partsOf(d, 'CL').map((p) => p.size.length);
    expect(lengths[0]).toBe(722.5);
    expect(lengths.length).toBe(4);
    expect(rulesOf(d)).not.toContain('joint-in-field');
    expect(Math.max(...lengths)).toBeLessThanOrEqual(2420);
    expect(lengths.reduce((a, b) => a + b)).toBeCloseTo(5400, 9);
  });
});

describe('stuff left on', () => {
  test('at a wall, to be scribed; at a free end none', () => {
    const d = made({ fit: { scribe: 15 }, rightEnd: { kind: 'free' } });
    expect(partsOf(d, 'CL').map((p) => p.oversize)).toEqual([
      [{ side: 'left end', amount: 15, on: 'length', reason: 'to scribe to the wall' }],
    ]);
  });
  test('comes out of the same sheet: 2420 − 2·15', () => {
    const pieces = (length: number) => partsOf(made({ runs: [{ length }], fit: { scribe: 15 } }), 'CL');
    expect(pieces(2390)).toHaveLength(1);
    expect(pieces(2390)[0].oversize).toHaveLength(2);
    expect(pieces(2391)).toHaveLength(2);
  });
});

test('the sheet is screwed through its thickness along its edges and in the field', () => {
  const [hold] = partsOf(made({}), 'CL')[0].holds ?? [];
  expect(hold).toMatchObject({ by: 'screw', through: 12, where: { at: 'sheet', edges: 150, field: 300 } });
  expect(hold.glue).toBeUndefined();
});

test('it begins with the frame where that stands on something, else clear of the floor', () => {
  const { rod } = made({});
  const decided = { sheet: 'mdf-12', floorGap: 5, trim: 10 };
  expect(skinHeights(rod, decided)).toEqual({ low: 5, high: 1060 });
  expect(skinHeights({ ...rod, frameLow: 150 }, decided)).toEqual({ low: 150, high: 1060 });
});

test('with no height to speak of there is none, and that is said', () => {
  const d = made({});
  const decided = { sheet: 'mdf-12', floorGap: 5, trim: 10 };
  // 1060 − 1045 = 15; 20 is the least.
  const bench = { rod: { ...d.rod, frameLow: 1045 }, framing: d.framing, book: bookOf(d.job), openings: [] };
  const { drafts, findings } = parts(decided, bench);
  expect(drafts).toEqual([]);
  expect(findings).toMatchObject([{ severity: 'stop', rule: 'cladding-no-height', value: 15, limit: 20 }]);
});
