import { onFace } from '../base/place';
import { clip, polygonArea, polygonBounds } from '../base/polygon';
import { add2, scale2, sub2 } from '../base/vec';
import type { Finding } from '../vocabulary/finding';
import type { Vec2 } from '../vocabulary/geometry';
import type { Rod, RodRun } from '../vocabulary/rod';

/** Two runs that share less floor than this only touch, mm². */
const LEAST_SHARED = 1;

/** Longer than any run: a strip to be cut at its corners. */
const FAR = 1e6;

/** A plan that folds on itself: two runs, not neighbours, that want the same floor, from their outermost layer to the back of the top. */
export function crossings({ runs, layers }: Pick<Rod, 'runs' | 'layers'>): readonly Finding[] {
  const front = Math.max(...Object.values(layers).map((l) => l.outer));
  const back = Math.min(...Object.values(layers).map((l) => l.inner));
  const floors = runs.map((run) => floorOf(runs, run, front, back));
  const boxes = floors.map((floor) => (floor.length > 0 ? polygonBounds(floor) : NOWHERE));
  const findings: Finding[] = [];
  for (let i = 0; i < runs.length; i++)
    for (let j = i + 2; j < runs.length; j++) {
      if (apart(boxes[i], boxes[j])) continue;
      const shared = polygonArea(common(floors[i], floors[j]));
      if (shared > LEAST_SHARED) findings.push(folded(runs[i].id, runs[j].id, shared));
    }
  return findings;
}

/** The floor a run stands on, in plan: a strip cut at each corner on the corner's own line, counter-clockwise. */
function floorOf(runs: readonly RodRun[], run: RodRun, front: number, back: number): readonly Vec2[] {
  const at = (x: number, d: number): Vec2 => {
    const p = onFace(run, x, d, 0);
    return [p[0], p[1]];
  };
  const strip = [at(-FAR, front), at(FAR, front), at(FAR, back), at(-FAR, back)];
  return (['left', 'right'] as const).reduce((polygon: readonly Vec2[], side) => {
    const end = run[side];
    const other = end.kind === 'corner' && !end.toReturn ? runs.find((r) => r.id === end.neighbour) : undefined;
    const ahead = other ? add2(run.along, other.along) : run.along;
    return clip(polygon, at(side === 'left' ? 0 : run.length, 0), scale2(ahead, side === 'left' ? -1 : 1));
  }, strip);
}

interface Box {
  readonly min: Vec2;
  readonly max: Vec2;
}

/** The box of a run that its corners leave no floor. */
const NOWHERE: Box = { min: [Infinity, Infinity], max: [-Infinity, -Infinity] };

const apart = (a: Box, b: Box): boolean => [0, 1].some((k) => a.max[k] <= b.min[k] || b.max[k] <= a.min[k]);

/** What two convex polygons share. */
const common = (a: readonly Vec2[], b: readonly Vec2[]): readonly Vec2[] =>
  b.reduce(
    (left: readonly Vec2[], corner, i) => {
      const side = sub2(b[(i + 1) % b.length], corner);
      return clip(left, corner, [side[1], -side[0]]);
    },
    b.length ? a : [],
  );

const folded = (a: string, b: string, shared: number): Finding => ({
  severity: 'stop',
  rule: 'plan-folds',
  subject: { run: b, path: '/unit/plan/runs' },
  message: `The plan folds on itself: runs ${a} and ${b} want the same ${Math.ceil(shared / 1e4) / 100} m² of floor.`,
  value: shared,
  limit: 0,
  source: 'geometry of the setting-out',
  remedy: 'Change the deflections, the lengths or the depth so that the unit does not meet itself.',
});
