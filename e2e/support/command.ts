import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import type { Design } from '../../src/vocabulary/design';
import type { Finding } from '../../src/vocabulary/finding';
import type { Part } from '../../src/vocabulary/part';

const root = join(import.meta.dirname, '..', '..');

/** What the command line writes. Throws when it refuses; a finding that stops the job is no refusal. */
export function command(...words: string[]): string {
  const done = spawnSync(process.execPath, ['--import', 'tsx', 'src/cli/main.ts', ...words], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 100_000_000,
  });
  if (done.status !== 0 && done.status !== 1) throw new Error(`${words.join(' ')}: ${done.status} ${done.stderr}`);
  return done.stdout;
}

/** Parts and totals of a job file, as the command line works them out. */
export const partsOf = (job: string): { readonly parts: readonly Part[]; readonly totals: Design['totals'] } =>
  JSON.parse(command('parts', job, '--format', 'json'));

/** The setting-out of a job file. */
export const rodOf = (job: string): Pick<Design, 'rod' | 'framing' | 'marks'> =>
  JSON.parse(command('rod', job, '--format', 'json'));

/** What the checks find in a job file. */
export const findingsOf = (job: string): readonly Finding[] =>
  JSON.parse(command('check', job, '--format', 'json')).findings;
