import { tenth } from '../base/tenth';
import type { Finding } from '../vocabulary/finding';
import type { JoinMark } from '../vocabulary/job';
import type { Bay, RodRun, RunJoin } from '../vocabulary/rod';

/** A piece of a run shorter than this, beside its two end studs, is no section: nothing could be fixed in it (common practice, no source). */
const LEAST_CLEAR = 100;

/** Width of the strip that covers a join where no pillar does, mm (common practice, no source). */
const COVER_WIDTH = 40;

/** A pillar must cover the join by at least this much on each side (common practice, no source). */
const LEAST_COVER = 10;

/** How far apart two joins of a run must be, mm: each section ends in a stud, and something must be left between. */
export const leastApart = (face: number): number => 2 * face + LEAST_CLEAR;

/** A run before sections are numbered. */
export type Unjoined = Omit<RodRun, 'joins' | 'joinAtRight' | 'sections' | 'crossLines' | 'backBays'>;

/** Where a run may be joined: behind the pillars between, and at the edges of bays, where a strip covers it. */
export interface Place extends Omit<RunJoin, 'id'> {}

/** Places for a join in one run, from left to right. `face`: of the frame's timber, two of which stand at a join. */
export function placesIn(run: Unjoined, face: number): readonly Place[] {
  if (!run.sound) return [];
  const pillars = run.pillars
    .filter((p) => p.where === 'between')
    .map((p): Place => ({ x: p.centre, behind: 'pillar', coverFrom: p.from, coverTo: p.to }));
  return [...pillars, ...run.bays.flatMap(stripsIn)]
    .filter((p) => roomFor(run, face, [], p.x) >= 0)
    .sort((a, b) => a.x - b.x);
}

/** At the edges of a bay beside its pillars, where it is wide enough. */
const stripsIn = (bay: Bay): readonly Place[] =>
  bay.to - bay.from > 2 * COVER_WIDTH
    ? [...(bay.mitredLeft ? [] : [strip(bay.from)]), ...(bay.mitredRight ? [] : [strip(bay.to - COVER_WIDTH)])]
    : [];

const strip = (from: number): Place => ({
  x: from + COVER_WIDTH / 2,
  behind: 'cover',
  coverFrom: from,
  coverTo: from + COVER_WIDTH,
});

/** How much clear length the shorter of the pieces beside x keeps, less the least that it must have. Not below 0: it can be joined there. */
function roomFor(run: Unjoined, face: number, joined: readonly number[], x: number): number {
  const left = x - Math.max(0, run.left.frameAt);
  const right = Math.min(run.length, run.right.frameAt) - x;
  return Math.min(left, right, ...joined.map((join) => Math.abs(join - x))) - leastApart(face);
}

export interface Joined {
  /** By run id. */
  readonly joins: ReadonlyMap<string, readonly Omit<RunJoin, 'id'>[]>;
  /** Runs at whose right-hand corner two sections meet. */
  readonly corners: ReadonlySet<string>;
  readonly findings: readonly Finding[];
}

/**
 * Gives the wished joins their places. One that no pillar covers, or that stands too near another or an end, is refused and said, with
 * the nearest place that would do. One that stands says where it is marked, where it is marked `byHand`.
 */
export function placeJoins(
  runs: readonly Unjoined[],
  wishes: readonly JoinMark[],
  face: number,
  byHand: boolean,
): Joined {
  const joins = new Map<string, Omit<RunJoin, 'id'>[]>();
  const corners = new Set<string>();
  const findings: Finding[] = [];
  wishes.forEach((wish, i) => {
    const path = `/unit/joins/at/${i}`;
    const run = runs.find((r) => (wish.run === 0 ? r.id === 'RL' : r.jobIndex === wish.run - 1));
    if (!run) findings.push(noSuchRun(wish.run, path));
    else if (wish.x === undefined) {
      if (run.right.kind === 'corner') corners.add(run.id);
      else findings.push(noCorner(run.id, path));
    } else if (run.sound) {
      const mine = joins.get(run.id) ?? [];
      const place = coverOf(run, wish.x);
      const room = place
        ? roomFor(
            run,
            face,
            mine.map((j) => j.x),
            wish.x,
          )
        : -1;
      if (place && room >= 0)
        joins.set(
          run.id,
          [...mine, byHand ? { ...place, path } : place].sort((a, b) => a.x - b.x),
        );
      else
        findings.push(
          refused(
            run,
            wish.x,
            face,
            mine.map((j) => j.x),
            place !== undefined,
            path,
          ),
        );
    }
  });
  return { joins, corners, findings };
}

