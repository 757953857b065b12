import { dot } from '../base/vec';
import type { Vec3 } from '../vocabulary/geometry';
import type { Contact } from '../vocabulary/making';
import type { Part } from '../vocabulary/part';
import { axesOf, type Body, bodyOf, boxesApart, type Piece, shadow } from './bodies';
import { type Gap, gapOf } from './gap';

/** Parts no further apart than this touch, mm: a gap that a good joint closes (a closed mitre shows less than half a millimetre: common practice, no source). */
export const MOST_GAP = 0.5;
/** Half a millimetre set out and half a millimetre measured differ in their last digits. */
const LIMIT = MOST_GAP + 1e-6;

/** A touch that is lost when one part is moved sideways by this much is an arris grazing another, mm. */
const SIDEWAYS = 0.3;
/** How much wider the gap may grow by that: what a round on a flat needs is far less, mm. */
const STEADY = 0.03;

/**
 * Which parts touch: no gap of more than half a millimetre, over a face or along a round, not only arris to arris. Each pair once, in
 * the order of the parts.
 */
export function contactsOf(parts: readonly Part[]): readonly Contact[] {
  const bodies = parts.map(bodyOf);
  const found: { readonly i: number; readonly j: number; readonly gap: number }[] = [];
  for (const [i, j] of candidates(bodies)) {
    const gap = touch(bodies[i], bodies[j]);
    if (gap !== null) found.push({ i, j, gap: gap < 1e-6 ? 0 : gap });
  }
  return found
    .sort((p, q) => p.i - q.i || p.j - q.j)
    .map(({ i, j, gap }) => ({ a: parts[i].mark, b: parts[j].mark, gap }));
}

/** Pairs whose boxes in the room come near: swept along the axis on which the parts are spread the most. */
function* candidates(bodies: readonly Body[]): Generator<readonly [number, number]> {
  const spread = [0, 1, 2].map((k) => deviation(bodies.map(({ box }) => box[k])));
  const k = spread.indexOf(Math.max(...spread));
  const order = bodies.map((_, i) => i).sort((i, j) => bodies[i].box[k] - bodies[j].box[k]);
  for (let p = 0; p < order.length; p++) {
    const a = bodies[order[p]].box;
    for (let q = p + 1; q < order.length; q++) {
      const b = bodies[order[q]].box;
      if (b[k] > a[k + 3] + LIMIT) break;
      if (!boxesApart(a, b, LIMIT)) yield order[p] < order[q] ? [order[p], order[q]] : [order[q], order[p]];
    }
  }
}

function deviation(values: readonly number[]): number {
  const mean = values.reduce((sum, v) => sum + v, 0) / Math.max(1, values.length);
  return values.reduce((sum, v) => sum + (v - mean) ** 2, 0);
}

/** The gap between two parts that touch, else null. */
function touch(a: Body, b: Body): number | null {
  if (apartOnAxes(a, b) || apartOnAxes(b, a)) return null;
  if (a.isBox && b.isBox) {
    const turned = alignment(a, b);
    if (turned) return boxGap(a, b, turned);
  }
  let least: number | null = null;
  for (const p of a.pieces) {
    if (boxesApart(p.box, b.box, LIMIT)) continue;
    for (const q of b.pieces) {
      if (boxesApart(p.box, q.box, LIMIT)) continue;
      const met = gapOf(p.points, q.points, LIMIT);
      if (!met || (least !== null && met.gap >= least) || !isSteady(p, q)) continue;
      least = met.gap;
      if (least < 1e-3) return least;
    }
  }
  return least;
}

/** Whether b lies beyond a on one of a's own axes, by the box along b's axes. */
function apartOnAxes(a: Body, b: Body): boolean {
  return axesOf(a.part.place).some((axis, k) => {
    const [from, to] = shadow(b, axis);
    return from > a.reach[k][1] + LIMIT || to < a.reach[k][0] - LIMIT;
  });
}

/** For boxes that lie square to one another: which axis of b runs with each of a's. Null where they are turned. */
function alignment(a: Body, b: Body): readonly number[] | null {
  const theirs = axesOf(b.part.place);
  const turned = axesOf(a.part.place).map((axis) => theirs.findIndex((one) => Math.abs(dot(one, axis)) > 1 - 1e-13));
  return turned.includes(-1) ? null : turned;
}

/** The gap of two boxes square to one another. They touch where they lie over one another along two axes at least. */
function boxGap(a: Body, b: Body, turned: readonly number[]): number | null {
  const axes = axesOf(a.part.place);
  const gaps = turned.map((t, k) => {
    const back = dot(axesOf(b.part.place)[t], axes[k]) < 0;
    const [p, q] = b.reach[t];
    const [from, to] = back ? [-q, -p] : [p, q];
    return Math.max(from - a.reach[k][1], a.reach[k][0] - to);
  });
  const most = Math.max(...gaps);
  if (most > LIMIT || gaps.filter((g) => g <= -SIDEWAYS).length < 2) return null;
  return Math.max(0, most);
}

/** Whether two pieces still touch alike when one is moved a little, any way along where they meet: not so where an arris grazes an arris. */
function isSteady(p: Piece, q: Piece): boolean {
  const far = 2 * LIMIT + 1;
  const met = gapOf(p.drawnIn(), q.points, far);
  if (!met || met.gap === 0) return met !== null;
  return sideways(met).every((shift) => gapOf(p.drawnIn(), q.points, met.gap + STEADY, shift) !== null);
}

/** The four ways along the plane in which two pieces meet. */
function sideways({ gap, across }: Gap): readonly Vec3[] {
  const [x, y, z] = across.map((v) => v / gap);
  const [ax, ay, az] = Math.abs(x) < 0.6 ? [1, 0, 0] : Math.abs(y) < 0.6 ? [0, 1, 0] : [0, 0, 1];
  const u = unit([y * az - z * ay, z * ax - x * az, x * ay - y * ax]);
  const w: Vec3 = [y * u[2] - z * u[1], z * u[0] - x * u[2], x * u[1] - y * u[0]];
  return [u, w].flatMap((v): Vec3[] => [SIDEWAYS, -SIDEWAYS].map((s): Vec3 => [v[0] * s, v[1] * s, v[2] * s]));
}

function unit(v: Vec3): Vec3 {
  const length = Math.hypot(...v);
  return [v[0] / length, v[1] / length, v[2] / length];
}
