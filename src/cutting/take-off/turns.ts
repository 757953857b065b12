import { boundsOf, flatten } from '../../base/outline';
import { CHORD_ERROR } from '../../base/tolerance';
import type { BarTurn } from '../../vocabulary/cut-problem';
import type { Outline, Vec2 } from '../../vocabulary/geometry';

/** Every turn: what a rectangle allows. */
export const ALL_TURNS: readonly BarTurn[] = ['rolled', 'swung', 'tumbled'];

/**
 * How a bar can be turned and show the same section again. Rolled over on its length both its edges and its faces change places; swung end
 * for end its edges do, tumbled its faces. Told from the outline itself, to what a coat of paint hides.
 */
export function turnsOf(section: Outline): readonly BarTurn[] {
  const points = flatten(section);
  const { min, max } = boundsOf(section);
  const [u, v] = [min[0] + max[0], min[1] + max[1]];
  const turned: Readonly<Record<BarTurn, (p: Vec2) => Vec2>> = {
    rolled: (p) => [u - p[0], v - p[1]],
    swung: (p) => [u - p[0], p[1]],
    tumbled: (p) => [p[0], v - p[1]],
  };
  // Each turn is its own reverse: where the turned corners lie on the outline, the outline's lie on the turned one.
  return ALL_TURNS.filter((turn) => points.every((p) => offOutline(turned[turn](p), points) <= CHORD_ERROR + NOISE));
}

/** Of the last digits, mm. */
const NOISE = 1e-6;

/** How far a point is from a closed polygon's sides. */
function offOutline(p: Vec2, points: readonly Vec2[]): number {
  let least = Infinity;
  for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
    const [ax, ay] = points[j];
    const [bx, by] = [points[i][0] - ax, points[i][1] - ay];
    const squared = bx * bx + by * by;
    const along = squared > 0 ? Math.min(1, Math.max(0, ((p[0] - ax) * bx + (p[1] - ay) * by) / squared)) : 0;
    least = Math.min(least, Math.hypot(p[0] - ax - along * bx, p[1] - ay - along * by));
  }
  return least;
}
