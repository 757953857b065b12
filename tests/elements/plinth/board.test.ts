import { describe, expect, test } from 'vitest';
import { plinth } from '../../../src/elements/plinth';
import { design } from '../../../src/flow';
import { bookOf } from '../../../src/job/book';
import { findingOf, jobOf, partOf, partsOf, rulesOf, runOf, type Said } from '../job-of';

const elements = { cladding: { sheet: 'mdf-12' }, plinth: { style: 'plain', sheet: 'mdf-25', height: 150 } };
const made = (said: Said = {}) => design(jobOf({ ...said, elements: { ...elements, ...said.elements } }));

describe('a plain plinth', () => {
  test('is one board from wall to wall, and the pillars stand on it', () => {
    const unit = made();
    const board = partOf(unit, 'PB');
    expect(board.size).toMatchObject({ length: 2400, width: 150, thickness: 25 });
    expect(board.edges).toEqual([{ edge: 'front upper arris', work: 'moulded', cutter: 'Ovolo 9' }]);
    expect(partsOf(unit, 'BK')).toEqual([]);
    expect(partsOf(unit, 'PI').every((p) => p.place.origin[2] === 150)).toBe(true);
  });

  test('leaves no room for skirting, and says so to the other rooms', () => {
    const unit = made();
    expect(unit.rod.heights.plinthRuns).toBe(1);
    expect(design(jobOf({})).rod.heights.plinthRuns).toBeUndefined();
    expect(partsOf(unit, 'SK')).toEqual([]);
    expect(runOf(unit).bays.every((b) => b.footFrom === b.from && b.footTo === b.to)).toBe(true);
  });

  test('is mitred at corners on the line of its own layer, outside and inside', () => {
    for (const [turn, back, face] of [
      // 12 before the frame's face and 37: as much more at an outside corner, less at an inside one.
      [90, 2412, 2437],
      [-90, 2388, 2363],
    ]) {
      const unit = made({ runs: [{ deflectionDeg: turn }, {}] });
      for (const [run, side] of [
        ['A', 'right'],
        ['B', 'left'],
      ]) {
        const board = partOf(unit, 'PB', run);
        expect(board.meets).toBe(side);
        expect(Math.max(back, face)).toBeCloseTo(board.size.length, 9);
        expect(Math.min(back, face)).toBeCloseTo(board.shortPoint, 9);
      }
    }
  });

  test('between two corners meets both neighbours', () => {
    const unit = made({ runs: [{ deflectionDeg: 60 }, { deflectionDeg: -45 }, {}] });
    expect(partOf(unit, 'PB', 'B').meets).toBe('both');
  });

  test('is divided at joins, so that each length leaves the workshop on its section', () => {
    const x = runOf(made()).pillars[1].centre;
    const unit = made({ joins: { by: 'hand', at: [{ run: 1, x }] } });
    const boards = partsOf(unit, 'PB');
    expect(boards.map((p) => p.size.length)).toEqual([x, 2400 - x].map((n) => expect.closeTo(n, 9)));
    expect(boards.map((p) => [p.fitted, p.inSection])).toEqual([
      ['workshop', 'S1'],
      ['workshop', 'S2'],
    ]);
    expect(boards.every((p) => p.ends.every((e) => e.kind === 'square'))).toBe(true);
  });

  test('longer than its sheet is jointed behind the middle of pillars, and that is said', () => {
    // Pillars every 800 at most on 3000: (3000 − 140)/4 = 715, centres 785, 1500, 2215; the furthest within 2440 is 2215.
    const unit = made({ runs: [{ length: 3000 }] });
    expect(partsOf(unit, 'PB').map((p) => p.size.length)).toEqual([2215, 785].map((n) => expect.closeTo(n, 9)));
    expect(findingOf(unit, 'plinth-jointed')).toMatchObject({ severity: 'note', value: 1, limit: 2440 });
    // From the other end when the module is measured from there.
    const turned = made({ runs: [{ length: 3000 }], elements: { frame: { datum: 'right' } } });
    expect(partsOf(turned, 'PB').map((p) => p.size.length)).toEqual([785, 2215].map((n) => expect.closeTo(n, 9)));
  });

  test('with no pillar in reach is drawn whole, and said', () => {
    const unit = made({ runs: [{ length: 3000, rhythm: { by: 'count', count: 1 } }] });
    expect(partsOf(unit, 'PB').map((p) => p.size.length)).toEqual([3000]);
    expect(findingOf(unit, 'plinth-board-too-long')).toMatchObject({ severity: 'stop', limit: 2440 });
  });

  test('turns a free end, and has stuff left on at a wall', () => {
    const unit = made({ rightEnd: { kind: 'free' }, fit: { scribe: 10 } });
    expect(partOf(unit, 'PB').size.length).toBe(2425);
    expect(partOf(unit, 'PB').oversize).toEqual([
      { side: 'left end', amount: 10, on: 'length', reason: 'scribed to the wall' },
    ]);
    expect(partOf(unit, 'BR').size.length).toBe(100);
  });

  test('is fixed to a noggin below its upper edge', () => {
    const unit = made();
    const noggins = unit.framing[0].noggins.filter((n) => n.reasons.includes('plinth'));
    expect(noggins.length).toBe(unit.framing[0].studs.length - 1);
    // 30 below 150.
    for (const { low, high } of noggins) expect(low <= 120 && 120 <= high).toBe(true);
  });

  test('is in the way of openings along the whole front', () => {
    const job = jobOf({ elements });
    const all = plinth.obstacles?.(job.unit.elements.plinth as never, { rod: design(job).rod, book: bookOf(job) });
    expect(all).toEqual([
      { run: 'A', through: 'front', from: expect.closeTo(0, 9), to: 2400, low: 0, high: 150, what: 'plinth board' },
    ]);
  });

  test('with its cutter too big is square, and said', () => {
    const unit = made({ elements: { plinth: { ...elements.plinth, sheet: 'mdf-6' } } });
    expect(findingOf(unit, 'cutter-does-not-fit')).toMatchObject({ value: 9, limit: 6 });
    expect(partOf(unit, 'PB').edges).toEqual([]);
  });
});

