import type { Job, Rhythm } from '../vocabulary/job';

/** A run before its corners are worked out: the job's runs in order, with a return before or after them where an end asks for one. */
export interface RunSeed {
  readonly id: string;
  readonly name: string;
  readonly jobIndex: number | null;
  readonly length: number;
  readonly over: string;
  /** Turn to the next seed, degrees; 0 for the last. */
  readonly deflectionDeg: number;
  readonly through: 'this' | 'next';
  readonly rhythm?: Rhythm;
}

/** A return turns the front square round the end, so that its length is the depth it covers. */
const RETURN_TURN_DEG = 90;

/** A, B … Z, AA, AB …: the letter of the nth run (0 = A). */
export const runLetter = (n: number): string =>
  n < 26 ? String.fromCharCode(65 + n) : runLetter(Math.floor(n / 26) - 1) + runLetter(n % 26);

/** The runs in order from left to right as seen from the front, returns included (RL left, RR right). */
export function seedsOf(job: Job): readonly RunSeed[] {
  const { runs, leftEnd, rightEnd } = job.unit.plan;
  const seeds: RunSeed[] = runs.map((run, i) => ({
    id: runLetter(i),
    name: `Run ${runLetter(i)}`,
    jobIndex: i,
    length: run.length,
    over: run.over,
    deflectionDeg: i < runs.length - 1 ? run.deflectionDeg : rightEnd.kind === 'return' ? RETURN_TURN_DEG : 0,
    through: i < runs.length - 1 ? run.through : 'this',
    rhythm: run.rhythm,
  }));
  if (leftEnd.kind === 'return')
    seeds.unshift({
      id: 'RL',
      name: 'Left return RL',
      jobIndex: null,
      length: leftEnd.length,
      over: leftEnd.over ?? 'frame',
      deflectionDeg: RETURN_TURN_DEG,
      through: 'next',
    });
  if (rightEnd.kind === 'return')
    seeds.push({
      id: 'RR',
      name: 'Right return RR',
      jobIndex: null,
      length: rightEnd.length,
      over: rightEnd.over ?? 'frame',
      deflectionDeg: 0,
      through: 'this',
    });
  return seeds;
}
