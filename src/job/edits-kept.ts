import type { Job, Plan, Run, Survey } from '../vocabulary/job';

/*
 * What all edits share: what an edit leaves alone stays the same object, and one that changes nothing gives back the job itself.
 */

/** The run of that index. Throws when there is none. */
export function runAt(job: Job, index: number): Run {
  const run = job.unit.plan.runs[index];
  if (!run) throw new Error(`no run ${index}: the plan has ${job.unit.plan.runs.length}`);
  return run;
}

/** A run without the things of which it says nothing. */
export function withoutUndefined(run: Run): Run {
  return Object.fromEntries(Object.entries(run).filter(([, value]) => value !== undefined)) as unknown as Run;
}

/** The job with part of its plan new; the job itself when the part is what was there. */
export function withPlan(job: Job, part: Partial<Plan>): Job {
  const plan = merged(job.unit.plan, part);
  return plan === job.unit.plan ? job : { ...job, unit: { ...job.unit, plan } };
}

/** The job with part of its survey new; the job itself when the part is what was there. */
export function withSurvey(job: Job, part: Partial<Survey>): Job {
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
