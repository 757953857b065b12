import type { Decision } from '../vocabulary/field';
import type { EndCondition, Job, Rhythm, Run, SurveyedLevel, SurveyedWall } from '../vocabulary/job';
import { runAt, withoutUndefined, withPlan, withSurvey } from './edits-kept';
import { type Path, setIn } from './path';

export { addRun, removeRun } from './edits-runs';

/*
 * Edits: job → job. The job given is never changed, and what an edit leaves alone is the same object as before, so that stages
 * which remember their last answer by reference are not run again. An edit that changes nothing gives back the job itself.
 * Ranges are not looked at here: the form keeps to its fields, and a file is checked when it is read.
 */

/** Sets one value, or takes an optional one away with `undefined`. Throws when the path leads nowhere. */
export function setAt(job: Job, path: Path, value: unknown): Job {
  return setIn(job, path, value);
}

/** Sets a decision of one room. */
export function setElement(job: Job, kind: string, key: string, value: Decision): Job {
  const decisions = { ...job.unit.elements[kind], [key]: value };
  if (Object.is(job.unit.elements[kind]?.[key], value)) return job;
  return { ...job, unit: { ...job.unit, elements: { ...job.unit.elements, [kind]: decisions } } };
}

/** Changes some of what a run says. `rhythm: undefined` lets the pillars' own rhythm rule again. */
export function setRun(job: Job, index: number, change: Partial<Run>): Job {
  const run = runAt(job, index);
  const keys = Object.keys(change) as (keyof Run)[];
  if (keys.every((key) => Object.is(run[key], change[key]))) return job;
  const changed = withoutUndefined({ ...run, ...change });
  return withPlan(job, { runs: job.unit.plan.runs.map((old, i) => (i === index ? changed : old)) });
}

export const setRhythm = (job: Job, index: number, rhythm: Rhythm | undefined): Job => setRun(job, index, { rhythm });

export function setEnd(job: Job, side: 'left' | 'right', end: EndCondition): Job {
  return withPlan(job, side === 'left' ? { leftEnd: end } : { rightEnd: end });
}

/** Adds a surveyed wall. Throws when there is one of that name. */
export function addWall(job: Job, wall: SurveyedWall): Job {
  if (job.survey.walls.some((old) => old.name === wall.name)) throw new Error(`there is a wall '${wall.name}' already`);
  return withSurvey(job, { walls: [...job.survey.walls, wall] });
}

/** Takes a surveyed wall away; an end that stood against it still stands against a wall, but none that was surveyed. */
export function removeWall(job: Job, name: string): Job {
  const walls = job.survey.walls.filter((wall) => wall.name !== name);
  if (walls.length === job.survey.walls.length) return job;
  const freed = (end: EndCondition): EndCondition =>
    end.kind === 'wall' && end.wall === name ? { kind: 'wall' } : end;
  const { leftEnd, rightEnd } = job.unit.plan;
  return withPlan(withSurvey(job, { walls }), { leftEnd: freed(leftEnd), rightEnd: freed(rightEnd) });
}

export const addLevel = (job: Job, level: SurveyedLevel): Job =>
  withSurvey(job, { levels: [...job.survey.levels, level] });

export const removeLevel = (job: Job, index: number): Job =>
  withSurvey(job, { levels: job.survey.levels.filter((_, i) => i !== index) });