/** What covers a join at x: a pillar, or a strip at a bay's edge. Undefined: nothing would. */
function coverOf(run: Unjoined, x: number): Place | undefined {
  const pillar = run.pillars.find((p) => p.where === 'between' && x >= p.from + LEAST_COVER && x <= p.to - LEAST_COVER);
  if (pillar) return { x, behind: 'pillar', coverFrom: pillar.from, coverTo: pillar.to };
  const near = run.bays.flatMap(stripsIn).find((s) => x >= s.coverFrom && x <= s.coverTo);
  return near ? { ...near, x } : undefined;
}

const finding = (rest: Omit<Finding, 'severity' | 'source'>): Finding => ({
  severity: 'stop',
  source: 'geometry of the setting-out',
  ...rest,
});

function refused(
  run: Unjoined,
  x: number,
  face: number,
  joined: readonly number[],
  covered: boolean,
  path: string,
): Finding {
  const near = (behind: Place['behind']): Place | undefined =>
    placesIn(run, face)
      .filter((p) => p.behind === behind && roomFor(run, face, joined, p.x) >= 0)
      .sort((a, b) => Math.abs(a.x - x) - Math.abs(b.x - x))[0];
  const free = near('pillar') ?? near('cover');
  const others = [Math.max(0, run.left.frameAt), ...joined, Math.min(run.length, run.right.frameAt)];
  const apart = Math.min(...others.map((o) => Math.abs(o - x)));
  const why = covered
    ? `it is ${tenth(apart)} mm from the next join or end, and ${tenth(leastApart(face))} mm is the least`
    : 'nothing would cover it there: it falls in the field of a bay or in an end pillar';
  const where = free
    ? `${tenth(free.x)} mm, ${free.behind === 'pillar' ? 'behind a pillar' : 'under a cover strip'}`
    : undefined;
  return finding({
    rule: covered ? 'join-crowded' : 'join-uncovered',
    subject: { run: run.id, path },
    value: x,
    ...(free ? { limit: free.x } : {}),
    message: `A join is wished at ${tenth(x)} mm in run ${run.id}; ${why}. ${where ? `The nearest place is ${where}.` : 'There is no other place in this run.'}`,
    remedy: where ? `Move it to ${where}. It is left out.` : 'Take it away, or lengthen the run. It is left out.',
  });
}

const noSuchRun = (run: number, path: string): Finding =>
  finding({
    rule: 'join-in-no-run',
    subject: { path },
    value: run,
    message: `A join is wished in run number ${run}, which the plan has not.`,
    remedy: 'Take it away, or add the run. It is left out.',
  });

const noCorner = (run: string, path: string): Finding =>
  finding({
    rule: 'join-at-no-corner',
    subject: { run, path },
    message: `A join is wished at the right-hand corner of run ${run}, which has none.`,
    remedy: 'Give it a place along the run. It is left out.',
  });

/** Numbers joins and sections from left to right. A flap always parts two sections. */
export function numbered(runs: readonly Unjoined[], { joins, corners }: Joined): readonly RodRun[] {
  let join = 0;
  let section = 1;
  return runs.map((run): RodRun => {
    const mine = (joins.get(run.id) ?? []).map((j): RunJoin => ({ id: `J${++join}`, ...j }));
    const sections = [`S${section}`, ...mine.map(() => `S${++section}`)];
    const parted = corners.has(run.id) || run.right.flap;
    if (parted) section++;
    return {
      ...run,
      joins: mine,
      sections,
      crossLines: [],
      backBays: [],
      ...(parted ? { joinAtRight: `J${++join}` } : {}),
    };
  });
}
