import type { Finding } from '../vocabulary/finding';
import type { Opening } from '../vocabulary/job';
import type { Obstacle, PlacedOpening } from '../vocabulary/opening';
import type { Rod } from '../vocabulary/rod';

/** Gives each wished opening its place on the front or in the top of its run. */
export function placeOpenings(
  rod: Rod,
  openings: readonly Opening[],
  obstacles: readonly Obstacle[],
): { readonly placed: readonly PlacedOpening[]; readonly findings: readonly Finding[] } {
  void obstacles;
  return {
    placed: openings.flatMap((o, index) => {
      const run = rod.runs.find((r) => r.jobIndex === o.run - 1);
      if (!run) return [];
      const round = o.use === 'pipe';
      const high = round ? o.width : o.height;
      return [
        {
          index,
          name: o.name,
          run: run.id,
          through: o.through,
          use: o.use,
          round,
          from: o.x - o.width / 2,
          to: o.x + o.width / 2,
          low: o.z - high / 2,
          high: o.z + high / 2,
        },
      ];
    }),
    findings: [],
  };
}
