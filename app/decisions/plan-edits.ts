import { addRun, addWall } from '../../src/job/edits';
import { endFields, MOST, rhythmFields, runFields, surveyFields } from '../../src/job/fields';
import type { EndCondition, Job, Rhythm } from '../../src/vocabulary/job';
import type { RodRun } from '../../src/vocabulary/rod';

/** One more run after the last, over the same layer as that one, round a square outside corner. */
export function withNextRun(job: Job): Job {
  const { runs } = job.unit.plan;
  const over = runs.at(-1)?.over ?? 'frame';
  return addRun(job, runs.length, { length: runFields.length.default, over, through: runFields.through.default });
}

/** Whether another run may be added. */
export const roomForRun = (job: Job): boolean => job.unit.plan.runs.length < MOST.runs;

/** An end of the kind named, with what that kind needs to begin with. */
export function endOfKind(kind: EndCondition['kind']): EndCondition {
  return kind === 'return' ? { kind, length: endFields.length.default } : { kind };
}

/** Centres of the pillars that stand between the end ones now; none where none stands. */
const between = (run: RodRun | undefined): readonly number[] =>
  (run?.pillars ?? []).filter(({ where }) => where === 'between').map(({ centre }) => centre);

/** How the bays of a run begin when it is told to differ from the pillars' rule: from what stands there now, where that is known. */
export function rhythmOfKind(by: Rhythm['by'] | 'pillars', run: RodRun | undefined): Rhythm | undefined {
  switch (by) {
    case 'pillars':
      return undefined;
    case 'count':
      return { by, count: Math.max(1, run?.bays.length ?? rhythmFields.count.default) };
    case 'pitch':
      return { by, pitch: rhythmFields.pitch.default };
    case 'marks':
      return { by, marks: between(run) };
  }
}

/** One more surveyed wall, under a name that is free. */
export function withNextWall(job: Job): Job {
  const { walls } = job.survey;
  let n = walls.length + 1;
  while (walls.some((wall) => wall.name === `Wall ${n}`)) n += 1;
  const { directionDeg, leanDeg } = surveyFields;
  return addWall(job, { name: `Wall ${n}`, directionDeg: directionDeg.default, leanDeg: leanDeg.default });
}

/** Gives a surveyed wall another name; ends that stand against it keep doing so. The name must be free. */
export function withWallRenamed(job: Job, index: number, name: string): Job {
  const old = job.survey.walls[index]?.name;
  const moved = (end: EndCondition): EndCondition =>
    end.kind === 'wall' && end.wall === old ? { ...end, wall: name } : end;
  const { plan } = job.unit;
  return {
    ...job,
    survey: { ...job.survey, walls: job.survey.walls.map((wall, i) => (i === index ? { ...wall, name } : wall)) },
    unit: { ...job.unit, plan: { ...plan, leftEnd: moved(plan.leftEnd), rightEnd: moved(plan.rightEnd) } },
  };
}
