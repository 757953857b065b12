import { defaultsOf } from '../base/fields';
import type { BayWish, Flap, Job, JoinMark, Joins, Opening, Unit } from '../vocabulary/job';
import { setRun } from './edits';
import { MOST } from './fields';
import { bayFields, flapFields } from './fields-making';

/*
 * Edits of what is made and fitted: joins, openings, single bays, flaps. As in edits.ts, what an edit leaves alone stays the same
 * object, and one that changes nothing gives back the job itself.
 */

/** How the unit is taken apart. */
export const setJoins = (job: Job, joins: Joins): Job => withUnit(job, { joins });

/** Adds a join by hand; a unit that was joined otherwise is joined by hand from then on. The same mark twice is one mark. */
export function addJoin(job: Job, mark: JoinMark): Job {
  const { joins } = job.unit;
  const at = joins.by === 'hand' ? joins.at : [];
  if (at.some((old) => old.run === mark.run && old.x === mark.x)) return job;
  return setJoins(job, { by: 'hand', at: [...at, mark] });
}

/** Takes a join marked by hand away. Throws when there is none of that number. */
export function removeJoin(job: Job, index: number): Job {
  const { joins } = job.unit;
  if (joins.by !== 'hand' || !joins.at[index]) throw new Error(`no join ${index} marked by hand`);
  return setJoins(job, { by: 'hand', at: without(joins.at, index) });
}

/** Adds an opening. Throws when there are as many as a file may hold. */
export function addOpening(job: Job, opening: Opening): Job {
  if (job.unit.openings.length >= MOST.openings) throw new Error(`a unit has at most ${MOST.openings} openings`);
  return withUnit(job, { openings: [...job.unit.openings, opening] });
}

/** Changes some of what an opening says. Throws when there is none of that number. */
export function setOpening(job: Job, index: number, change: Partial<Opening>): Job {
  const old = job.unit.openings[index];
  if (!old) throw new Error(`no opening ${index}: the unit has ${job.unit.openings.length}`);
  const keys = Object.keys(change) as (keyof Opening)[];
  if (keys.every((key) => Object.is(old[key], change[key]))) return job;
  return withUnit(job, { openings: job.unit.openings.map((o, i) => (i === index ? { ...o, ...change } : o)) });
}

/** Takes an opening away. Throws when there is none of that number. */
export function removeOpening(job: Job, index: number): Job {
  if (!job.unit.openings[index]) throw new Error(`no opening ${index}: the unit has ${job.unit.openings.length}`);
  return withUnit(job, { openings: without(job.unit.openings, index) });
}

/** What one bay is, by run number and bay number (1 = first): changes what is said of it, or begins to say something. */
export function setBay(job: Job, run: number, bay: number, change: Partial<Omit<BayWish, 'run' | 'bay'>>): Job {
  const { bays } = job.unit;
  const index = bays.findIndex((b) => b.run === run && b.bay === bay);
  if (index < 0) return withUnit(job, { bays: [...bays, { ...defaultsOf(bayFields), run, bay, ...change }] });
  const old = bays[index];
  if ((Object.keys(change) as (keyof typeof change)[]).every((key) => Object.is(old[key], change[key]))) return job;
  return withUnit(job, { bays: bays.map((b, i) => (i === index ? { ...b, ...change } : b)) });
}

/** Makes a bay like the others again. */
export function clearBay(job: Job, run: number, bay: number): Job {
  const kept = job.unit.bays.filter((b) => b.run !== run || b.bay !== bay);
  return kept.length === job.unit.bays.length ? job : withUnit(job, { bays: kept });
}

/** Hangs a flap after a run, or changes the one that is there. */
export const setFlap = (job: Job, run: number, change: Partial<Flap>): Job =>
  setRun(job, run, { flap: { ...defaultsOf(flapFields), ...job.unit.plan.runs[run]?.flap, ...change } });

/** Takes the flap after a run away. */
export const removeFlap = (job: Job, run: number): Job => setRun(job, run, { flap: undefined });

const withUnit = (job: Job, part: Partial<Unit>): Job => ({ ...job, unit: { ...job.unit, ...part } });

const without = <T>(list: readonly T[], index: number): readonly T[] => list.filter((_, i) => i !== index);
