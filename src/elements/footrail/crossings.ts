import { floorOf } from '../../base/floor';
import { polygonArea, shared } from '../../base/polygon';
import type { Rod } from '../../vocabulary/rod';
import { NOSE } from './bracket';
import type { Profile } from './layout';

/** Runs that share less floor than this only touch, mm². */
const LEAST_SHARED = 1;

/** Pairs of runs, not neighbours, whose rails would stand in one another or in the other's front: so in a narrow well. */
export function crossingRails(rod: Rod, { front }: Profile): readonly (readonly [string, string])[] {
  // The floor of a run from the back of its top to its brackets' noses; a rail turns into a return too.
  const strip = { front: front + NOSE, back: rod.layers[rod.top.layer]?.inner ?? 0 };
  const floors = rod.runs.map((run) => floorOf(rod.runs, run, strip, () => true));
  return rod.runs.flatMap((a, i) =>
    rod.runs.slice(i + 2).flatMap((b, k): (readonly [string, string])[] => {
      const both = shared(floors[i], floors[i + 2 + k]);
      return both.length > 2 && polygonArea(both) > LEAST_SHARED ? [[a.id, b.id]] : [];
    }),
  );
}
