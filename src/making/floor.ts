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
 * The floor between the points that were surveyed, along the front of the unit from run to run, corners being points that two runs share:
 * straight from one point to the next, level beyond the first and the last. A note says where a run has no point of its own. Undefined
 * where nothing was surveyed.
 */
export function floorOf(levels: readonly SurveyedLevel[], { runs, flaps }: Rod): Floor | undefined {
  const starts = startsOf(runs, flaps);
  const points = runs
    .flatMap((run) =>
      levels
        .filter((level) => level.run - 1 === run.jobIndex)
        .map(({ along, height }) => ({ s: (starts.get(run.id) ?? 0) + along, height })),
    )
    .sort((a, b) => a.s - b.s);
  if (points.length === 0) return undefined;
  const at = (run: RodRun, x: number): number => between(points, (starts.get(run.id) ?? 0) + x);
  return {
    datum: Math.max(...points.map(({ height }) => height)),
    at,
    // Straight between its points, it is lowest at one of them or at an end.
    lowest: (run, from = 0, to = run.length) => {
      const start = starts.get(run.id) ?? 0;
      const inside = points.map(({ s }) => s - start).filter((x) => x > from && x < to);
      return [from, ...inside, to]
        .map((x) => ({ x, height: at(run, x) }))
        .reduce((low, point) => (point.height < low.height ? point : low));
    },
    notes: runs
      .filter((run) => !levels.some((level) => level.run - 1 === run.jobIndex))
      .map(
        ({ id }) =>
          `No level was taken along run ${id}: its floor is taken to go on from the nearest points along the unit.`,
      ),
  };
}

/** How far along the unit each run begins, mm. */
function startsOf(runs: readonly RodRun[], flaps: Rod['flaps']): ReadonlyMap<string, number> {
  const starts = new Map<string, number>();
  let s = 0;
  for (const run of runs) {
    starts.set(run.id, s);
    s += run.length + (flaps.find((flap) => flap.left === run.id)?.width ?? 0);
  }
  return starts;
}

/** Height at s from points in order. */
function between(points: readonly { readonly s: number; readonly height: number }[], s: number): number {
  const next = points.findIndex((p) => p.s >= s);
  if (next < 0) return points[points.length - 1].height;
  const [before, after] = [points[next - 1], points[next]];
  if (!before || after.s === before.s) return after.height;
  return before.height + ((after.height - before.height) * (s - before.s)) / (after.s - before.s);
}
