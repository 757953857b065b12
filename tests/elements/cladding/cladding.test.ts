import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { reachOf } from '../../properties/measure';
import { findingOf, jobOf, partsOf, rulesOf, runOf } from '../job-of';

describe('the skin', () => {
  test('is one sheet on a run that a sheet covers, clear of the floor', () => {
    const made = design(jobOf({ height: 1000, elements: { cladding: { floorGap: 8 } } }));
    const [sheet, ...more] = partsOf(made, 'CL');
    expect(more).toEqual([]);
    expect(sheet.size).toEqual({ length: 2400, width: 960 - 8, thickness: 12 });
    expect(sheet.place.origin[2]).toBe(8);
  });

  test('joins behind pillars, on the middle of a stud', () => {
    const made = design(jobOf({ runs: [{ length: 4200 }] }));
    const joints = partsOf(made, 'CL')
      .slice(1)
      .map((p) => reachOf(runOf(made), p).from);
    expect(joints.length).toBeGreaterThan(0);
    const studs = partsOf(made, 'ST').map((p) => reachOf(runOf(made), p));
    for (const x of joints) {
      expect(runOf(made).pillars.some((p) => Math.abs(p.centre - x) < 1e-6)).toBe(true);
      expect(studs.some((s) => Math.abs((s.from + s.to) / 2 - x) < 1e-6)).toBe(true);
    }
    expect(rulesOf(made)).not.toContain('joint-in-field');
  });

  test('a joint in a painted field is said, with where', () => {
    const made = design(jobOf({ runs: [{ length: 4200 }], elements: { pillar: { rhythm: 'count', bays: 1 } } }));
    const [, second] = partsOf(made, 'CL');
    expect(findingOf(made, 'joint-in-field')).toMatchObject({
      severity: 'warn',
      subject: { run: 'A' },
      value: reachOf(runOf(made), second).from,
    });
  });

  test('a front higher than a sheet is wide is clad upright; higher than the sheet is long can’t be', () => {
    const upright = design(jobOf({ height: 1400 }));
    expect(Math.max(...partsOf(upright, 'CL').map((p) => p.size.length))).toBeLessThanOrEqual(1220 - 20);
    const high = design(jobOf({ height: 3000 }));
    expect(findingOf(high, 'cladding-too-high')).toMatchObject({
      severity: 'stop',
      value: 3000 - 40 - 5,
      limit: 2440 - 20,
    });
  });

  test('studs too far apart for the sheet: one piece, and said', () => {
    const made = design(
      jobOf({
        runs: [{ length: 3000 }],
        elements: { frame: { centres: 900 }, pillar: { rhythm: 'count', bays: 1 } },
        stock: { 'mdf-12': { length: 700, width: 600 } },
      }),
    );
    expect(findingOf(made, 'cladding-not-divisible')).toMatchObject({ severity: 'stop', value: 3000 });
    expect(partsOf(made, 'CL')).toHaveLength(1);
  });

  test('is mitred at corners by half the turn, and its faces meet', () => {
    const made = design(jobOf({ runs: [{ length: 2000, deflectionDeg: 91.5 }, { length: 2000 }] }));
    const [a] = partsOf(made, 'CL', 'A');
    expect(a.ends.map((e) => e.kind)).toEqual(['square', 'bevel']);
    expect(a.ends[1].tiltDeg).toBeCloseTo(45.75, 9);
    expect(a.size.length).toBeCloseTo(2000 + 12 * Math.tan((45.75 * Math.PI) / 180), 9);
  });

  test('a sheet gives its length less a trim at both ends, and the mitre comes off that', () => {
    const pieces = (length: number, deflectionDeg = 0) =>
      partsOf(design(jobOf({ runs: [{ length, deflectionDeg }, ...(deflectionDeg ? [{}] : [])] })), 'CL', 'A').length;
    expect(pieces(2420)).toBe(1);
    expect(pieces(2421)).toBe(2);
    expect(pieces(2408, 90)).toBe(1);
    expect(pieces(2409, 90)).toBe(2);
  });
});
