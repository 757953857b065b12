import { SAME_LENGTH } from '../../src/base/tolerance';
import { addJoin, setJoins } from '../../src/job/edits-making';
import type { Design } from '../../src/vocabulary/design';
import type { Job, JoinMark, Joins } from '../../src/vocabulary/job';
import type { RodRun } from '../../src/vocabulary/rod';
import type { Join } from '../../src/vocabulary/section';

/** A run's number in a mark by hand: 1 the first, 0 the left return; undefined for a run that can't be told there. */
export function markRun(run: Pick<RodRun, 'id' | 'jobIndex'>): number | undefined {
  if (run.jobIndex !== null) return run.jobIndex + 1;
  return run.id === 'RL' ? 0 : undefined;
}

/** The run that a mark by hand lies in. */
export const runOfMark = ({ rod }: Pick<Design, 'rod'>, mark: JoinMark): RodRun | undefined =>
  rod.runs.find((run) => markRun(run) === mark.run);

/** The joins as they stand, as marks by hand. A flap parts the unit by itself and needs none. */
export function marksOfJoins({ joins, rod }: Pick<Design, 'joins' | 'rod'>): readonly JoinMark[] {
  return joins.flatMap((join): JoinMark[] => {
    const on = rod.runs.find(({ id }) => id === join.run);
    const run = on && markRun(on);
    if (run === undefined || join.at === 'flap') return [];
    return [join.at === 'corner' ? { run } : { run, x: join.x }];
  });
}

/** How the unit is taken apart, when another way is chosen: by hand begins with the joins that stand now. */
export const joinsOfKind = (by: Joins['by'], made: Design): Joins =>
  by === 'hand' ? { by, at: marksOfJoins(made) } : { by };

/** One more join by hand; joins that were found by themselves stay, now marked by hand. */
export const withJoin = (job: Job, made: Design, mark: JoinMark): Job =>
  addJoin(job.unit.joins.by === 'least' ? setJoins(job, joinsOfKind('hand', made)) : job, mark);

/** Whether a run has a mark by hand, or a join, at x. */
const joinedAt = (made: Design, run: RodRun, x: number): boolean =>
  run.joins.some((join) => Math.abs(join.x - x) < SAME_LENGTH) ||
  (made.job.unit.joins.by === 'hand' &&
    made.job.unit.joins.at.some(
      (mark) => mark.run === markRun(run) && mark.x !== undefined && Math.abs(mark.x - x) < SAME_LENGTH,
    ));

/** The pillar between the ends that x lies on, when a join can be marked behind it and none is there. */
export function joinablePillar(
  made: Design,
  run: RodRun,
  from: number,
  to = from,
): RodRun['pillars'][number] | undefined {
  if (markRun(run) === undefined) return undefined;
  return run.pillars.find(
    (p) =>
      p.where === 'between' &&
      from >= p.from - SAME_LENGTH &&
      to <= p.to + SAME_LENGTH &&
      !joinedAt(made, run, p.centre),
  );
}

/** Where a new mark begins: behind the free pillar nearest to the middle of the run; without one, at the middle. */
export function newMark(made: Design, current: RodRun | undefined): JoinMark {
  const run = current && markRun(current) !== undefined ? current : made.rod.runs.find((r) => r.jobIndex === 0);
  if (!run) return { run: 1, x: 0 };
  const middle = run.length / 2;
  const free = run.pillars.filter((p) => joinablePillar(made, run, p.centre));
  const [nearest] = [...free].sort((a, b) => Math.abs(a.centre - middle) - Math.abs(b.centre - middle));
  return { run: markRun(run) ?? 1, x: nearest?.centre ?? Math.round(middle) };
}

const BEHIND: Readonly<Record<Join['behind'], string>> = {
  pillar: 'behind a pillar',
  cover: 'behind a cover strip',
  corner: 'at the corner',
  gap: 'at the flap',
};

/** A join in words: "J1, run A at 1600 mm, behind a pillar". */
export function joinWords(join: Join, made: Pick<Design, 'rod'>, length: (mm: number) => string): string {
  const run = made.rod.runs.find(({ id }) => id === join.run)?.name ?? join.run;
  const place = join.at === 'run' ? `${run} at ${length(join.x)}` : `right-hand end of ${run}`;
  return `${join.id}: ${place}, ${BEHIND[join.behind]}`;
}
