import { floorOf } from '../base/floor';
import { polygonArea, polygonBounds, shared } from '../base/polygon';
import type { Finding } from '../vocabulary/finding';
import type { Vec2 } from '../vocabulary/geometry';
import type { Rod, RunEnd } from '../vocabulary/rod';

/** Two runs that share less floor than this only touch, mm². */
const LEAST_SHARED = 1;

/** A plan that folds on itself: two runs, not neighbours, that want the same floor, from their outermost layer to the back of the top. */
export function crossings({ runs, layers }: Pick<Rod, 'runs' | 'layers'>): readonly Finding[] {
  const front = Math.max(...Object.values(layers).map((l) => l.outer));
  const back = Math.min(...Object.values(layers).map((l) => l.inner));
  const floors = runs.map((run) => floorOf(runs, run, { front, back }, (end: RunEnd) => !end.toReturn));
  const boxes = floors.map((floor) => (floor.length > 0 ? polygonBounds(floor) : NOWHERE));
  const findings: Finding[] = [];
  for (let i = 0; i < runs.length; i++)
    for (let j = i + 2; j < runs.length; j++) {
      if (apart(boxes[i], boxes[j])) continue;
      const area = polygonArea(shared(floors[i], floors[j]));
      if (area > LEAST_SHARED) findings.push(folded(runs[i].id, runs[j].id, area));
    }
  return findings;
}

interface Box {
  readonly min: Vec2;
  readonly max: Vec2;
}

/** The box of a run that its corners leave no floor. */
const NOWHERE: Box = { min: [Infinity, Infinity], max: [-Infinity, -Infinity] };

const apart = (a: Box, b: Box): boolean => [0, 1].some((k) => a.max[k] <= b.min[k] || b.max[k] <= a.min[k]);

const folded = (a: string, b: string, area: number): Finding => ({
  severity: 'stop',
  rule: 'plan-folds',
  subject: { run: b, path: '/unit/plan/runs' },
  message: `The plan folds on itself: runs ${a} and ${b} want the same ${Math.ceil(area / 1e4) / 100} m² of floor.`,
  value: area,
  limit: 0,
  source: 'geometry of the setting-out',
  remedy: 'Change the deflections, the lengths or the depth so that the unit does not meet itself.',
});
