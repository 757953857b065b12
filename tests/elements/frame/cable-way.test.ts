import { describe, expect, test } from 'vitest';
import { flatten } from '../../../src/base/outline';
import { polygonArea } from '../../../src/base/polygon';
import { isBored } from '../../../src/elements/frame/cable-way';
import { alike, design } from '../../../src/flow';
import { reachOf } from '../../properties/measure';
import { findingOf, jobOf, partsOf, rulesOf, runOf } from '../job-of';

const made = (frame: Record<string, string | number>) => design(jobOf({ elements: { frame } }));

describe('cable ways', () => {
  test('go up through the middle of every noggin, which is measured as before', () => {
    const [plain, bored] = [made({}), made({ cableWay: 20 })];
    const [before, after] = [partsOf(plain, 'NG'), partsOf(bored, 'NG')];
    expect(after).toHaveLength(before.length);
    after.forEach((noggin, i) => {
      const twin = before[i];
      expect(noggin.mark).toBe(twin.mark);
      expect(noggin.material).toBe(twin.material);
      expect(noggin.size.length).toBeCloseTo(twin.size.length, 9);
      expect(noggin.size).toMatchObject({ width: 63, thickness: 38 });
      expect(noggin.ends.map((e) => e.kind)).toEqual(['square', 'square']);
      const [at, was] = [reachOf(runOf(bored), noggin), reachOf(runOf(plain), twin)];
      expect(at.from).toBeCloseTo(was.from, 9);
      expect(at.to).toBeCloseTo(was.to, 9);
      if (noggin.shape.kind !== 'board') throw new Error(`${noggin.mark} is not bored`);
      const [hole] = noggin.shape.holes;
      // A hole of 20 in 63: its middle 31.5 from either side, and from either end half the length.
      expect(hole.start[1]).toBe(63 / 2);
      expect(hole.start[0] + 10).toBeCloseTo(twin.size.length / 2, 9);
      expect(twin.volumeMm3 - noggin.volumeMm3).toBeCloseTo(38 * polygonArea(flatten(hole)), 3);
      expect(noggin.work).toHaveLength(1);
    });
  });
  test('on flat the noggin is still named by its section', () => {
    // Depth 38: a third of it stays on each side of 12.
    for (const noggin of partsOf(made({ lay: 'flat', cableWay: 12 }), 'NG')) {
      expect(noggin.shape.kind).toBe('board');
      expect(noggin.size).toMatchObject({ width: 63, thickness: 38 });
    }
  });
  test('a third of the depth must stay on each side: 63/3 = 21', () => {
    expect(rulesOf(made({ cableWay: 21 }))).not.toContain('cable-way-too-wide');
    const wide = made({ cableWay: 22 });
    const finding = findingOf(wide, 'cable-way-too-wide');
    expect(finding).toMatchObject({ severity: 'stop', value: 22 });
    expect(finding.limit).toBeCloseTo(21, 9);
    expect(partsOf(wide, 'NG').every((n) => n.shape.kind === 'stick')).toBe(true);
  });
  test('narrower than a cable are not bored, and that is said', () => {
    const narrow = made({ cableWay: 7.9 });
    expect(findingOf(narrow, 'cable-way-too-narrow')).toMatchObject({ severity: 'warn', value: 7.9, limit: 8 });
    expect(partsOf(narrow, 'NG').every((n) => n.shape.kind === 'stick' && (n.work ?? []).length === 0)).toBe(true);
    // As good as none: a hole of no size would be no hole at all.
    expect(partsOf(made({ cableWay: 1e-9 }), 'NG').every((n) => n.shape.kind === 'stick')).toBe(true);
    for (const cableWay of [0, 8]) expect(rulesOf(made({ cableWay }))).not.toContain('cable-way-too-narrow');
    expect(partsOf(made({ cableWay: 8 }), 'NG').some((n) => n.shape.kind === 'board')).toBe(true);
  });
  test('none in a noggin shorter than three of them', () => {
    // The stud at the inner edge of an end pillar of 130 leaves 130 − 2·38 = 54 beside the end stud; 60 are needed.
    const noggins = partsOf(design(jobOf({ elements: { frame: { cableWay: 20 }, pillar: { width: 130 } } })), 'NG');
    expect(noggins.some((n) => n.size.length < 60) && noggins.some((n) => n.size.length >= 60)).toBe(true);
    for (const n of noggins) expect(n.shape.kind).toBe(n.size.length < 60 ? 'stick' : 'board');
  });
  test('noggins of one length are alike, bored and unbored are not', () => {
    const bored = partsOf(made({ cableWay: 20 }), 'NG');
    const plain = partsOf(made({}), 'NG');
    expect(alike(bored).length).toBe(alike(plain).length);
    expect(alike([bored[0], plain[0]])).toHaveLength(2);
  });
});

describe('how the frame is held together', () => {
  const d = design(jobOf({ runs: [{ deflectionDeg: 45 }, {}] }));
  const hold = (code: string, run = 'A') => (partsOf(d, code, run)[0].holds ?? [])[0];
  test('two screws through the plate into each end of a stud, glued', () =>
    expect(hold('ST')).toMatchObject({
      by: 'screw',
      through: 38,
      endGrain: true,
      glue: 'pva',
      where: { at: 'ends', each: 2 },
    }));
  test('a noggin askew from both sides at each end', () =>
    expect(hold('NG')).toMatchObject({ by: 'screw', where: { at: 'ends', each: 2 } }));
  test('the bottom plate along its length, the top plate by the studs’ screws, a fillet to its stud', () => {
    const [bottom, top] = partsOf(d, 'PL').map((p) => (p.holds ?? [])[0]);
    expect(bottom).toMatchObject({ by: 'screw', through: 38, where: { at: 'length', centres: 600 } });
    expect(top.where).toEqual({ at: 'all', each: 0 });
    // Depth 63 at 45°: the fillet lies on its longest side, 63, its other two 63·sin 45° = 44.55; it is 44.55²/63 = 31.5 thick.
    expect(hold('FI', 'B').through).toBeCloseTo(31.5, 9);
  });
  test('nothing without a hold', () => {
    for (const part of d.parts.filter((p) => p.kind === 'frame' || p.kind === 'cladding'))
      expect(part.holds?.length, part.mark).toBeGreaterThan(0);
  });

  test('are bored in a noggin that is just long enough, whatever the last digits are', () => {
    // Three diameters: 60.
    for (const length of [60, 60 - 1e-13, 60 + 1e-13, 2628.3 - 2568.3]) expect(isBored(length, 20, 89)).toBe(true);
    expect(isBored(59.99, 20, 89)).toBe(false);
  });
});
