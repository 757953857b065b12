import { describe, expect, test } from 'vitest';
import { topOutline } from '../../../src/elements/top/outline';
import { design } from '../../../src/flow';
import type { Run } from '../../../src/vocabulary/job';
import { findingOf, jobOf, partOf, partsOf, rulesOf, runOf, type Said } from '../job-of';

// A top 600 deep that overhangs the frame's face by 75: x along the run from its frame line's left end, y back from the front edge.
const outlineOf = (said: Said, run = 'A', corner: 'mitred' | 'butted' = 'mitred'): readonly (readonly number[])[] => {
  const made = design(jobOf({ depth: 600, ...said, elements: { top: { overhang: 75, corner, endOverhang: 30 } } }));
  return topOutline(made.rod, runOf(made, run), { corner, mitredInside: false }).map((p) =>
    p.map((n) => Number(n.toFixed(6)) + 0),
  );
};
const corner = (deflectionDeg: number, through: Run['through'] = 'this'): Said => ({
  runs: [{ length: 2000, deflectionDeg, through }, { length: 1500 }],
});

describe('a straight top', () => {
  test('ends at a wall, and beyond a free end', () => {
    expect(outlineOf({ rightEnd: { kind: 'free' } })).toEqual([
      [0, 0],
      [2430, 0],
      [2430, 600],
      [0, 600],
    ]);
  });
  test('covers a return as far as it overhangs the front', () => {
    expect(outlineOf({ rightEnd: { kind: 'return', length: 300 } })).toEqual([
      [0, 0],
      [2475, 0],
      [2475, 600],
      [0, 600],
    ]);
  });
});

describe('mitred', () => {
  test('an outside corner: longer in front by the overhang, shorter behind', () => {
    expect(outlineOf(corner(90), 'A')).toEqual([
      [0, 0],
      [2075, 0],
      [2000 - 525, 600],
      [0, 600],
    ]);
    expect(outlineOf(corner(90), 'B')).toEqual([
      [-75, 0],
      [1500, 0],
      [1500, 600],
      [525, 600],
    ]);
  });
  test('an inside corner: the other way about', () => {
    expect(outlineOf(corner(-90), 'A')).toEqual([
      [0, 0],
      [2000 - 75, 0],
      [2525, 600],
      [0, 600],
    ]);
  });
  test('its ends are cut at half the turn', () => {
    const made = design(jobOf(corner(60)));
    expect(partOf(made, 'TP', 'A').ends[1]).toMatchObject({ kind: 'mitre', longSide: 'front edge' });
    expect(partOf(made, 'TP', 'A').ends[1].sawDeg).toBeCloseTo(30, 9);
  });
});

describe('butted', () => {
  test('outside: one length goes through to the other’s front, the other stops at its back edge', () => {
    expect(outlineOf(corner(90, 'this'), 'A', 'butted')).toEqual([
      [0, 0],
      [2075, 0],
      [2075, 600],
      [0, 600],
    ]);
    expect(outlineOf(corner(90, 'this'), 'B', 'butted')).toEqual([
      [525, 0],
      [1500, 0],
      [1500, 600],
      [525, 600],
    ]);
    expect(outlineOf(corner(90, 'next'), 'A', 'butted')).toEqual([
      [0, 0],
      [2000 - 525, 0],
      [2000 - 525, 600],
      [0, 600],
    ]);
  });
  test('inside: one length goes through to the other’s back, the other stops at its front edge', () => {
    expect(outlineOf(corner(-90, 'this'), 'A', 'butted')).toEqual([
      [0, 0],
      [2525, 0],
      [2525, 600],
      [0, 600],
    ]);
    expect(outlineOf(corner(-90, 'this'), 'B', 'butted')).toEqual([
      [75, 0],
      [1500, 0],
      [1500, 600],
      [75, 600],
    ]);
  });
  test('turned less than 45° it would end in slivers, and is mitred', () => {
    expect(outlineOf(corner(44), 'A', 'butted')).toEqual(outlineOf(corner(44), 'A', 'mitred'));
    expect(outlineOf(corner(46), 'A', 'butted')).not.toEqual(outlineOf(corner(46), 'A', 'mitred'));
  });
});

describe('the top', () => {
  test('is oiled hardwood, there from the clad view on, its upper face at the unit’s height', () => {
    const made = design(jobOf({ height: 1000, depth: 600 }));
    const top = partOf(made, 'TP');
    expect(top).toMatchObject({ finish: 'oil', from: 'clad', material: 'oak-40' });
    expect(top.size).toEqual({ length: 2400, width: 600, thickness: 40 });
    expect(top.place.origin[2] + 40).toBe(1000);
  });

  test('a return has none of its own', () => {
    const made = design(jobOf({ rightEnd: { kind: 'return', length: 300 } }));
    expect(partsOf(made, 'TP', 'RR')).toEqual([]);
  });

  test('that does not reach over what stands in front, with both', () => {
    const made = design(jobOf({ elements: { top: { overhang: 20 } } }));
    expect(findingOf(made, 'top-does-not-cover')).toMatchObject({ severity: 'warn', value: 20, limit: 37 });
    expect(rulesOf(design(jobOf({ elements: { top: { overhang: 37 } } })))).not.toContain('top-does-not-cover');
  });

  test('that leaves a return bare, with how far it reaches', () => {
    const made = design(
      jobOf({ depth: 600, rightEnd: { kind: 'return', length: 530 }, elements: { top: { overhang: 75 } } }),
    );
    expect(findingOf(made, 'return-beyond-top')).toMatchObject({ value: 530, limit: 525, subject: { run: 'RR' } });
  });

  test('squeezed to a point by its corners is said, and drawn as far as it goes', () => {
    const made = design(jobOf({ runs: [{ deflectionDeg: 90 }, { length: 900, deflectionDeg: 90 }, {}], depth: 600 }));
    expect(findingOf(made, 'top-squeezed')).toMatchObject({ severity: 'stop', value: 600, subject: { run: 'B' } });
    expect(partOf(made, 'TP', 'B').size.length).toBeCloseTo(900 + 150, 9);
  });

  test('far behind what carries it it wants support', () => {
    const behind = (depth: number, carcass: { build: boolean; setBack?: number }) =>
      design(jobOf({ depth, elements: { carcass } }));
    // Behind the frame alone: 600 − 75 − 63.
    expect(findingOf(behind(600, { build: false }), 'top-unsupported')).toMatchObject({
      value: 600 - 75 - 63,
      limit: 300,
    });
    expect(rulesOf(behind(438, { build: false }))).not.toContain('top-unsupported');
    // With cross frames it reaches behind them as far as they are set back.
    expect(rulesOf(behind(900, { build: true, setBack: 300 }))).not.toContain('top-unsupported');
  });
});
