import type { Vec2 } from '../vocabulary/geometry';
import type { SurveyedLevel } from '../vocabulary/job';
import type { Rod, RodRun } from '../vocabulary/rod';

/** The floor as it was surveyed. */
export interface Floor {
  /** The highest point that was found: everything is levelled from it. */
  readonly datum: number;
  /** Height of the floor at x along a run. */
  at(run: RodRun, x: number): number;
  /** The lowest that it gets along a run, or a stretch of it, and where. */
  lowest(run: RodRun, from?: number, to?: number): { readonly x: number; readonly height: number };
  /** Where something had to be assumed, in words. */
  readonly notes: readonly string[];
}

/**
 * The floor between the points that were surveyed: straight from one to the next along each run, level beyond the first and the last. A
 * run without points has the height of the point nearest to it, and a note says so. Undefined where nothing was surveyed.
 */
export function floorOf(levels: readonly SurveyedLevel[], rod: Rod): Floor | undefined {
  const of = (run: RodRun): readonly SurveyedLevel[] =>
    levels.filter((level) => level.run - 1 === run.jobIndex).sort((a, b) => a.along - b.along);
  const points = rod.runs.flatMap((run) => of(run).map((level) => ({ level, at: plan(run, level.along) })));
  if (points.length === 0) return undefined;
  const own = new Map(rod.runs.map((run) => [run.id, of(run)]));
  const bare = rod.runs.filter((run) => own.get(run.id)?.length === 0);
  const nearest = (run: RodRun, x: number): number => {
    const here = plan(run, x);
    const far = ([px, py]: Vec2): number => Math.hypot(px - here[0], py - here[1]);
    return points.reduce((best, point) => (far(point.at) < far(best.at) ? point : best)).level.height;
  };
  const at = (run: RodRun, x: number): number => along(own.get(run.id) ?? [], x) ?? nearest(run, x);
  return {
    datum: Math.max(...points.map(({ level }) => level.height)),
    at,
    // Straight between its points, it is lowest at one of them or at an end.
    lowest: (run, from = 0, to = run.length) => {
      const inside = (own.get(run.id) ?? []).map((level) => level.along).filter((x) => x > from && x < to);
      const points = [from, ...inside, to].map((x) => ({ x, height: at(run, x) }));
      return points.reduce((low, point) => (point.height < low.height ? point : low));
    },
    notes: bare.map(
      ({ id }) =>
        `No level was taken along run ${id}: its floor is taken to be as high as at the nearest point surveyed.`,
    ),
  };
}

const plan = ({ origin, along: [ax, ay] }: RodRun, x: number): Vec2 => [origin[0] + ax * x, origin[1] + ay * x];

/** Height at x from points in order along a run. */
function along(points: readonly SurveyedLevel[], x: number): number | undefined {
  const next = points.findIndex((p) => p.along >= x);
  if (next < 0) return points.at(-1)?.height;
  const [before, after] = [points[next - 1], points[next]];
  if (!before || after.along === before.along) return after.height;
  return before.height + ((after.height - before.height) * (x - before.along)) / (after.along - before.along);
}
