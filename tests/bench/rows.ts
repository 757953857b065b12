/**
 * The rows of `npm run bench`: how long the engine takes, against the bounds that the design must hold. Medians after warming up; every job
 * is a new object, so that nothing is remembered. Run with the number of a row it prints that row; without one, how many there are.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { meshOf } from '../../src/base/solid/mesh';
import { design, readJob } from '../../src/flow';
import type { Job } from '../../src/vocabulary/job';
import { unitOf } from './unit-of';

/** It is run from the project's folder. */
const DEMO = join(process.cwd(), 'public', 'examples', 'corner-return.job.json');

export interface Row {
  readonly what: string;
  readonly found: number;
  readonly bound: number;
  readonly unit: string;
}

function median(numbers: readonly number[]): number {
  const rising = [...numbers].sort((a, b) => a - b);
  const half = rising.length / 2;
  return rising.length % 2 ? rising[Math.floor(half)] : (rising[half - 1] + rising[half]) / 2;
}

/** So long it is warmed up, ms. */
const WARM = 4000;

/**
 * Median time in ms of some work, each time on something newly made, whose making is not timed. Warmed up until the engine of the language has
 * made its fast code of it, which takes some hundred rounds: as when a size is dragged, not as on the first click.
 */
function timeOf<T>(times: number, make: () => T, work: (made: T) => void): number {
  for (const from = performance.now(); performance.now() < from + WARM; ) work(make());
  return median(
    Array.from({ length: times }, () => {
      const made = make();
      const from = performance.now();
      work(made);
      return performance.now() - from;
    }),
  );
}

/** Slope of the line of least squares through (log x, log y): 1 when y grows as x does. */
function exponentOf(points: readonly (readonly [number, number])[]): number {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)] as const);
  const [mx, my] = [0, 1].map((k) => logs.reduce((sum, p) => sum + p[k], 0) / logs.length);
  return logs.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0) / logs.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
}

function demo(): Job {
  const read = readJob(readFileSync(DEMO, 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

const fresh = (job: Job) => (): Job => structuredClone(job);
const designTime = (job: Job, times: number): number => timeOf(times, fresh(job), design);
const partsIn = (job: Job): number => design(job).parts.length;

/** A row of the table; `measure` is run in a process of its own. */
interface Measured {
  readonly what: () => string;
  readonly bound: number;
  readonly unit: string;
  readonly measure: () => number;
}

const GROWTH = [3, 6, 12, 24];
const MEASURED: readonly Measured[] = [
  {
    what: () => `design of the demo (${partsIn(demo())} parts)`,
    bound: 8,
    unit: 'ms',
    measure: () => designTime(demo(), 60),
  },
  {
    what: () => `design of a 30 m front (${partsIn(unitOf(12, true))} parts)`,
    bound: 40,
    unit: 'ms',
    measure: () => designTime(unitOf(12, true), 30),
  },
  {
    what: () => `everything on, fewest sections (${partsIn(unitOf(9))} parts)`,
    bound: 60,
    unit: 'ms',
    measure: () => designTime(unitOf(9), 30),
  },
  {
    what: () => `growth over ${GROWTH.join(', ')} runs, exponent`,
    bound: 1.15,
    unit: '',
    measure: () => exponentOf(GROWTH.map((count) => [count, designTime(unitOf(count), 25)] as const)),
  },
  {
    what: () => 'meshes of all parts of the demo',
    bound: 15,
    unit: 'ms',
    measure: () =>
      timeOf(
        30,
        () => design(fresh(demo())()).parts,
        (parts) => {
          for (const part of parts) meshOf(part);
        },
      ),
  },
];

const asked = process.argv[2];
if (asked === undefined) process.stdout.write(String(MEASURED.length));
else {
  const { what, bound, unit, measure } = MEASURED[Number(asked)];
  process.stdout.write(JSON.stringify({ what: what(), found: measure(), bound, unit } satisfies Row));
}
