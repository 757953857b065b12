import { describe, expect, test } from 'vitest';
import { plinth } from '../../../src/elements/plinth';
import { design } from '../../../src/flow';
import { bookOf } from '../../../src/job/book';
import { boundsInRoom } from '../../base/bounds';
import { findingOf, jobOf, partOf, partsOf, rulesOf, runOf, type Said } from '../job-of';

/** Frame 63 deep on edge; a board of 25 set back 35: from 60 to 35 behind the frame's face. */
const kick = { style: 'kicked', sheet: 'mdf-25', height: 120, recess: 35 };
const made = (said: Said = {}, own: Readonly<Record<string, number | string>> = {}) =>
  design(jobOf({ ...said, elements: { ...said.elements, plinth: { ...kick, ...own } } }));

describe('a kick board', () => {
  test('stands from the floor to the frame, set back from its face', () => {
    const unit = made();
    const { min, max } = boundsInRoom(partOf(unit, 'KB'));
    // y runs back from the frame's face.
    expect([min, max].map((p) => p.map((n) => Math.round(n * 1e6) / 1e6 + 0))).toEqual([
      [0, 35, 0],
      [2400, 60, 120],
    ]);
    expect(unit.rod.frameLow).toBe(120);
    const plates = partsOf(unit, 'PL').map((p) => p.place.origin[2]);
    expect(Math.min(...plates)).toBe(120);
  });

  test('lifts the pillars with it, and leaves neither blocks nor skirting', () => {
    const unit = made();
    expect(partsOf(unit, 'PI').every((p) => p.place.origin[2] === 120)).toBe(true);
    for (const code of ['BK', 'PB', 'BR', 'SK']) expect(partsOf(unit, code)).toEqual([]);
    expect(unit.rod.heights).toMatchObject({ plinth: 120, plinthRuns: 1 });
  });

  test('is mitred at corners behind the frame’s face: shorter outside, longer inside', () => {
    for (const [turn, back, face] of [
      // The corner rule at −60 and −35.
      [90, 1940, 1965],
      [-90, 2060, 2035],
      [60, 2000 - 60 * Math.tan(Math.PI / 6), 2000 - 35 * Math.tan(Math.PI / 6)],
    ]) {
      const unit = made({ runs: [{ length: 2000, deflectionDeg: turn }, { length: 2000 }] });
      for (const run of ['A', 'B']) {
        const board = partOf(unit, 'KB', run);
        expect(board.size.length).toBeCloseTo(Math.max(back, face), 9);
        expect(board.shortPoint).toBeCloseTo(Math.min(back, face), 9);
        expect(board.ends.filter((e) => e.kind === 'bevel').map((e) => e.angleDeg)).toEqual([
          expect.closeTo(90 - Math.abs(turn) / 2, 9),
        ]);
      }
      expect([partOf(unit, 'KB', 'A').meets, partOf(unit, 'KB', 'B').meets]).toEqual(['right', 'left']);
    }
  });

  test('is divided at joins, and ends square at a free end', () => {
    const x = runOf(made()).pillars[2].centre;
    const unit = made({ joins: { by: 'hand', at: [{ run: 1, x }] }, rightEnd: { kind: 'free' } });
    expect(partsOf(unit, 'KB').map((p) => p.size.length)).toEqual([x, 2400 - x].map((n) => expect.closeTo(n, 9)));
    expect(partsOf(unit, 'KB').every((p) => p.ends.every((e) => e.kind === 'square'))).toBe(true);
    expect(partsOf(unit, 'BR')).toEqual([]);
  });

  test('that would not lie under the plate is left out, with the nearest that does', () => {
    // 63 − 25
    expect(findingOf(made({}, { recess: 39 }), 'kick-does-not-carry')).toMatchObject({
      severity: 'stop',
      value: 39,
      limit: 38,
      subject: { path: '/unit/elements/plinth/recess' },
    });
    expect(partsOf(made({}, { recess: 39 }), 'KB')).toEqual([]);
    expect(partsOf(made({}, { recess: 38 }), 'KB')).toHaveLength(1);
    // On flat the frame is 38 deep: thinner than 25 and 35.
    const flat = made({ elements: { frame: { lay: 'flat' } } });
    expect(findingOf(flat, 'kick-does-not-carry')).toMatchObject({ value: 35, limit: 13 });
  });

  test('less than the usual toe space is worth a note', () => {
    expect(findingOf(made(), 'toe-space-small')).toMatchObject({ severity: 'note', value: 35, limit: 50 });
    const deep = { elements: { frame: { timber: 'sawn-38x89' } } };
    expect(rulesOf(made(deep, { recess: 50, height: 100 }))).not.toContain('toe-space-small');
    expect(findingOf(made(deep, { recess: 50, height: 90 }), 'toe-space-small')).toMatchObject({
      value: 90,
      limit: 100,
    });
  });

  test('is screwed down through the plate', () =>
    expect(partOf(made(), 'KB').holds).toMatchObject([{ by: 'screw', through: 38 }]));

  test('is in the way of openings', () => {
    const job = jobOf({ elements: { plinth: kick } });
    const all = plinth.obstacles?.(job.unit.elements.plinth as never, { rod: design(job).rod, book: bookOf(job) });
    expect(all).toMatchObject([{ run: 'A', to: 2400, low: 0, high: 120, what: 'kick board' }]);
  });
});
