/** What one step of the whole run came to. Notes name what failed or was skipped. */
export interface Tally {
  readonly passed: number;
  readonly failed: number;
  readonly notes: readonly string[];
}

export const NOTHING: Tally = { passed: 0, failed: 0, notes: [] };

export function addTallies(tallies: readonly Tally[]): Tally {
  return {
    passed: tallies.reduce((sum, tally) => sum + tally.passed, 0),
    failed: tallies.reduce((sum, tally) => sum + tally.failed, 0),
    notes: tallies.flatMap((tally) => tally.notes),
  };
}

/** A step that is no test (types, lint): nothing passed when it is well, one failed when it is not. */
export function tallyOfStep(name: string, ok: boolean): Tally {
  return ok ? NOTHING : { ...NOTHING, failed: 1, notes: [`${name}: failed`] };
}

interface VitestReport {
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly assertionResults: readonly { readonly status: string; readonly fullName: string }[];
  }[];
}

/** Counts vitest's JSON report. A file that could not be loaded holds no test, and counts as one failed. */
export function tallyOfVitest(report: unknown, exitedWell: boolean): Tally {
  if (!isVitestReport(report)) return { ...NOTHING, failed: 1, notes: ['tests: vitest left no report'] };
  let passed = 0;
  let failed = 0;
  const notes: string[] = [];
  for (const file of report.testResults) {
    const tests = file.assertionResults;
    passed += tests.filter((test) => test.status === 'passed').length;
    for (const test of tests) {
      if (test.status === 'passed') continue;
      if (test.status === 'failed') failed += 1;
      notes.push(`tests: ${test.status === 'failed' ? 'failed' : 'skipped'}: ${test.fullName}`);
    }
    if (file.status === 'failed' && !tests.some((test) => test.status === 'failed')) {
      failed += 1;
      notes.push(`tests: failed to run: ${file.name}`);
    }
  }
  return unexplained({ passed, failed, notes }, exitedWell, 'tests');
}

interface PlaywrightSuite {
  readonly suites?: readonly PlaywrightSuite[];
  readonly specs?: readonly {
    readonly title: string;
    readonly tests: readonly { readonly status: string }[];
  }[];
}

interface PlaywrightReport {
  readonly suites: readonly PlaywrightSuite[];
}

/** Counts Playwright's JSON report. A flaky test counts as failed: a journey works every time or it does not work. */
export function tallyOfPlaywright(report: unknown, exitedWell: boolean): Tally {
  if (!isPlaywrightReport(report)) return { ...NOTHING, failed: 1, notes: ['journeys: Playwright left no report'] };
  let passed = 0;
  let failed = 0;
  const notes: string[] = [];
  const queue: PlaywrightSuite[] = [...report.suites];
  for (let suite = queue.shift(); suite; suite = queue.shift()) {
    queue.push(...(suite.suites ?? []));
    for (const spec of suite.specs ?? []) {
      for (const test of spec.tests) {
        if (test.status === 'expected') passed += 1;
        else if (test.status === 'skipped') notes.push(`journeys: skipped: ${spec.title}`);
        else {
          failed += 1;
          notes.push(`journeys: failed: ${spec.title}`);
        }
      }
    }
  }
  return unexplained({ passed, failed, notes }, exitedWell, 'journeys');
}

/** A runner that exits badly with no failed test (no build, no server, an error between tests), or ran none, failed. */
function unexplained(tally: Tally, exitedWell: boolean, name: string): Tally {
  const fault = (said: string): Tally => ({ ...tally, failed: tally.failed + 1, notes: [...tally.notes, said] });
  if (!exitedWell && tally.failed === 0) return fault(`${name}: the runner failed outside any test; see above`);
  if (tally.passed + tally.failed === 0) return fault(`${name}: none ran`);
  return tally;
}

function isVitestReport(value: unknown): value is VitestReport {
  return typeof value === 'object' && value !== null && Array.isArray((value as Partial<VitestReport>).testResults);
}

function isPlaywrightReport(value: unknown): value is PlaywrightReport {
  return typeof value === 'object' && value !== null && Array.isArray((value as Partial<PlaywrightReport>).suites);
}