test('a plinth higher than the underside of the top is left out, whatever its style', () => {
  for (const style of ['blocks', 'plain', 'kicked']) {
    const unit = design(jobOf({ height: 530, elements: { plinth: { style, height: 500 } } }));
    expect(findingOf(unit, 'plinth-too-high')).toMatchObject({ severity: 'stop', value: 500, limit: 490 });
    for (const code of ['BK', 'PB', 'KB']) expect(partsOf(unit, code)).toEqual([]);
  }
});

test('blocks that would meet in a bay are both left out', () => {
  // (2120 − 14·140)/15 = 10.67 between pillars; feet of 6 on both sides want 12.
  const unit = design(jobOf({ runs: [{ rhythm: { by: 'count', count: 15 } }], elements: { plinth: { overhang: 6 } } }));
  expect(findingOf(unit, 'block-meets-block').value).toBeCloseTo(12 - 160 / 15, 9);
  expect(partsOf(unit, 'BK')).toEqual([]);
  expect(rulesOf(unit)).toContain('blocks-overlap');
});

test('blocks are in the way of openings, each by its number, to the long point of a mitre', () => {
  const job = jobOf({
    runs: [{ deflectionDeg: 90 }, {}],
    elements: { cladding: { sheet: 'mdf-12' }, plinth: { sheet: 'mdf-25', overhang: 6, height: 160 } },
  });
  const { rod } = design(job);
  const all = plinth.obstacles?.(job.unit.elements.plinth as never, { rod, book: bookOf(job) }) ?? [];
  const mine = all.filter((o) => o.run === 'A');
  expect(mine.map((o) => o.what)).toEqual([1, 2, 3, 4].map((n) => `plinth block ${n}`));
  expect(mine[0]).toMatchObject({ to: 146, low: 0, high: 160 });
  expect(mine[3].to).toBeCloseTo(2437, 9);
});
