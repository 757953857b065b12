import type { Stick } from '../../vocabulary/shape';
import { flatten } from '../outline';
import type { Solid } from './closed-solid';
import { endSection, hollowsOf } from './hollows';
import { capOf, planeAt } from './stick';

/** Whether a stick has hollows that stop short of its ends. */
export const isStopped = (stick: Stick): boolean => stick.stopped !== undefined && hollowsOf(stick.section).length > 0;

/**
 * A stick whose hollows stop short of its ends, as a closed solid in its own axes. Every line of the section that a hollow touches has
 * corners at both stops, for its neighbours on either side; so no corner lies within another triangle's edge.
 * Throws, with the values, when the end cuts cross or the stops don't lie between them.
 */
export function stoppedSolid(stick: Stick): Solid {
  const whole = flatten(endSection(stick));
  const hollows = hollowsOf(stick.section);
  const hollowAt = new Map(hollows.map((h) => [h.at, h]));
  const n = whole.length;
  const points: number[] = [];
  const triangles: number[] = [];
  const corner = (along: number, u: number, v: number): number => points.push(along, u, v) / 3 - 1;

  const lines = whole.map(([u, v], i) => {
    const touched = hollowAt.has(i) || hollowAt.has((i + n - 1) % n);
    return levelsOf(stick, u, v, touched).map((along) => corner(along, u, v));
  });
  for (let i = 0; i < n; i++) {
    const [near, far] = [lines[i], lines[(i + 1) % n]];
    const hollow = hollowAt.get(i);
    if (!hollow) {
      side(triangles, points, near, far);
      continue;
    }
    side(triangles, points, near.slice(0, 2), far.slice(0, 2));
    side(triangles, points, near.slice(2), far.slice(2));
    const { from, to } = stick.stopped as { from: number; to: number };
    const inner = hollow.points.slice(1, -1);
    const low = [near[1], ...inner.map(([u, v]) => corner(from, u, v)), far[1]];
    const high = [near[2], ...inner.map(([u, v]) => corner(to, u, v)), far[2]];
    for (let k = 0; k + 1 < low.length; k++) side(triangles, points, [low[k], high[k]], [low[k + 1], high[k + 1]]);
    // The walls at the stops: the piece between arc and chord, which never turns inward.
    for (let k = low.length - 1; k > 1; k--) {
      triangles.push(low[0], low[k], low[k - 1]);
      triangles.push(high[0], high[k - 1], high[k]);
    }
  }
  const cap = capOf(endSection(stick));
  for (let k = 0; k < cap.length; k += 3) {
    triangles.push(lines[cap[k]][0], lines[cap[k + 2]][0], lines[cap[k + 1]][0]);
    const [a, b, c] = [lines[cap[k]], lines[cap[k + 1]], lines[cap[k + 2]]].map((line) => line[line.length - 1]);
    triangles.push(a, b, c);
  }
  return { points: Float64Array.from(points), triangles: Uint32Array.from(triangles) };
}

/** Where a line of the section has corners: at its ends, and at both stops where it is the edge of a hollow. */
function levelsOf({ start, end, stopped }: Stick, u: number, v: number, touched: boolean): readonly number[] {
  const first = planeAt(start, u, v);
  const last = planeAt(end, u, v);
  if (!(last > first))
    throw new Error(
      `a stick ends at ${last} and starts at ${first} mm along its line (${u}, ${v}): its end cuts cross`,
    );
  if (!touched || !stopped) return [first, last];
  if (!(first < stopped.from && stopped.from < stopped.to && stopped.to < last))
    throw new Error(
      `hollows from ${stopped.from} to ${stopped.to} mm; along the line (${u}, ${v}) there is stuff from ${first} to ${last} mm`,
    );
  return [first, stopped.from, stopped.to, last];
}

/** The strip between two lines of corners, both from start to end, the second to the right as the section runs. */
function side(triangles: number[], points: readonly number[], near: readonly number[], far: readonly number[]): void {
  let [i, j] = [0, 0];
  while (i + 1 < near.length || j + 1 < far.length) {
    const nearFirst = j + 1 >= far.length || (i + 1 < near.length && points[3 * near[i + 1]] < points[3 * far[j + 1]]);
    if (nearFirst) triangles.push(near[i], far[j], near[++i]);
    else triangles.push(near[i], far[j], far[++j]);
  }
}
