/**
 * `npm test`: types, lint, every vitest test (the law of imports is among them), then the journeys in a browser.
 * The last line is `N passed, N failed`; the exit code is 1 when anything failed. All steps run, whatever fails before.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { addTallies, NOTHING, type Tally, tallyOfPlaywright, tallyOfStep, tallyOfVitest } from './tally.ts';

const root = join(import.meta.dirname, '..', '..');
const reports = mkdtempSync(join(tmpdir(), 'counterwright-'));

/** Runs a program of node_modules/.bin from the repository's root, its output passed through; true when it succeeded. */
function run(title: string, command: string, env: Record<string, string> = {}): boolean {
  process.stdout.write(`\n== ${title}\n`);
  const done = spawnSync(command, {
    cwd: root,
    shell: true,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, ...env },
  });
  return done.status === 0;
}

function readReport(path: string): unknown {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return null;
  }
}

function vitest(): Tally {
  const report = join(reports, 'vitest.json');
  const ok = run('tests', `npx vitest run --reporter=default --reporter=json --outputFile.json="${report}"`);
  return tallyOfVitest(readReport(report), ok);
}

function journeys(): Tally {
  const specs = readdirSync(join(root, 'e2e'), { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.spec.ts'),
  );
  if (specs.length === 0) {
    return { ...NOTHING, failed: 1, notes: ['journeys: e2e/ holds no *.spec.ts, so none could run'] };
  }
  const report = join(reports, 'playwright.json');
  const ok = run('journeys', 'npx playwright test --reporter=list,json', { PLAYWRIGHT_JSON_OUTPUT_NAME: report });
  return tallyOfPlaywright(readReport(report), ok);
}

let total: Tally = NOTHING;
try {
  total = addTallies([
    tallyOfStep('types', run('types', 'npm run --silent typecheck')),
    tallyOfStep('lint', run('lint', 'npm run --silent lint')),
    vitest(),
    journeys(),
  ]);
} catch (error) {
  const message = error instanceof Error ? error.message : String(error);
  total = addTallies([total, { ...NOTHING, failed: 1, notes: [`the run itself failed: ${message}`] }]);
} finally {
  rmSync(reports, { recursive: true, force: true });
}
process.stdout.write(
  `\n${total.notes.map((note) => `${note}\n`).join('')}${total.passed} passed, ${total.failed} failed\n`,
);
process.exitCode = total.failed > 0 ? 1 : 0;
