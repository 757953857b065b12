import { describe, expect, test } from 'vitest';
import { design } from '../../src/flow';
import { gather } from '../../src/setting-out/layers';
import { runLetter, seedsOf } from '../../src/setting-out/plan';
import type { Demands } from '../../src/vocabulary/rod';
import { findingOf, jobOf, rulesOf, runOf } from '../elements/job-of';

const timber: Demands = {
  timber: { stock: 's', face: 38, depth: 63, centres: 400, method: 'module', datum: 'left', nogginRows: 0 },
};

describe('layers', () => {
  test('lie on the frame or on one named before, in order', () => {
    const { layers } = gather([
      timber,
      { layer: { name: 'cladding', thickness: 12 } },
      { layer: { name: 'pillar', on: 'cladding', thickness: 18 } },
      { layer: { name: 'top', outer: 75 } },
    ]);
    expect(layers).toMatchObject({
      frame: { inner: -63, outer: 0 },
      cladding: { inner: 0, outer: 12 },
      pillar: { inner: 12, outer: 30 },
      top: { outer: 75 },
    });
  });

  test('a register without a frame, or with a layer on none, is a bug and throws', () => {
    expect(() => gather([])).toThrow(/timber/);
    expect(() => gather([timber, { layer: { name: 'pillar', on: 'moon', thickness: 18 } }])).toThrow(/moon/);
  });
});

describe('runs', () => {
  test('are lettered', () => expect([0, 25, 26, 27, 52].map(runLetter)).toEqual(['A', 'Z', 'AA', 'AB', 'BA']));

  test('get a return before and after where an end asks for one, square round the end', () => {
    const seeds = seedsOf(
      jobOf({ runs: [{}, {}], leftEnd: { kind: 'return', length: 300 }, rightEnd: { kind: 'return', length: 400 } }),
    );
    expect(seeds.map((s) => [s.id, s.length, s.over, s.jobIndex])).toEqual([
      ['RL', 300, 'frame', null],
      ['A', 2400, 'frame', 0],
      ['B', 2400, 'frame', 1],
      ['RR', 400, 'frame', null],
    ]);
    expect(seeds.map((s) => s.deflectionDeg)).toEqual([90, 0, 90, 0]);
  });

  test('start at the origin with the first of the job’s own, along x, whatever return stands before', () => {
    const made = design(jobOf({ leftEnd: { kind: 'return', length: 300 } }));
    expect(runOf(made)).toMatchObject({ origin: [0, 0], along: [1, 0], front: [0, -1] });
    expect(runOf(made, 'RL')).toMatchObject({ origin: [0, 300], along: [0, -1] });
  });
});

describe('ends', () => {
  test('the run that goes through keeps its frame to the vertex; the other stops at its back', () => {
    for (const [through, a, b] of [
      ['this', 2400, 63],
      ['next', 2400 - 63, 0],
    ] as const) {
      const made = design(jobOf({ runs: [{ deflectionDeg: 90, through }, {}] }));
      expect([runOf(made, 'A').right.frameAt, runOf(made, 'B').left.frameAt]).toEqual([a, b]);
    }
  });

  test('a top runs past a free end and over a return, and stops at a wall', () => {
    const made = design(jobOf({ rightEnd: { kind: 'free' }, elements: { top: { endOverhang: 40 } } }));
    expect([runOf(made).left.topBeyond, runOf(made).right.topBeyond]).toEqual([0, 40]);
    const returned = design(jobOf({ rightEnd: { kind: 'return', length: 300 }, elements: { top: { overhang: 90 } } }));
    expect(runOf(returned).right).toMatchObject({ topBeyond: 90, toReturn: true });
  });

  test('a length over the top holds what the top runs past a free end', () => {
    const made = design(
      jobOf({
        runs: [{ length: 3000, over: 'top' }],
        rightEnd: { kind: 'free' },
        elements: { top: { endOverhang: 40 } },
      }),
    );
    expect(runOf(made).length).toBe(2960);
  });
});

describe('plans that can’t be', () => {
  test('a run that its corners leave nothing of: nothing is made for it, and what is left is said', () => {
    const run = { length: 120, over: 'plinth', deflectionDeg: 120 };
    const made = design(jobOf({ runs: [{ length: 2000, deflectionDeg: 120 }, run, { length: 2000 }], depth: 300 }));
    expect(runOf(made, 'B').sound).toBe(false);
    expect(made.parts.some((p) => p.run === 'B')).toBe(false);
    expect(findingOf(made, 'run-too-short')).toMatchObject({
      severity: 'stop',
      limit: 20,
      subject: { run: 'B', path: '/unit/plan/runs/1/length' },
    });
  });

  test('a frame with no room for its two end studs is none', () => {
    const at = (length: number) => design(jobOf({ runs: [{ length }] }));
    expect(findingOf(at(75.9), 'run-too-short')).toMatchObject({ value: 75.9, limit: 76 });
    expect(at(76).parts.filter((p) => p.code === 'ST')).toHaveLength(2);
  });

  test('a plan that folds on itself: which runs, and how much floor they both want', () => {
    // Round a square of 1000 and on: D crosses A.
    const runs = [1, 1, 1, 1, 1].map(() => ({ length: 1500, deflectionDeg: 90 }));
    const made = design(jobOf({ runs, depth: 400 }));
    const finding = findingOf(made, 'plan-folds');
    expect(finding).toMatchObject({ severity: 'stop', limit: 0, subject: { path: '/unit/plan/runs' } });
    expect(finding.value).toBeGreaterThan(1);
  });

  test('a U whose arms stand clear of each other doesn’t', () => {
    const made = design(jobOf({ runs: [{ deflectionDeg: 90 }, { deflectionDeg: 90 }, {}], depth: 600 }));
    expect(rulesOf(made)).not.toContain('plan-folds');
    const near = design(jobOf({ runs: [{ deflectionDeg: 90 }, { length: 1000, deflectionDeg: 90 }, {}], depth: 600 }));
    expect(rulesOf(near)).toContain('plan-folds');
  });
});
