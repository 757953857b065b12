import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { elevationOf } from '../../src/drawings/elevation.ts';
import { cuttingCsv, partsCsv } from '../../src/exports/csv.ts';
import { elevationSheet, runSheet } from '../../src/exports/sheets.ts';
import { alike, design, elevation, readJob, rodDrawing } from '../../src/flow.ts';
import type { Design } from '../../src/vocabulary/design.ts';

const root = join(import.meta.dirname, '..', '..');
const EXAMPLES = join(root, 'public', 'examples');
export const GOLDENS = join(root, 'tests', 'golden');
const JOB = '.job.json';

/** One file that the engine must go on making, and how it is made. */
export interface Golden {
  /** The file's name in tests/golden, and what `npm run golden` calls it. */
  readonly file: string;
  make(): string;
}

/** Runs besides the first of which elevations are kept too: both sides of an inside corner, a short run between two mitres. */
const MORE_RUNS: Readonly<Record<string, string>> = { 'inside-corner': 'B', canted: 'B', 'corner-return': 'B' };
/** The example that is kept from behind too: shelves, doors, openings, joins. */
const FROM_BEHIND = 'corner-return';
/** The example that is kept in inches too. */
const IN_INCHES = 'corner-return';

/** Every example job gives the elevations and the rod of its first run, its parts and its cutting list; some more. */
export function goldens(): readonly Golden[] {
  const all = examples().flatMap((name) => {
    const worked = (): Design => workedExample(name);
    const first = (): string => worked().rod.runs[0].id;
    const more = MORE_RUNS[name];
    return [
      ...elevations(name, worked, first),
      ...(more === undefined ? [] : elevations(`${name}.${more}`, worked, () => more)),
      { file: `${name}.rod.svg`, make: () => runSheet(worked(), first(), rodDrawing) },
      { file: `${name}.parts.csv`, make: () => partsCsv(worked()) },
      { file: `${name}.cutting.csv`, make: () => cuttingCsv(worked(), alike) },
    ];
  });
  const inches = (): Design => design({ ...workedExample(IN_INCHES).job, units: 'inch', maker: { name: 'A. Joiner' } });
  const behind = {
    file: `${FROM_BEHIND}.behind.svg`,
    make: () => runSheet(workedExample(FROM_BEHIND), 'A', (made, run) => elevationOf(made, run, 'behind')),
  };
  return [...all, behind, ...elevations(`${IN_INCHES}.inch`, inches, () => 'B')];
}

const elevations = (name: string, worked: () => Design, run: () => string): readonly Golden[] =>
  (['front', 'framing'] as const).map((kind) => ({
    file: `${name}.${kind}.svg`,
    make: () => elevationSheet(worked(), run(), kind, elevation),
  }));

/** Names of the example jobs, in order. Throws when there are none. */
export function examples(): readonly string[] {
  const names = readdirSync(EXAMPLES)
    .filter((file) => file.endsWith(JOB))
    .map((file) => file.slice(0, -JOB.length))
    .sort();
  if (names.length === 0) throw new Error('public/examples holds no job');
  return names;
}

/** An example job, worked out. Throws when the file can't be read as a job. */
export function workedExample(name: string): Design {
  const result = readJob(readFileSync(join(EXAMPLES, `${name}${JOB}`), 'utf8'));
  if (!result.ok)
    throw new Error(`${name}: ${result.issues.map(({ path, message }) => `${path}: ${message}`).join('; ')}`);
  return design(result.value);
}

/** What is kept, or null when it is missing. */
export function kept(file: string): string | null {
  const path = join(GOLDENS, file);
  return existsSync(path) ? readFileSync(path, 'utf8') : null;
}

/** Files in tests/golden that nothing makes any more. */
export const orphans = (): readonly string[] => {
  const made = new Set(goldens().map(({ file }) => file));
  return readdirSync(GOLDENS).filter((file) => !made.has(file));
};

/** Numbers may differ by this: the last place written, 0.01, and float noise across machines that turns its rounding. */
const SAME_NUMBER = 0.0101;
const NUMBER = /-?\d+(?:\.\d+)?/g;

/** Where two texts first differ: words must be the same, numbers nearly. Null when they are alike. */
export function difference(before: string, after: string): string | null {
  const [old, now] = [before.split('\n'), after.split('\n')];
  for (let i = 0; i < Math.max(old.length, now.length); i += 1) {
    if (!matches(old[i] ?? '', now[i] ?? ''))
      return `line ${i + 1}:\n  kept: ${old[i] ?? '(ends)'}\n  made: ${now[i] ?? '(ends)'}`;
  }
  return null;
}

function matches(a: string, b: string): boolean {
  if (a === b) return true;
  if (a.replace(NUMBER, '#') !== b.replace(NUMBER, '#')) return false;
  const [x, y] = [a.match(NUMBER) ?? [], b.match(NUMBER) ?? []];
  return x.every((text, i) => Math.abs(Number(text) - Number(y[i])) <= SAME_NUMBER);
}
