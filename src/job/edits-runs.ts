import type { Job, JoinMark, Run } from '../vocabulary/job';
import { runAt, withoutUndefined, withPlan, withSurvey } from './edits-kept';
import { MOST, runFields } from './fields';
import { withinHalfTurn } from './turned';

/*
 * Runs added and taken away, with all that is told by their numbers. A corner belongs to the run on its left: its turn, which frame goes
 * through, the flap that hangs in it and the join marked at it.
 */

/**
 * Puts a run at a place among the runs (0: the first; as many as there are: the last), turned by `deflectionDeg` against the run
 * on its left, or on its right where it is the first. The corner that was at its place moves to its right end with all that belongs to
 * it; past the last run there is a corner only to a return. Surveyed walls stay where
 * they are: their directions are from what is now the first run. Throws when the plan has 40 runs.
 */
export function addRun(
  job: Job,
  at: number,
  run: Omit<Run, 'deflectionDeg'>,
  deflectionDeg = runFields.deflectionDeg.default,
): Job {
  const { runs, rightEnd } = job.unit.plan;
  if (runs.length >= MOST.runs) throw new Error(`a plan has at most ${MOST.runs} runs`);
  if (!Number.isInteger(at) || at < 0 || at > runs.length)
    throw new Error(`no run can stand at place ${at} of ${runs.length}`);
  const before = runs[at - 1];
  const isBetween = before !== undefined && at < runs.length;
  // A flap said after the last run waits for one to close on.
  const moved = isBetween ? { through: before.through, flap: before.flap ?? run.flap } : {};
  const added = withoutUndefined({ ...run, deflectionDeg: before?.deflectionDeg ?? deflectionDeg, ...moved });
  const left = runs.slice(0, at).map((old, i): Run => {
    if (i !== at - 1) return old;
    const { flap, ...rest } = old;
    if (isBetween) return { ...rest, deflectionDeg, through: run.through };
    return { ...old, deflectionDeg };
  });
  const cornerMoves = isBetween || rightEnd.kind === 'return';
  const numbered = (number: number): number => (number > at ? number + 1 : number);
  const planned = withPlan(job, { runs: [...left, added, ...runs.slice(at)] });
  return withCounted(before ? planned : wallsTurned(planned, deflectionDeg), numbered, (corner) =>
    at > 0 && corner === at && cornerMoves ? at + 1 : numbered(corner),
  );
}

/**
 * Takes a run away, with the levels, openings, bays and joins that are told along it. The corner on its left stays, now between its
 * neighbours; taking the last run away takes its corner too, with the flap and the join in it, and a join at a return's corner stays at
 * the return. Throws for the only run.
 */
export function removeRun(job: Job, index: number): Job {
  runAt(job, index);
  const { runs, rightEnd } = job.unit.plan;
  if (runs.length === 1) throw new Error('the only run of a plan stays');
  const wasLast = index === runs.length - 1;
  const kept = runs
    .filter((_, i) => i !== index)
    .map((run, i) => (wasLast && i === index - 1 ? withoutCorner(run) : run));
  const gone = index + 1;
  const numbered = (number: number): number | undefined =>
    number === gone ? undefined : number > gone ? number - 1 : number;
  const planned = withPlan(job, { runs: kept });
  const turned = index === 0 ? wallsTurned(planned, -runs[0].deflectionDeg) : planned;
  return withCounted(turned, numbered, (corner) => {
    if (!wasLast) return numbered(corner);
    if (corner === gone && rightEnd.kind === 'return') return index;
    return corner === index ? undefined : numbered(corner);
  });
}

/** Surveyed walls as told from another first run, against which the old one is turned by so much. */
const wallsTurned = (job: Job, deg: number): Job =>
  withSurvey(job, {
    walls: job.survey.walls.map((wall) =>
      deg === 0 ? wall : { ...wall, directionDeg: withinHalfTurn(wall.directionDeg + deg) },
    ),
  });

/** A run after which no other comes. */
function withoutCorner(run: Run): Run {
  if (run.deflectionDeg === 0 && !run.flap) return run;
  const { flap, ...rest } = run;
  return { ...rest, deflectionDeg: 0 };
}

/** The new number of a run or corner; undefined: gone, with what is told of it. */
type Numbered = (number: number) => number | undefined;

/** The job with all that is told by its run's number moved with the runs: levels, openings, bays, joins by hand. */
function withCounted(job: Job, ofRun: Numbered, ofCorner: Numbered): Job {
  const moved = <T extends { readonly run: number }>(things: readonly T[], by: (thing: T) => Numbered): readonly T[] =>
    things.flatMap((thing) => {
      const run = by(thing)(thing.run);
      return run === undefined ? [] : [run === thing.run ? thing : { ...thing, run }];
    });
  const along = (): Numbered => ofRun;
  const { openings, bays, joins } = job.unit;
  const unit = {
    ...job.unit,
    openings: moved(openings, along),
    bays: moved(bays, along),
    joins:
      joins.by === 'hand'
        ? { ...joins, at: moved(joins.at, ({ x }: JoinMark) => (x === undefined ? ofCorner : ofRun)) }
        : joins,
  };
  return withSurvey({ ...job, unit }, { levels: moved(job.survey.levels, along) });
}
