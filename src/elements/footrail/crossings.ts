import { onFace } from '../../base/place';
import { clip, polygonArea } from '../../base/polygon';
import { add2, scale2, sub2 } from '../../base/vec';
import type { Vec2 } from '../../vocabulary/geometry';
import type { Rod, RodRun } from '../../vocabulary/rod';
import { NOSE } from './bracket';
import type { Profile } from './layout';

/** Runs that share less floor than this only touch, mm². */
const LEAST_SHARED = 1;

/** Longer than any run: a strip to be cut at its corners. */
const FAR = 1e6;

/** Pairs of runs, not neighbours, whose rails would stand in one another or in the other's front: so in a narrow well. */
export function crossingRails(rod: Rod, { front }: Profile): readonly (readonly [string, string])[] {
  const floors = rod.runs.map((run) => floorOf(rod.runs, run, front + NOSE, rod.layers[rod.top.layer]?.inner ?? 0));
  return rod.runs.flatMap((a, i) =>
    rod.runs.slice(i + 2).flatMap((b, k): (readonly [string, string])[] => {
      const shared = common(floors[i], floors[i + 2 + k]);
      return shared.length > 2 && polygonArea(shared) > LEAST_SHARED ? [[a.id, b.id]] : [];
    }),
  );
}

/** The floor of a run from the back of its top to its brackets' noses: a strip cut at each corner on the corner's own line. */
function floorOf(runs: readonly RodRun[], run: RodRun, front: number, back: number): readonly Vec2[] {
  const at = (x: number, d: number): Vec2 => {
    const [px, py] = onFace(run, x, d, 0);
    return [px, py];
  };
  const strip: readonly Vec2[] = [at(-FAR, front), at(-FAR, back), at(FAR, back), at(FAR, front)];
  const turned = polygonArea(strip) > 0 ? strip : [...strip].reverse();
  return (['left', 'right'] as const).reduce((polygon: readonly Vec2[], side) => {
    const end = run[side];
    const other = end.kind === 'corner' ? runs.find((r) => r.id === end.neighbour) : undefined;
    const ahead = other ? add2(run.along, other.along) : run.along;
    return clip(polygon, at(side === 'left' ? 0 : run.length, 0), scale2(ahead, side === 'left' ? -1 : 1));
  }, turned);
}

/** What two convex polygons share. */
const common = (a: readonly Vec2[], b: readonly Vec2[]): readonly Vec2[] =>
  b.reduce(
    (left: readonly Vec2[], corner, i) => {
      const side = sub2(b[(i + 1) % b.length], corner);
      return clip(left, corner, [side[1], -side[0]]);
    },
    b.length ? a : [],
  );
