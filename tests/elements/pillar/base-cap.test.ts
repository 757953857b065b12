import { describe, expect, test } from 'vitest';
import { pillar } from '../../../src/elements/pillar';
import { design, making } from '../../../src/flow';
import { bookOf } from '../../../src/job/book';
import type { Decision } from '../../../src/vocabulary/field';
import { boundsInRoom } from '../../base/bounds';
import { findingOf, jobOf, partsOf, rulesOf, type Said } from '../job-of';

type Decisions = Readonly<Record<string, Decision>>;

/** A base 90 and a cap 60 high on 12 mm cladding; blocks of 150, underside of the top at 960. */
const job = (own: Decisions = {}, said: Said = {}) =>
  jobOf({
    height: 1000,
    ...said,
    elements: {
      cladding: { sheet: 'mdf-12' },
      plinth: { height: 150 },
      ...said.elements,
      pillar: { baseHeight: 90, capHeight: 60, ...own },
    },
  });
const made = (own?: Decisions, said?: Said) => design(job(own, said));

describe('bases and caps', () => {
  test('are none unless they are wanted', () => {
    const plain = design(jobOf({}));
    for (const code of ['PS', 'PC', 'PR']) expect(partsOf(plain, code)).toEqual([]);
  });

  test('stand at the foot and the head of the pillar, and the board is shorter by them', () => {
    const unit = made();
    for (const board of partsOf(unit, 'PI')) {
      expect(board.place.origin[2]).toBe(240);
      expect(board.size.length).toBe(960 - 60 - 240);
    }
    for (const base of partsOf(unit, 'PS')) expect(base.place.origin[2]).toBe(150);
    for (const cap of partsOf(unit, 'PC')) expect(cap.place.origin[2]).toBe(900);
    expect(partsOf(unit, 'PS')).toHaveLength(4);
  });

  test('are wider than the pillar on each side towards a bay', () => {
    const unit = made({ baseOverhang: 8, capOverhang: 3 });
    expect(partsOf(unit, 'PS').map((p) => p.size.length)).toEqual(
      [148, 156, 156, 148].map((n) => expect.closeTo(n, 9)),
    );
    expect(partsOf(unit, 'PC').map((p) => p.size.length)).toEqual(
      [143, 146, 146, 143].map((n) => expect.closeTo(n, 9)),
    );
    expect(partsOf(unit, 'PS')[1].size).toMatchObject({ width: 90, thickness: 25 });
  });

  test('are moulded towards the board: a base at its upper arris, a cap at its lower', () => {
    const unit = made();
    expect(partsOf(unit, 'PS')[0].edges).toEqual([{ edge: 'front upper arris', work: 'moulded', cutter: 'Ovolo 9' }]);
    expect(partsOf(unit, 'PC')[0].edges[0].edge).toBe('front lower arris');
    const square = made({ baseCutter: '' });
    expect(partsOf(square, 'PS')[0].edges).toEqual([]);
    // A quarter round of 9 leaves 81·(1 − π/4) less.
    const less = partsOf(square, 'PS')[1].volumeMm3 - partsOf(unit, 'PS')[1].volumeMm3;
    expect(Math.abs(less - 150 * 81 * (1 - Math.PI / 4))).toBeLessThan(150 * 0.03 * 14.2);
  });

  test('meet at corners on the line of their own layer', () => {
    const unit = made({ cornerWidth: 110 }, { runs: [{ deflectionDeg: 90 }, {}] });
    const corner = unit.parts.filter((p) => p.name === 'corner pillar base');
    expect(corner.map((p) => p.meets)).toEqual(['right', 'left']);
    for (const base of corner) {
      // Back: 110 less 18 for the board's own layer, and 5 wider; the face is 25 longer.
      expect(base.shortPoint).toBeCloseTo(97, 9);
      expect(base.size.length).toBeCloseTo(122, 9);
    }
  });

  test('turn a free end: mitred, with a piece back to the back of the frame', () => {
    const unit = made({}, { rightEnd: { kind: 'free' } });
    const bases = partsOf(unit, 'PS');
    expect(bases[3].shortPoint).toBeCloseTo(145, 9);
    expect(bases[3].size.length).toBeCloseTo(170, 9);
    const turns = partsOf(unit, 'PR');
    expect(turns.map((p) => p.name)).toEqual(['pillar base return', 'pillar cap return']);
    // Along the end from 63 behind the frame's face to the cladding's, 12 before it; 25 more at its face.
    expect(turns[0].shortPoint).toBe(75);
    expect(turns[0].size.length).toBe(100);
    expect(turns[0].ends.map((e) => e.kind).sort()).toEqual(['bevel', 'square']);
    const { min, max } = boundsInRoom(turns[0]);
    expect(min.map((n) => Math.round(n * 1e6) / 1e6)).toEqual([2400, -37, 150]);
    expect(max.map((n) => Math.round(n * 1e6) / 1e6)).toEqual([2425, 63, 240]);
    expect(partsOf(made({ endReturn: false }, { rightEnd: { kind: 'free' } }), 'PR')).toEqual([]);
  });

  test('have stuff left on at walls', () => {
    const bases = partsOf(made({}, { fit: { scribe: 12 } }), 'PS');
    expect(bases.map((p) => p.oversize?.map((o) => [o.side, o.amount, o.on]))).toEqual([
      [['left end', 12, 'length']],
      undefined,
      undefined,
      [['right end', 12, 'length']],
    ]);
  });

  test('are held by brads where one is long enough; for thicker ones the making finds screws', () => {
    // Two and a half times 25 is 62.5; of 30 it is 75, and the longest brad has 64.
    expect(partsOf(made(), 'PS')[0].holds).toMatchObject([{ by: 'brad', through: 25, glue: 'grab' }]);
    const thick = made({ baseSheet: 'mdf-30' });
    const [base] = partsOf(thick, 'PS');
    const names = making(thick)
      .fixings.parts.filter((f) => f.part === base.mark)
      .map((f) => f.name);
    expect(names.some((name) => /brad/i.test(name))).toBe(false);
    expect(names.some((name) => /screw/i.test(name))).toBe(true);
  });

  test('say to the other rooms how high they are and how far they stand into a bay', () => {
    expect(made({ baseOverhang: 8 }).rod.heights).toMatchObject({
      baseHeight: 90,
      baseOverhang: 8,
      capHeight: 60,
      capOverhang: 5,
    });
    expect(made({ baseHeight: 0 }).rod.heights.baseHeight).toBeUndefined();
  });

  test('that leave no board are left out, and the board is whole', () => {
    const unit = made({ baseHeight: 400, capHeight: 400 });
    // 960 − 150 − 800
    expect(rulesOf(unit)).not.toContain('no-board-between-base-and-cap');
    const none = made({ baseHeight: 400, capHeight: 400 }, { height: 995 });
    expect(findingOf(none, 'no-board-between-base-and-cap')).toMatchObject({ severity: 'stop', value: 5, limit: 10 });
    expect(partsOf(none, 'PS')).toEqual([]);
    expect(partsOf(none, 'PI')[0].size.length).toBe(805);
  });

  test('what can’t be made is said, with its numbers', () => {
    expect(findingOf(made({ baseHeight: 6 }), 'base-too-low')).toMatchObject({ value: 6, limit: 10 });
    expect(findingOf(made({ capHeight: 11, capCutter: 'torus-12' }), 'cap-cutter-does-not-fit')).toMatchObject({
      value: 16,
      limit: 11,
    });
    expect(findingOf(made({ baseSheet: 'mdf-15' }), 'base-thinner-than-board')).toMatchObject({ value: 15, limit: 18 });
    const low = { elements: { plinth: { height: 100, overhang: 5 } } };
    expect(findingOf(made({ baseOverhang: 8 }, low), 'base-meets-skirting')).toMatchObject({ value: 120, limit: 100 });
    expect(partsOf(made({ baseOverhang: 8 }, low), 'PS')).toEqual([]);
    expect(partsOf(made({ baseOverhang: 5 }, low), 'PS')).toHaveLength(4);
    // Caps of 30 on 12 of cladding stand 42 out.
    const short = made({ capSheet: 'mdf-30' }, { elements: { top: { overhang: 40 } } });
    expect(findingOf(short, 'cap-past-top')).toMatchObject({ value: 42, limit: 40 });
  });

  test('as thin as the moulding is deep are drawn square: it would part a strip of stuff from the rest', () => {
    // The torus of 12 stands 6 out, on pieces 6 thick.
    const thin = made({ baseSheet: 'mdf-6', baseCutter: 'torus-12' });
    expect(findingOf(thin, 'base-cutter-does-not-fit')).toMatchObject({ severity: 'stop', limit: 6 });
    for (const base of partsOf(thin, 'PS')) expect(base.edges).toEqual([]);
    expect(rulesOf(made({ baseSheet: 'mdf-9', baseCutter: 'torus-12' }))).not.toContain('base-cutter-does-not-fit');
  });

  test('of a run whose bays are too narrow for them are left out', () => {
    const runs = [{ rhythm: { by: 'count' as const, count: 14 } }];
    // Clear between the end pillars 2400 − 280 = 2120, thirteen between: (2120 − 13·140)/14 = 21.43, less than 2 · 12.
    const unit = made(
      { baseOverhang: 12, capOverhang: 10 },
      { runs, elements: { plinth: { height: 150, overhang: 0 } } },
    );
    const finding = findingOf(unit, 'bases-overlap');
    expect(finding.value).toBeCloseTo(300 / 14, 9);
    expect(finding.limit).toBe(24);
    expect(partsOf(unit, 'PS')).toEqual([]);
    expect(partsOf(unit, 'PC')).toHaveLength(15);
    expect(partsOf(unit, 'PI')[0].place.origin[2]).toBe(150);
  });

  test('are in the way of openings, each with its pillar', () => {
    const own = job({ baseOverhang: 8 });
    const { rod } = design(own);
    const all = pillar.obstacles?.(own.unit.elements.pillar as never, { rod, book: bookOf(own) }) ?? [];
    expect(all.map((o) => o.what).slice(0, 3)).toEqual(['pillar 1', 'base of pillar 1', 'cap of pillar 1']);
    expect(all.find((o) => o.what === 'base of pillar 1')).toEqual({
      run: 'A',
      through: 'front',
      from: 0,
      to: 148,
      low: 150,
      high: 240,
      what: 'base of pillar 1',
    });
    // Three bays of (2400 − 4·140)/3 = 613.33.
    const second = all.find((o) => o.what === 'pillar 2');
    expect(second).toMatchObject({ low: 150, high: 960 });
    expect(second?.from).toBeCloseTo(140 + 1840 / 3, 9);
    expect(second?.to).toBeCloseTo(280 + 1840 / 3, 9);
  });
});
