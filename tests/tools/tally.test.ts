import { describe, expect, it } from 'vitest';
import { addTallies, tallyOfPlaywright, tallyOfStep, tallyOfVitest } from './tally.ts';

const vitestFile = (name: string, status: string, ...tests: string[]) => ({
  name,
  status,
  assertionResults: tests.map((test, i) => ({ status: test, fullName: `${name} ${i}` })),
});

const journey = (status: string) => ({ title: `a journey ${status}`, tests: [{ status }] });

describe('the count of the whole run', () => {
  it('counts vitest’s tests, and names those failed and skipped', () => {
    const report = {
      testResults: [vitestFile('a', 'failed', 'passed', 'failed'), vitestFile('b', 'passed', 'passed', 'skipped')],
    };
    const tally = tallyOfVitest(report, false);
    expect(tally).toEqual({ passed: 2, failed: 1, notes: ['tests: failed: a 1', 'tests: skipped: b 1'] });
  });

  it('counts a file that could not be loaded as one failed', () => {
    const report = { testResults: [vitestFile('a', 'passed', 'passed'), vitestFile('broken', 'failed')] };
    expect(tallyOfVitest(report, false)).toMatchObject({ passed: 1, failed: 1 });
  });

  it('counts a runner that failed outside any test, left no report, or ran nothing', () => {
    expect(tallyOfVitest({ testResults: [vitestFile('a', 'passed', 'passed')] }, false)).toMatchObject({
      passed: 1,
      failed: 1,
    });
    expect(tallyOfVitest(null, true)).toMatchObject({ passed: 0, failed: 1 });
    expect(tallyOfVitest({ testResults: [] }, true)).toMatchObject({ passed: 0, failed: 1 });
    expect(tallyOfPlaywright({ suites: [], errors: [{}] }, false)).toMatchObject({ passed: 0, failed: 1 });
    expect(tallyOfPlaywright('', true)).toMatchObject({ passed: 0, failed: 1 });
  });

  it('counts journeys in every depth; a flaky one failed, a skipped one neither', () => {
    const report = {
      suites: [
        {
          specs: [journey('expected'), journey('flaky')],
          suites: [{ specs: [journey('expected'), journey('skipped')] }],
        },
        { specs: [journey('unexpected')] },
      ],
    };
    const tally = tallyOfPlaywright(report, false);
    expect(tally).toMatchObject({ passed: 2, failed: 2 });
    expect(tally.notes).toContain('journeys: skipped: a journey skipped');
  });

  it('adds up, with types and lint as one failed each and never as passed', () => {
    const total = addTallies([
      tallyOfStep('types', false),
      tallyOfStep('lint', true),
      { passed: 3, failed: 1, notes: [] },
    ]);
    expect(total).toEqual({ passed: 3, failed: 2, notes: ['types: failed'] });
  });
});
