import { layers } from '../../src/flow';
import { addRun, addWall, setEnd } from '../../src/job/edits';
import { endFields, MOST, rhythmFields, runFields, surveyFields } from '../../src/job/fields';
import type { EndCondition, Job, Plan, Rhythm, Run } from '../../src/vocabulary/job';
import type { RodRun } from '../../src/vocabulary/rod';

/** An end of the whole plan, by its name in the job. */
export type EndName = 'leftEnd' | 'rightEnd';

/** The layers over which a length can be taken. */
export const layerOptions = layers.map((name) => ({ value: name, label: `the ${name}` }));

/** One more run after the last, over the same layer as that one, round a square outside corner. */
export function withNextRun(job: Job): Job {
  const { runs } = job.unit.plan;
  const over = runs.at(-1)?.over ?? 'frame';
  return addRun(job, runs.length, { length: runFields.length.default, over, through: runFields.through.default });
}

/** Whether another run may be added. */
export const roomForRun = (job: Job): boolean => job.unit.plan.runs.length < MOST.runs;

/** An end of the kind named, with what that kind needs to begin with: a return is taken over the layer of the run beside it. */
export function endOfKind(kind: EndCondition['kind'], over: string): EndCondition {
  return kind === 'return' ? { kind, length: endFields.length.default, over } : { kind };
}

/** The run at an end of the plan. */
export const runAtEnd = ({ unit }: Job, which: EndName): Run | undefined =>
  unit.plan.runs.at(which === 'leftEnd' ? 0 : -1);

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

/** The end that stands against a wall of which nothing is surveyed yet: the left one first. */
const endWithoutWall = ({ leftEnd, rightEnd }: Plan): EndName | undefined => {
  const wants = (end: EndCondition): boolean => end.kind === 'wall' && end.wall === undefined;
  if (wants(leftEnd)) return 'leftEnd';
  return wants(rightEnd) ? 'rightEnd' : undefined;
};

/** Direction of a wall that stands square to the run at an end, degrees from −180 (not included) to 180. */
function squareTo(plan: Plan, end: EndName): number {
  const turned = end === 'leftEnd' ? 0 : plan.runs.slice(0, -1).reduce((sum, run) => sum + run.deflectionDeg, 0);
  const deg = surveyFields.directionDeg.default + turned;
  // Rounded off the noise of adding.
  return Number((180 - ((((180 - deg) % 360) + 360) % 360)).toFixed(6));
}

/**
 * One more surveyed wall, under a name that is free. It is the wall of the end that stands against one and has none yet, square to
 * it until its direction is typed.
 */
export function withNextWall(job: Job): Job {
  const { walls } = job.survey;
  const { plan } = job.unit;
  let n = walls.length + 1;
  while (walls.some((wall) => wall.name === `Wall ${n}`)) n += 1;
  const name = `Wall ${n}`;
  const end = endWithoutWall(plan);
  const directionDeg = end ? squareTo(plan, end) : surveyFields.directionDeg.default;
  const walled = addWall(job, { name, directionDeg, leanDeg: surveyFields.leanDeg.default });
  return end ? setEnd(walled, end === 'leftEnd' ? 'left' : 'right', { kind: 'wall', wall: name }) : walled;
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
