import { isButted } from '../../base/butted';
import { cutAt, stripOf } from '../../base/floor';
import { inPlan } from '../../base/place';
import { clip, polygonArea, shared } from '../../base/polygon';
import { scale2 } from '../../base/vec';
import type { Vec2 } from '../../vocabulary/geometry';
import type { Rod, RodRun } from '../../vocabulary/rod';

/** A rectangle beside a run's frame line: x along it, d in front of its frame's face. */
export interface Patch {
  readonly from: number;
  readonly to: number;
  readonly back: number;
  readonly face: number;
}

/**
 * Runs, other than those named, that stand in a patch of floor: each taken from its outermost layer to `back`, and cut at its corners on
 * the corner's own line, or, where tops are butted (`tops`), as far as the one that goes through reaches.
 */
export function standIn(
  rod: Rod,
  run: RodRun,
  patch: Patch,
  others: { readonly except: readonly string[]; readonly back: number; readonly tops: boolean },
): readonly { readonly run: string }[] {
  const wanted = rectangle(run, patch);
  const face = Math.max(...Object.values(rod.layers).map((l) => l.outer));
  return rod.runs.flatMap((other) => {
    if (others.except.includes(other.id)) return [];
    // A return has no top of its own behind its frame.
    const back = other.jobIndex === null ? Math.max(others.back, -rod.timber.depth) : others.back;
    const area = polygonArea(shared(floorOf(rod, other, { face, back, tops: others.tops }), wanted));
    return area > 1 ? [{ run: other.id }] : [];
  });
}

const rectangle = (run: RodRun, { from, to, back, face }: Patch): readonly Vec2[] => [
  inPlan(run, from, face),
  inPlan(run, to, face),
  inPlan(run, to, back),
  inPlan(run, from, back),
];

interface Strip {
  readonly face: number;
  readonly back: number;
  readonly tops: boolean;
}

function floorOf({ runs, top }: Rod, run: RodRun, { face, back, tops }: Strip): readonly Vec2[] {
  return (['left', 'right'] as const).reduce(
    (polygon: readonly Vec2[], side) => {
      const end = run[side];
      const other = end.kind === 'corner' && !end.toReturn ? runs.find((r) => r.id === end.neighbour) : undefined;
      const butted = isButted(end.deflectionDeg, top.leastButtedDeg, top.edge !== undefined);
      if (other && tops && end.through && butted) {
        const outside = end.deflectionDeg > 0;
        return clip(polygon, inPlan(other, 0, outside ? face : back), scale2(other.front, outside ? 1 : -1));
      }
      return cutAt(polygon, runs, run, side, (e) => !e.toReturn);
    },
    stripOf(run, face, back),
  );
}
