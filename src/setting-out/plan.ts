import { tenth } from '../base/tenth';
import type { Finding } from '../vocabulary/finding';
import type { Flap, Job, Rhythm, Run } from '../vocabulary/job';

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
  /** A flap between this seed and the next, where the next goes straight on. */
  readonly flap?: Flap;
}

/** A return turns the front square round the end, so that its length is the depth it covers. */
const RETURN_TURN_DEG = 90;

/** A, B … Z, AA, AB …: the letter of the nth run (0 = A). */
export const runLetter = (n: number): string =>
  n < 26 ? String.fromCharCode(65 + n) : runLetter(Math.floor(n / 26) - 1) + runLetter(n % 26);

/** A flap hangs only between two runs in one line. */
const hangs = ({ deflectionDeg }: Run, last: boolean): boolean => !last && deflectionDeg === 0;

/** Flaps that can't hang where they are wished: in a corner, or where no run follows. */
export function flapFaults({ unit }: Job): readonly Finding[] {
  const { runs } = unit.plan;
  return runs.flatMap((run, i): Finding[] => {
    const last = i === runs.length - 1;
    if (!run.flap || hangs(run, last)) return [];
    return [
      {
        severity: 'stop',
        rule: last ? 'flap-leads-nowhere' : 'flap-in-corner',
        subject: { run: runLetter(i), path: `/unit/plan/runs/${i}/flap` },
        value: last ? undefined : run.deflectionDeg,
        limit: last ? undefined : 0,
        message: last
          ? `A flap is wished after run ${runLetter(i)}, which is the last: there is nothing for it to close on.`
          : `A flap is wished between runs ${runLetter(i)} and ${runLetter(i + 1)}, which meet at an ${run.deflectionDeg > 0 ? 'outside' : 'inside'} corner of ${tenth(180 - Math.abs(run.deflectionDeg))}°; it hangs only where the next run goes straight on.`,
        source: 'geometry of the plan',
        remedy: last
          ? 'Add a run for it to close on, or take it away. It is left out.'
          : `Divide run ${runLetter(i)} or ${runLetter(i + 1)} in two, at least 100 mm from the corner, and hang it there. It is left out, and the corner stays.`,
      },
    ];
  });
}

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
    flap: hangs(run, i === runs.length - 1) ? run.flap : undefined,
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
