import earcut from 'earcut';
import type { Vec2 } from '../../vocabulary/geometry';

/**
 * Triangles that fill a polygon with holes (all counter-clockwise as outlines are), each triangle counter-clockwise. Indices
 * count the polygon's points first, then those of each hole. Every side is the side of exactly one triangle and every inner
 * edge of exactly two, also where points lie on a straight line. Throws when the polygon crosses itself or a hole its side.
 */
export function fill(points: readonly Vec2[], holes: readonly (readonly Vec2[])[] = []): Uint32Array {
  const rings = [points, ...holes];
  const all = rings.flat();
  const flat = new Float64Array(all.length * 2);
  for (let i = 0; i < all.length; i++) {
    flat[2 * i] = all[i][0];
    flat[2 * i + 1] = all[i][1];
  }
  const starts: number[] = [];
  let at = points.length;
  for (const hole of holes) {
    starts.push(at);
    at += hole.length;
  }
  const triangles = earcut(flat, starts);
  if (twiceArea(flat, triangles) < 0) {
    for (let t = 0; t < triangles.length; t += 3) {
      const second = triangles[t + 1];
      triangles[t + 1] = triangles[t + 2];
      triangles[t + 2] = second;
    }
  }
  // All points used and nothing left over: as many triangles as any triangulation has. Else points on straight lines were skipped.
  const expected = 3 * (all.length + 2 * holes.length - 2);
  return Uint32Array.from(
    triangles.length === expected ? triangles : withSkippedPoints(flat, triangles, rings, expected),
  );
}

function twiceArea(flat: Float64Array, triangles: readonly number[]): number {
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    sum += turn(flat, triangles[t], triangles[t + 1], triangles[t + 2]);
  }
  return sum;
}

const turn = (p: Float64Array, a: number, b: number, c: number): number =>
  (p[2 * b] - p[2 * a]) * (p[2 * c + 1] - p[2 * a + 1]) - (p[2 * b + 1] - p[2 * a + 1]) * (p[2 * c] - p[2 * a]);

/** The ear clipper leaves out points on a straight line. Edges without a partner are split at the points that lie on them. */
function withSkippedPoints(
  flat: Float64Array,
  triangles: readonly number[],
  rings: readonly (readonly Vec2[])[],
  expected: number,
): number[] {
  const n = flat.length / 2;
  const partners = new Set<number>();
  let first = 0;
  for (let r = 0; r < rings.length; r++) {
    const size = rings[r].length;
    for (let i = 0; i < size; i++) {
      const [a, b] = [first + i, first + ((i + 1) % size)];
      // Outside the polygon the partner of side a→b runs b→a; a hole's is the other way about.
      partners.add(r === 0 ? b * n + a : a * n + b);
    }
    first += size;
  }
  let current = [...triangles];
  for (let round = 0; round < n; round++) {
    const edges = new Set(partners);
    forEachEdge(current, (a, b) => edges.add(a * n + b));
    const next: number[] = [];
    for (let t = 0; t < current.length; t += 3) {
      next.push(...splitOnce(flat, n, edges, current[t], current[t + 1], current[t + 2]));
    }
    if (next.length === current.length) break;
    current = next;
  }
  if (current.length !== expected) {
    throw new Error(
      `a polygon of ${n} points gives ${current.length / 3} triangles, not ${expected / 3}: it crosses itself, or a hole crosses its side`,
    );
  }
  return current;
}

function forEachEdge(triangles: readonly number[], visit: (a: number, b: number) => void): void {
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]];
    visit(a, b);
    visit(b, c);
    visit(c, a);
  }
}

function splitOnce(
  flat: Float64Array,
  n: number,
  edges: ReadonlySet<number>,
  a: number,
  b: number,
  c: number,
): number[] {
  for (const [p, q, r] of [
    [a, b, c],
    [b, c, a],
    [c, a, b],
  ] as const) {
    if (edges.has(q * n + p)) continue;
    const k = pointOn(flat, n, p, q);
    if (k >= 0) return [p, k, r, k, q, r];
  }
  return [a, b, c];
}

/** The point nearest to p that lies on the open edge p–q, or −1. */
function pointOn(flat: Float64Array, n: number, p: number, q: number): number {
  const [px, py] = [flat[2 * p], flat[2 * p + 1]];
  const [dx, dy] = [flat[2 * q] - px, flat[2 * q + 1] - py];
  const length2 = dx * dx + dy * dy;
  let best = -1;
  let nearest = 1;
  for (let k = 0; k < n; k++) {
    if (k === p || k === q) continue;
    const [x, y] = [flat[2 * k] - px, flat[2 * k + 1] - py];
    const along = (x * dx + y * dy) / length2;
    if (along > 0 && along < nearest && Math.abs(x * dy - y * dx) <= 1e-9 * length2) {
      best = k;
      nearest = along;
    }
  }
  return best;
}
