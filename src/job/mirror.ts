import type { Decision } from '../vocabulary/field';
import type { Job, Rhythm, Run, Survey, SurveyedWall } from '../vocabulary/job';
import { mirroredMaking } from './mirror-making';
import { kept, withinHalfTurn } from './turned';

/** The length of a run's frame line, mm, as the rod has it. */
type FrameLength = (run: number) => number;

/** How many bays a run has, as the rod has it. */
export type BayCount = (run: number) => number;

/**
 * The same unit as seen in a mirror: what was at the left is at the right.
 * - Runs in reverse order, ends swapped. A corner belongs to the run on its left, so each moves by one run, and the run that
 *   goes through is named from the other side. What the last run says of a corner that isn't there stays with the last.
 * - Pillar marks and floor levels are measured from the left end of the frame line, so they become its length less themselves.
 *   A run taken over the frame has that length; for any other the rod's is asked. Throws when it is needed and not given.
 * - Decisions that say 'left' or 'right' (where the studs' module starts) say the other.
 * - Joins, openings and single bays stand at their mirror image: those are counted from the left too. Flaps change their hinge.
 *   Throws when bays are decided on and `bayCount` is not given.
 * - Walls are turned with the plan: their direction is from what is now the first run. A lean stays what it is.
 */
export function mirrorJob(job: Job, frameLength?: FrameLength, bayCount?: BayCount): Job {
  const { plan, elements } = job.unit;
  const lengthOf = (index: number): number => {
    const run = plan.runs[index];
    if (run?.over === 'frame') return run.length;
    if (!frameLength)
      throw new Error(`run ${index + 1} is not taken over the frame: its frame length is needed to mirror it`);
    return frameLength(index);
  };
  return {
    ...job,
    survey: mirroredSurvey(job, lengthOf),
    unit: {
      ...job.unit,
      plan: { runs: mirroredRuns(plan.runs, lengthOf), leftEnd: plan.rightEnd, rightEnd: plan.leftEnd },
      elements: Object.fromEntries(Object.entries(elements).map(([kind, decisions]) => [kind, otherHand(decisions)])),
      ...mirroredMaking(job.unit, (run, x) => kept(lengthOf(run) - x), bayCount),
    },
  };
}

function mirroredRuns(runs: readonly Run[], lengthOf: FrameLength): Run[] {
  const count = runs.length;
  return runs.map((_, i) => {
    const from = count - 1 - i;
    const { rhythm, ...run } = runs[from] as Run;
    const corner = runs[i === count - 1 ? count - 1 : from - 1] as Run;
    const through = i === count - 1 ? corner.through : OTHER[corner.through];
    const { flap } = corner;
    const turned: { -readonly [K in keyof Run]: Run[K] } = {
      ...run,
      deflectionDeg: corner.deflectionDeg,
      through,
    };
    // A flap hangs at the corner to the next run, as the turn does.
    delete turned.flap;
    if (flap) turned.flap = { ...flap, hinge: flap.hinge === 'left' ? 'right' : 'left' };
    return rhythm ? { ...turned, rhythm: mirroredRhythm(rhythm, () => lengthOf(from)) } : turned;
  });
}

const OTHER = { this: 'next', next: 'this' } as const;

function mirroredRhythm(rhythm: Rhythm, length: () => number): Rhythm {
  if (rhythm.by !== 'marks') return rhythm;
  return { by: 'marks', marks: rhythm.marks.map((mark) => kept(length() - mark)).reverse() };
}

function mirroredSurvey({ survey, unit }: Job, lengthOf: FrameLength): Survey {
  const { runs } = unit.plan;
  // In the mirror, and turned so that the first run points along x again, a direction δ becomes Σ deflections − δ.
  const turn = runs.slice(0, -1).reduce((sum, run) => sum + run.deflectionDeg, 0);
  return {
    walls: survey.walls.map(
      (wall): SurveyedWall => ({ ...wall, directionDeg: withinHalfTurn(kept(turn - wall.directionDeg)) }),
    ),
    levels: survey.levels.map((level) => ({
      ...level,
      run: runs.length + 1 - level.run,
      along: kept(lengthOf(level.run - 1) - level.along),
    })),
  };
}

function otherHand(decisions: Readonly<Record<string, Decision>>): Record<string, Decision> {
  return Object.fromEntries(
    Object.entries(decisions).map(([key, value]) => [
      key,
      value === 'left' ? 'right' : value === 'right' ? 'left' : value,
    ]),
  );
}
