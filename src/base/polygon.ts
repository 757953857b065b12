import type { Vec2 } from '../vocabulary/geometry';

/** Signed area of a closed polygon, mm²: positive when counter-clockwise. */
export function polygonArea(points: readonly Vec2[]): number {
  let twice = 0;
  for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
    const a = points[j];
    const b = points[i];
    twice += a[0] * b[1] - b[0] * a[1];
  }
  return twice / 2;
}

/** Centre of area of a closed polygon. Throws when the polygon has no area: then it has no such point. */
export function polygonCentroid(points: readonly Vec2[]): Vec2 {
  // Worked from the first point, so that a small polygon far from the origin keeps its digits.
  const o = points[0];
  let twice = 0;
  let x = 0;
  let y = 0;
  for (let i = 1; i + 1 < points.length; i++) {
    const a = points[i];
    const b = points[i + 1];
    const [ax, ay, bx, by] = [a[0] - o[0], a[1] - o[1], b[0] - o[0], b[1] - o[1]];
    const w = ax * by - bx * ay;
    twice += w;
    x += (ax + bx) * w;
    y += (ay + by) * w;
  }
  if (!(Math.abs(twice) > 0))
    throw new Error(`a polygon of ${points.length} points has an area of ${twice / 2} mm², so no centre`);
  return [o[0] + x / (3 * twice), o[1] + y / (3 * twice)];
}

/** Smallest and greatest coordinates of some points. Throws for none. */
export function polygonBounds(points: readonly Vec2[]): { min: Vec2; max: Vec2 } {
  if (points.length === 0) throw new Error('no points, so no bounds');
  let x0 = points[0][0];
  let y0 = points[0][1];
  let x1 = x0;
  let y1 = y0;
  for (const p of points) {
    const x = p[0];
    const y = p[1];
    if (x < x0) x0 = x;
    if (x > x1) x1 = x;
    if (y < y0) y0 = y;
    if (y > y1) y1 = y;
  }
  return { min: [x0, y0], max: [x1, y1] };
}

/** Convex hull, counter-clockwise, without points that lie on a straight side (Andrew's monotone chain, 1979). */
export function hull(points: readonly Vec2[]): Vec2[] {
  const sorted = points.slice().sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  if (sorted.length < 3) return sorted;
  const chain = (from: readonly Vec2[]): Vec2[] => {
    const out: Vec2[] = [];
    for (const p of from) {
      while (out.length >= 2 && !turnsLeft(out[out.length - 2], out[out.length - 1], p)) out.pop();
      out.push(p);
    }
    out.pop();
    return out;
  };
  return [...chain(sorted), ...chain(sorted.reverse())];
}

/** Turns less than this to the right are noise of the last digits: sine. */
const STRAIGHT = 1e-9;

/** Whether a closed polygon, counter-clockwise, turns nowhere to the right. */
export function isConvex(points: readonly Vec2[]): boolean {
  const n = points.length;
  for (let i = 0; i < n; i++) {
    const [a, b, c] = [points[i], points[(i + 1) % n], points[(i + 2) % n]];
    const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]];
    if (ux * vy - uy * vx < -STRAIGHT * Math.hypot(ux, uy) * Math.hypot(vx, vy)) return false;
  }
  return true;
}

const turnsLeft = (a: Vec2, b: Vec2, c: Vec2): boolean =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 0;

/**
 * What is left of a convex polygon on one side of a line: the points p with (p − at)·normal ≤ 0. Empty when nothing is left.
 * (Sutherland & Hodgman, 1974.)
 */
export function clip(points: readonly Vec2[], at: Vec2, normal: Vec2): Vec2[] {
  const beyond = (p: Vec2): number => (p[0] - at[0]) * normal[0] + (p[1] - at[1]) * normal[1];
  const out: Vec2[] = [];
  for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
    const a = points[j];
    const b = points[i];
    const da = beyond(a);
    const db = beyond(b);
    if (da <= 0 !== db <= 0) {
      const t = da / (da - db);
      out.push([a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]);
    }
    if (db <= 0) out.push(b);
  }
  return out.length < 3 ? [] : out;
}

/** What two convex polygons share. Both counter-clockwise. */
export const shared = (a: readonly Vec2[], b: readonly Vec2[]): readonly Vec2[] =>
  b.reduce(
    (left: readonly Vec2[], corner, i) => {
      const next = b[(i + 1) % b.length];
      return clip(left, corner, [next[1] - corner[1], corner[0] - next[0]]);
    },
    b.length > 0 ? a : [],
  );
