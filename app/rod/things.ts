import { MM_PER_INCH } from '../../src/base/lengths';
import { SAME_LENGTH } from '../../src/base/tolerance';
import { setAt } from '../../src/job/edits';
import { setOpening } from '../../src/job/edits-making';
import { joinFields, openingFields } from '../../src/job/fields-making';
import type { Design } from '../../src/vocabulary/design';
import type { Finding } from '../../src/vocabulary/finding';
import type { Job, Opening } from '../../src/vocabulary/job';
import type { PillarMark, RodRun } from '../../src/vocabulary/rod';
import { foundAt } from '../decisions/found';
import { markRun } from '../decisions/join-edits';
import type { Thing } from '../store/view';
import type { Above } from './layout';

/** An opening as it is wished for, whether it has its place or not. `low`, `high`: above the floor; through the top, back from its front edge. */
export interface OpeningOnRod {
  readonly thing: Thing & { readonly kind: 'opening' };
  readonly opening: Opening;
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  readonly refused: boolean;
}

/** A join: by hand it can be moved; one found by itself, or at a corner, stands where it stands. */
export interface JoinOnRod {
  readonly id: string;
  readonly x: number;
  readonly thing: (Thing & { readonly kind: 'join' }) | null;
  readonly refused: boolean;
}

/** Where a thing is decided, in the job. A bay's place in the list is known once something is said of it. */
export function pathOf(thing: Thing, job: Job): string | undefined {
  if (thing.kind === 'opening') return `/unit/openings/${thing.index}`;
  if (thing.kind === 'join') return `/unit/joins/at/${thing.index}`;
  const at = job.unit.bays.findIndex(({ run, bay }) => run === thing.run && bay === thing.bay);
  return at < 0 ? undefined : `/unit/bays/${at}`;
}

/** What the checks say of a thing. */
export function foundOf(thing: Thing, { job, findings }: Pick<Design, 'job' | 'findings'>): readonly Finding[] {
  const path = pathOf(thing, job);
  return path === undefined ? [] : foundAt(findings, path);
}

/** The openings of a run as the job wishes them. */
export function openingsOn(made: Pick<Design, 'job' | 'rod' | 'openings'>, run: RodRun): readonly OpeningOnRod[] {
  if (run.jobIndex === null) return [];
  const placed = new Set(made.openings.map(({ index }) => index));
  return made.job.unit.openings.flatMap((opening, index): OpeningOnRod[] => {
    if (opening.run - 1 !== run.jobIndex) return [];
    const high = opening.use === 'pipe' ? opening.width : opening.height;
    return [
      {
        thing: { kind: 'opening', index },
        opening,
        from: opening.x - opening.width / 2,
        to: opening.x + opening.width / 2,
        low: opening.z - high / 2,
        high: opening.z + high / 2,
        refused: !placed.has(index),
      },
    ];
  });
}

/** The joins of a run: those that stand, and the marks by hand that were refused. */
export function joinsOn(made: Pick<Design, 'job' | 'rod'>, run: RodRun): readonly JoinOnRod[] {
  const { joins } = made.job.unit;
  const marks = (joins.by === 'hand' ? joins.at : []).map((mark, index) => ({ ...mark, index }));
  const mine = marks.filter((mark) => mark.run === markRun(run));
  const standing = run.joins.map(({ id, x }): JoinOnRod => {
    const mark = mine.find((m) => m.x !== undefined && Math.abs(m.x - x) < SAME_LENGTH);
    return { id, x, thing: mark ? { kind: 'join', index: mark.index } : null, refused: false };
  });
  const told = new Set(standing.map(({ thing }) => thing?.index));
  const refused = mine.flatMap(({ x, index }): JoinOnRod[] =>
    x === undefined || told.has(index) ? [] : [{ id: '?', x, thing: { kind: 'join', index }, refused: true }],
  );
  const before = made.rod.runs[made.rod.runs.indexOf(run) - 1];
  const ends: JoinOnRod[] = [
    ...(before?.joinAtRight === undefined ? [] : [{ id: before.joinAtRight, x: 0, thing: null, refused: false }]),
    ...(run.joinAtRight === undefined ? [] : [{ id: run.joinAtRight, x: run.length, thing: null, refused: false }]),
  ];
  return [...standing, ...refused, ...ends];
}

/** What of a run needs room over the lanes of its board. */
export function aboveOn(made: Pick<Design, 'job' | 'rod' | 'openings'>, run: RodRun): Above {
  const throughTop = openingsOn(made, run).some(({ opening }) => opening.through === 'top');
  return { tags: joinsOn(made, run).length > 0, ...(throughTop ? { topDepth: made.rod.depth } : {}) };
}

/** Least way that a thing moves by hand, mm: one, or a sixteenth of an inch. */
export const stepOf = (units: Job['units']): number => (units === 'mm' ? 1 : MM_PER_INCH / 16);

const clamp = (value: number, { min, max }: { readonly min: number; readonly max: number }): number =>
  Math.max(min, Math.min(max, value));

/** To the nearest step, without the noise of dividing. */
export const toStep = (mm: number, step: number): number => Number((Math.round(mm / step) * step).toFixed(6));

/** How near a join has to be drawn to the middle of a pillar to be taken there, mm. */
const SNAP = 12;

/** Where a join is let go of: in the middle of a pillar that could cover it, when it is drawn near enough; else where it is. */
export function snapped(x: number, pillars: readonly Pick<PillarMark, 'centre' | 'where'>[]): number {
  const middles = pillars.flatMap(({ centre, where }) => (where === 'between' ? [centre] : []));
  const near = middles.filter((centre) => Math.abs(centre - x) <= SNAP);
  return near.length === 0 ? x : near.reduce((a, b) => (Math.abs(b - x) < Math.abs(a - x) ? b : a));
}

/** Where an arrow key leads from a place, a step at a time; up and down only where there is a height. Null for every other key. */
export function nudged(
  key: string,
  x: number,
  z: number | undefined,
  step: number,
): { readonly x: number; readonly z?: number } | null {
  if (key === 'ArrowLeft' || key === 'ArrowRight') return { x: key === 'ArrowLeft' ? x - step : x + step };
  if (z === undefined || (key !== 'ArrowUp' && key !== 'ArrowDown')) return null;
  return { x, z: key === 'ArrowUp' ? z + step : z - step };
}

/** The job with an opening or a join moved along its run, and an opening up, kept to what a job may say. A bay does not move. */
export function movedTo(job: Job, thing: Thing, x: number, z?: number): Job {
  if (thing.kind === 'opening') {
    const up = z === undefined ? {} : { z: clamp(z, openingFields.z) };
    return setOpening(job, thing.index, { x: clamp(x, openingFields.x), ...up });
  }
  return thing.kind === 'join' ? setAt(job, `/unit/joins/at/${thing.index}/x`, clamp(x, joinFields.x)) : job;
}
