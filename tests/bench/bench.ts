/**
 * `npm run bench`: how long the engine takes, against the bounds that the design must hold. Medians, in this process, after warming
 * up; every job is a new object, so that nothing is remembered. No test asserts these: they depend on the machine.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { meshOf } from '../../src/base/solid/mesh';
import { design, readJob } from '../../src/flow';
import type { Job } from '../../src/vocabulary/job';
import { unitOf } from './unit-of';

const DEMO = join(import.meta.dirname, '..', '..', 'public', 'examples', 'corner-return.job.json');

interface Row {
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

/**
 * Median time in ms of some work, each time on something newly made, whose making is not timed. Warmed up until the engine of the language has
 * made its fast code of it, which takes some hundred rounds: as when a size is dragged, not as on the first click.
 */
function timeOf<T>(times: number, make: () => T, work: (made: T) => void): number {
  for (let i = 0; i < 2 * times; i++) work(make());
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

const small = demo();
const long = unitOf(12, true);
const whole = unitOf(9);
const meshing = timeOf(
  30,
  () => design(fresh(small)()).parts,
  (parts) => {
    for (const part of parts) meshOf(part);
  },
);
// Warm: or the first of these would be slower for coming first.
designTime(long, 10);
const growth = [3, 6, 12, 24].map((count) => [count, designTime(unitOf(count), 25)] as const);
const rows: readonly Row[] = [
  { what: `design of the demo (${partsIn(small)} parts)`, found: designTime(small, 60), bound: 8, unit: 'ms' },
  { what: `design of a 30 m front (${partsIn(long)} parts)`, found: designTime(long, 30), bound: 40, unit: 'ms' },
  {
    what: `everything on, fewest sections (${partsIn(whole)} parts)`,
    found: designTime(whole, 30),
    bound: 60,
    unit: 'ms',
  },
  {
    what: `growth over ${growth.map(([n]) => n).join(', ')} runs, exponent`,
    found: exponentOf(growth),
    bound: 1.15,
    unit: '',
  },
  { what: 'meshes of all parts of the demo', found: meshing, bound: 15, unit: 'ms' },
];

const width = Math.max(...rows.map((row) => row.what.length));
for (const { what, found, bound, unit } of rows) {
  const figures = `${found.toFixed(2).padStart(8)} ${unit.padEnd(2)}  at most ${String(bound).padStart(5)} ${unit.padEnd(2)}`;
  process.stdout.write(`${what.padEnd(width)}  ${figures}  ${found <= bound ? 'holds' : 'over'}\n`);
}
