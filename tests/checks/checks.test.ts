import { describe, expect, test } from 'vitest';
import { design } from '../../src/flow';
import { findingOf, jobOf, partsOf, rulesOf } from '../elements/job-of';

describe('stock lengths', () => {
  test('a plate longer than the longest timber is said, with both lengths', () => {
    const made = design(jobOf({ runs: [{ length: 4801 }] }));
    const [plate] = partsOf(made, 'PL');
    expect(findingOf(made, 'longer-than-stock')).toMatchObject({
      severity: 'warn',
      subject: { part: plate.mark, run: 'A' },
      value: 4801,
      limit: 4800,
    });
  });
  test('one as long as it is not', () =>
    expect(rulesOf(design(jobOf({ runs: [{ length: 4800 }] })))).not.toContain('longer-than-stock'));
});

describe('walls', () => {
  const at = (directionDeg: number, leanDeg = 0) =>
    design(
      jobOf({
        height: 1000,
        depth: 400,
        leftEnd: { kind: 'wall', wall: 'west' },
        survey: { walls: [{ name: 'west', directionDeg, leanDeg }] },
      }),
    );

  test('square and plumb ones say nothing', () => {
    expect(rulesOf(at(90))).toEqual([]);
    expect(rulesOf(at(-90))).toEqual([]);
  });
  test('out of square: the gap over the depth of the top', () => {
    expect(findingOf(at(91), 'wall-out-of-square').value).toBeCloseTo(400 * Math.tan(Math.PI / 180), 9);
    expect(findingOf(at(-89), 'wall-out-of-square').value).toBeCloseTo(400 * Math.tan(Math.PI / 180), 9);
  });
  test('out of plumb: the gap over the height', () => {
    expect(findingOf(at(90, -1), 'wall-out-of-plumb')).toMatchObject({
      severity: 'note',
      limit: 2,
      subject: { run: 'A', path: '/survey/walls/0' },
    });
    expect(findingOf(at(90, -1), 'wall-out-of-plumb').value).toBeCloseTo(1000 * Math.tan(Math.PI / 180), 9);
  });
  test('the gap opens where the wall goes away from the unit', () => {
    // The left end: a wall turned counter-clockwise from square goes away to the back, one turned clockwise comes nearer.
    expect(findingOf(at(91), 'wall-out-of-square').message).toContain('opening to the back');
    expect(findingOf(at(89), 'wall-out-of-square').message).toContain('opening to the front');
    expect(findingOf(at(90, 1), 'wall-out-of-plumb').message).toContain('opening to the top');
    expect(findingOf(at(90, -1), 'wall-out-of-plumb').message).toContain('opening to the floor');
  });
  test('a wall along the run is no wall for its end', () => {
    expect(rulesOf(at(0))).toEqual(['wall-not-across']);
    expect(findingOf(at(0), 'wall-not-across')).toMatchObject({ severity: 'warn', value: 90, limit: 30 });
  });
  test('a gap under 2 mm is filler', () => {
    expect(rulesOf(at(90.28))).toEqual([]);
    // Nothing is left on here to be scribed.
    expect(rulesOf(at(90.29))).toEqual(['scribe-too-small', 'wall-out-of-square']);
  });
  test('the right-hand wall is held against the last run', () => {
    const made = design(
      jobOf({
        runs: [{ deflectionDeg: 90 }, {}],
        depth: 600,
        rightEnd: { kind: 'wall', wall: 'north' },
        survey: { walls: [{ name: 'north', directionDeg: 1, leanDeg: 0 }] },
      }),
    );
    expect(findingOf(made, 'wall-out-of-square').subject.run).toBe('B');
    expect(findingOf(made, 'wall-out-of-square').value).toBeCloseTo(600 * Math.tan(Math.PI / 180), 9);
  });
  test('an end that stands at no surveyed wall says nothing', () =>
    expect(rulesOf(design(jobOf({ survey: { walls: [{ name: 'west', directionDeg: 70, leanDeg: 9 }] } })))).toEqual(
      [],
    ));
});

describe('floor', () => {
  const levels = (...heights: number[]) =>
    design(jobOf({ survey: { levels: heights.map((height, i) => ({ run: 1, along: i * 800, height })) } }));

  test('falls by so much from its highest point', () => {
    const finding = findingOf(levels(0, 7, -2), 'floor-out-of-level');
    expect(finding).toMatchObject({ severity: 'note', value: 9, limit: 2, subject: { path: '/survey/levels' } });
    expect(finding.message).toContain('800 mm along run A');
  });
  test('2 mm is level enough, and one level says nothing', () => {
    expect(rulesOf(levels(0, 2))).toEqual([]);
    expect(rulesOf(levels(40))).toEqual([]);
  });
});

describe('the saw', () => {
  const bevelled = (deflectionDeg: number) => design(jobOf({ runs: [{ deflectionDeg }, {}] }));

  test('bevels that the blade reaches say nothing', () =>
    expect(rulesOf(bevelled(94))).not.toContain('beyond-saw-tilt'));
  test('beyond it, each part that needs one is named: skin, pillar boards, blocks on both sides of the corner', () => {
    const made = bevelled(95);
    const beyond = made.findings.filter((f) => f.rule === 'beyond-saw-tilt');
    expect(beyond.map((f) => f.subject.part?.replace(/\d+$/, '')).sort()).toEqual([
      'A-BK',
      'A-CL',
      'A-PI',
      'B-BK',
      'B-CL',
      'B-PI',
    ]);
    for (const { value, limit } of beyond) expect([value, limit]).toEqual([expect.closeTo(47.5, 9), 47]);
  });
});

describe('findings', () => {
  test('come worst first', () => {
    const made = design(
      jobOf({
        runs: [{ length: 4900 }],
        elements: { pillar: { fluteDepth: 9 } },
        survey: {
          levels: [
            { run: 1, along: 0, height: 0 },
            { run: 1, along: 900, height: 9 },
          ],
        },
      }),
    );
    const rank = { stop: 0, warn: 1, note: 2 };
    const ranks = made.findings.map((f) => rank[f.severity]);
    expect(new Set(ranks)).toEqual(new Set([0, 1, 2]));
    expect(ranks).toEqual([...ranks].sort());
  });
});
