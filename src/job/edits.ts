import type { Decision } from '../vocabulary/field';
import type { EndCondition, Job, Plan, Rhythm, Run, Survey, SurveyedLevel, SurveyedWall } from '../vocabulary/job';
import { MOST, runFields } from './fields';
import { type Path, setIn } from './path';

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

/**
 * Puts a run at a place among the runs (0: the first; as many as there are: the last), turned by `deflectionDeg` against the run
 * on its left, or on its right where it is the first. The corner that was at its place moves to its right end. Throws when the
 * plan has 40 runs.
 */
export function addRun(
  job: Job,
  at: number,
  run: Omit<Run, 'deflectionDeg'>,
  deflectionDeg = runFields.deflectionDeg.default,
): Job {
  const { runs } = job.unit.plan;
  if (runs.length >= MOST.runs) throw new Error(`a plan has at most ${MOST.runs} runs`);
  if (!Number.isInteger(at) || at < 0 || at > runs.length)
    throw new Error(`no run can stand at place ${at} of ${runs.length}`);
  const before = runs[at - 1];
  const added: Run = { ...run, deflectionDeg: before ? before.deflectionDeg : deflectionDeg };
  const left = runs.slice(0, at).map((old, i) => (i === at - 1 ? { ...old, deflectionDeg } : old));
  const moved = <T extends { readonly run: number }>(things: readonly T[]): readonly T[] =>
    things.map((thing) => (thing.run > at ? { ...thing, run: thing.run + 1 } : thing));
  return withCounted(withPlan(job, { runs: [...left, added, ...runs.slice(at)] }), moved);
}

/**
 * Takes a run away, with the levels, openings, bays and joins that are told along it. The corner on its left stays, now between its neighbours; taking the last
 * run away takes its corner too. Throws for the only run.
 */
export function removeRun(job: Job, index: number): Job {
  runAt(job, index);
  const { runs } = job.unit.plan;
  if (runs.length === 1) throw new Error('the only run of a plan stays');
  const wasLast = index === runs.length - 1;
  const kept = runs
    .filter((_, i) => i !== index)
    .map((run, i) => (wasLast && i === index - 1 && run.deflectionDeg !== 0 ? { ...run, deflectionDeg: 0 } : run));
  const moved = <T extends { readonly run: number }>(things: readonly T[]): readonly T[] =>
    things
      .filter((thing) => thing.run !== index + 1)
      .map((thing) => (thing.run > index + 1 ? { ...thing, run: thing.run - 1 } : thing));
  return withCounted(withPlan(job, { runs: kept }), moved);
}

/** The job with all that is told by its run's number moved with the runs: levels, openings, bays, joins by hand. */
function withCounted(job: Job, moved: <T extends { readonly run: number }>(things: readonly T[]) => readonly T[]): Job {
  const { openings, bays, joins } = job.unit;
  const unit = {
    ...job.unit,
    openings: moved(openings),
    bays: moved(bays),
    joins: joins.by === 'hand' ? { ...joins, at: moved(joins.at) } : joins,
  };
  return withSurvey({ ...job, unit }, { levels: moved(job.survey.levels) });
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

function runAt(job: Job, index: number): Run {
  const run = job.unit.plan.runs[index];
  if (!run) throw new Error(`no run ${index}: the plan has ${job.unit.plan.runs.length}`);
  return run;
}

function withoutUndefined(run: Run): Run {
  return Object.fromEntries(Object.entries(run).filter(([, value]) => value !== undefined)) as unknown as Run;
}

/** The job with part of its plan new; the job itself when the part is what was there. */
function withPlan(job: Job, part: Partial<Plan>): Job {
  const plan = merged(job.unit.plan, part);
  return plan === job.unit.plan ? job : { ...job, unit: { ...job.unit, plan } };
}

function withSurvey(job: Job, part: Partial<Survey>): Job {
  const survey = merged(job.survey, part);
  return survey === job.survey ? job : { ...job, survey };
}

/** Lists of the very same things count as the same list. */
function merged<T extends object>(old: T, part: Partial<T>): T {
  const changed = (Object.keys(part) as (keyof T)[]).filter((key) => !sameThing(old[key], part[key]));
  return changed.length === 0 ? old : { ...old, ...Object.fromEntries(changed.map((key) => [key, part[key]])) };
}

function sameThing(a: unknown, b: unknown): boolean {
  if (Array.isArray(a) && Array.isArray(b)) return a.length === b.length && a.every((item, i) => Object.is(item, b[i]));
  return Object.is(a, b);
}
