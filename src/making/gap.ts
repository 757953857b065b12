/** Points of a convex piece, x y z after each other. */
export type Points = Float64Array;
/** A shift in the room, mm. */
type Shift = readonly [number, number, number];

/** The gap between two convex pieces and the vector that spans it, from the second to the first; nothing where it is more than the limit. */
export interface Gap {
  readonly gap: number;
  readonly across: Shift;
}

/** Nearer than this they touch, mm: far below anything that can be cut. */
const TOUCHING = 1e-7;
/** More rounds than any pair needs; only noise in the last digits goes on so long. */
const MOST_ROUNDS = 60;
const NO_SHIFT: Shift = [0, 0, 0];

/**
 * The least distance of two convex pieces (Gilbert, Johnson & Keerthi, 1988), the first moved by `shift`: 0 where they touch or overlap,
 * null where it is more than `limit`. The answer is at most some millionths of a millimetre out.
 */
export function gapOf(a: Points, b: Points, limit: number, shift: Shift = NO_SHIFT): Gap | null {
  const s: Simplex = { w: new Float64Array(12), n: 0, v: [0, 0, 0] };
  s.v = [a[0] + shift[0] - b[0], a[1] + shift[1] - b[1], a[2] + shift[2] - b[2]];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const [x, y, z] = s.v;
    const vv = x * x + y * y + z * z;
    if (vv < TOUCHING * TOUCHING) return { gap: 0, across: s.v };
    const i = furthest(a, -x, -y, -z);
    const j = furthest(b, x, y, z);
    const p = a[i] + shift[0] - b[j];
    const q = a[i + 1] + shift[1] - b[j + 1];
    const r = a[i + 2] + shift[2] - b[j + 2];
    const vw = x * p + y * q + z * r;
    if (vw > 0 && vw * vw > limit * limit * vv) return null;
    if (vv - vw <= 1e-10 * vv + 1e-14 || holds(s, p, q, r)) break;
    const at = 3 * s.n++;
    s.w[at] = p;
    s.w[at + 1] = q;
    s.w[at + 2] = r;
    nearest(s);
    if (s.n === 4) return { gap: 0, across: [x, y, z] };
  }
  const gap = Math.hypot(...s.v);
  return gap > limit ? null : { gap, across: s.v };
}

interface Simplex {
  readonly w: Float64Array;
  n: number;
  v: Shift;
}

function furthest(p: Points, x: number, y: number, z: number): number {
  let best = 0;
  let most = -Infinity;
  for (let i = 0; i < p.length; i += 3) {
    const d = p[i] * x + p[i + 1] * y + p[i + 2] * z;
    if (d > most) {
      most = d;
      best = i;
    }
  }
  return best;
}

function holds({ w, n }: Simplex, p: number, q: number, r: number): boolean {
  for (let i = 0; i < 3 * n; i += 3) if (w[i] === p && w[i + 1] === q && w[i + 2] === r) return true;
  return false;
}

/** The point of the simplex nearest to the origin; corners that don't bear on it are dropped. All four stay where the origin is inside. */
function nearest(s: Simplex): void {
  if (s.n === 1) s.v = [s.w[0], s.w[1], s.w[2]];
  else if (s.n === 4) inTetrahedron(s);
  else {
    const best = s.n === 2 ? onLine(s.w, 0, 1) : onTriangle(s.w, 0, 1, 2);
    keep(s, best);
  }
}

interface Nearest {
  readonly v: Shift;
  readonly corners: readonly number[];
}

function keep(s: Simplex, { v, corners }: Nearest): void {
  // The corners come in rising order, so none is overwritten before it is moved.
  for (let k = 0; k < corners.length; k++) s.w.copyWithin(3 * k, 3 * corners[k], 3 * corners[k] + 3);
  s.n = corners.length;
  s.v = v;
}

const corner = (w: Float64Array, i: number): Shift => [w[3 * i], w[3 * i + 1], w[3 * i + 2]];
const minus = (a: Shift, b: Shift): Shift => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const times = (a: Shift, b: Shift): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const along = (a: Shift, ab: Shift, t: number): Shift => [a[0] + ab[0] * t, a[1] + ab[1] * t, a[2] + ab[2] * t];
const normal = (a: Shift, b: Shift): Shift => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

function onLine(w: Float64Array, i: number, j: number): Nearest {
  const a = corner(w, i);
  const ab = minus(corner(w, j), a);
  const t = -times(a, ab) / times(ab, ab);
  if (!(t > 0)) return { v: a, corners: [i] };
  if (t >= 1) return { v: corner(w, j), corners: [j] };
  return { v: along(a, ab, t), corners: [i, j] };
}

/** By the regions of a triangle (Ericson, Real-Time Collision Detection, 2005, 5.1.5). */
function onTriangle(w: Float64Array, i: number, j: number, k: number): Nearest {
  const [a, b, c] = [corner(w, i), corner(w, j), corner(w, k)];
  const [ab, ac] = [minus(b, a), minus(c, a)];
  const [d1, d2] = [-times(ab, a), -times(ac, a)];
  if (d1 <= 0 && d2 <= 0) return { v: a, corners: [i] };
  const [d3, d4] = [-times(ab, b), -times(ac, b)];
  if (d3 >= 0 && d4 <= d3) return { v: b, corners: [j] };
  const [d5, d6] = [-times(ab, c), -times(ac, c)];
  if (d6 >= 0 && d5 <= d6) return { v: c, corners: [k] };
  const vc = d1 * d4 - d3 * d2;
  if (vc <= 0 && d1 >= 0 && d3 <= 0) return onLine(w, i, j);
  const vb = d5 * d2 - d1 * d6;
  if (vb <= 0 && d2 >= 0 && d6 <= 0) return onLine(w, i, k);
  const va = d3 * d6 - d5 * d4;
  if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) return onLine(w, j, k);
  // Inside: the foot of the perpendicular, by the plane, which keeps its digits where the areas cancel.
  const n = normal(ab, ac);
  const t = times(a, n) / times(n, n);
  return { v: [n[0] * t, n[1] * t, n[2] * t], corners: [i, j, k] };
}

const FACES = [
  [0, 1, 2, 3],
  [0, 2, 3, 1],
  [0, 1, 3, 2],
  [1, 2, 3, 0],
] as const;

function inTetrahedron(s: Simplex): void {
  let best: Nearest | undefined;
  for (const [i, j, k, other] of FACES) {
    const a = corner(s.w, i);
    const n = normal(minus(corner(s.w, j), a), minus(corner(s.w, k), a));
    const mine = -times(a, n);
    const theirs = times(minus(corner(s.w, other), a), n);
    const flat = Math.abs(theirs) <= 1e-12 * Math.hypot(...n) * (1 + Math.hypot(...a));
    if (!flat && mine * theirs > 0) continue;
    const found = onTriangle(s.w, i, j, k);
    if (!best || times(found.v, found.v) < times(best.v, best.v)) best = found;
  }
  if (best) keep(s, best);
}
