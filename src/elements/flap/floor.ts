import { onFace } from '../../base/place';
import { clip, polygonArea } from '../../base/polygon';
import { add2, scale2, sub2 } from '../../base/vec';
import type { Vec2 } from '../../vocabulary/geometry';
import type { Rod, RodRun, RunEnd } from '../../vocabulary/rod';

/** Longer than any run: a strip to be cut at its corners. */
const FAR = 1e6;

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
    const shared = polygonArea(common(floorOf(rod, other, { face, back, tops: others.tops }), wanted));
    return shared > 1 ? [{ run: other.id }] : [];
  });
}

const point = (run: RodRun, x: number, d: number): Vec2 => {
  const p = onFace(run, x, d, 0);
  return [p[0], p[1]];
};

const rectangle = (run: RodRun, { from, to, back, face }: Patch): readonly Vec2[] => [
  point(run, from, face),
  point(run, to, face),
  point(run, to, back),
  point(run, from, back),
];

interface Strip {
  readonly face: number;
  readonly back: number;
  readonly tops: boolean;
}

/** Whether the top is butted at a corner; with a moulded front edge inside corners are mitred. */
const isButted = ({ deflectionDeg }: RunEnd, { leastButtedDeg, edge }: Rod['top']): boolean =>
  leastButtedDeg !== undefined &&
  Math.abs(deflectionDeg) >= leastButtedDeg &&
  (deflectionDeg > 0 || edge === undefined);

function floorOf({ runs, top }: Rod, run: RodRun, strip: Strip): readonly Vec2[] {
  const { face, back, tops } = strip;
  return (['left', 'right'] as const).reduce(
    (polygon: readonly Vec2[], side) => {
      const end = run[side];
      const away = side === 'left' ? -1 : 1;
      const other = end.kind === 'corner' && !end.toReturn ? runs.find((r) => r.id === end.neighbour) : undefined;
      if (other && tops && end.through && isButted(end, top)) {
        const outside = end.deflectionDeg > 0;
        return clip(polygon, point(other, 0, outside ? face : back), scale2(other.front, outside ? 1 : -1));
      }
      const ahead = other ? add2(run.along, other.along) : run.along;
      return clip(polygon, point(run, side === 'left' ? 0 : run.length, 0), scale2(ahead, away));
    },
    rectangle(run, { from: -FAR, to: FAR, back, face }),
  );
}

/** What two convex polygons share. */
const common = (a: readonly Vec2[], b: readonly Vec2[]): readonly Vec2[] =>
  b.reduce((left: readonly Vec2[], corner, i) => {
    const side = sub2(b[(i + 1) % b.length], corner);
    return clip(left, corner, [side[1], -side[0]]);
  }, a);
