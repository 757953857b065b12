import type { Vec2 } from '../../vocabulary/geometry';
import type { Stick } from '../../vocabulary/shape';
import { facetsOf, flatten } from '../outline';
import { endSection, hollowsOf } from './hollows';
import { type LocalView, SQUARE_ON } from './project-local';
import { planeAt } from './stick';
import { isStopped } from './stopped';

/** Seen along its axis, a stick shows its section; otherwise null: its silhouette is the hull. */
export function stickOutline(stick: Stick, view: LocalView): Vec2[] | null {
  if (Math.abs(view.toward[0]) < SQUARE_ON) return null;
  const end = view.toward[0] > 0 ? stick.end : stick.start;
  const points = flatten(endSection(stick)).map(([u, v]) => view.onPaper(planeAt(end, u, v), u, v));
  return view.toward[0] > 0 ? points : points.reverse();
}

/** Arrises along a stick that the viewer sees, from end to end or from stop to stop. None when it is seen along its axis. */
export function stickLines(stick: Stick, view: LocalView): Vec2[][] {
  if (Math.abs(view.toward[0]) >= SQUARE_ON) return [];
  const { points, sharp } = facetsOf(endSection(stick));
  // In the plane of the section, the direction in which the viewer stands.
  const eye: Vec2 = [view.toward[1], view.toward[2]];
  const lines: Vec2[][] = [];
  points.forEach((p, i) => {
    if (!sharp[i] || !seen(points, i, eye)) return;
    const [u, v] = p;
    lines.push([view.onPaper(planeAt(stick.start, u, v), u, v), view.onPaper(planeAt(stick.end, u, v), u, v)]);
  });
  return isStopped(stick) ? [...lines, ...hollowLines(stick, view, eye)] : lines;
}

/** Round each stopped hollow: its edges where they are arrises of their own, and the chords where it ends. */
function hollowLines(stick: Stick, view: LocalView, eye: Vec2): Vec2[][] {
  const whole = facetsOf(endSection(stick));
  const cut = facetsOf(stick.section);
  const { from, to } = stick.stopped as { from: number; to: number };
  const lines: Vec2[][] = [];
  const drawn = new Set<number>();
  for (const { at } of hollowsOf(stick.section)) {
    const ends = [at, (at + 1) % whole.points.length];
    const [a, b] = ends.map((i) => whole.points[i]);
    const looks = (b[1] - a[1]) * eye[0] - (b[0] - a[0]) * eye[1] > 1e-9;
    if (!looks || !ends.every((i) => seen(whole.points, i, eye))) continue;
    for (const along of [from, to]) lines.push([view.onPaper(along, ...a), view.onPaper(along, ...b)]);
    for (const i of ends) {
      const [u, v] = whole.points[i];
      const isArris = cut.sharp[cut.points.findIndex((p) => p[0] === u && p[1] === v)];
      if (whole.sharp[i] || !isArris || drawn.has(i)) continue;
      drawn.add(i);
      lines.push([view.onPaper(from, u, v), view.onPaper(to, u, v)]);
    }
  }
  return lines;
}

/** Whether corner i of the section is seen: one of its faces looks to the viewer and no stuff stands before it. */
function seen(points: readonly Vec2[], i: number, eye: Vec2): boolean {
  const n = points.length;
  const p = points[i];
  const looks = (a: Vec2, b: Vec2): boolean => (b[1] - a[1]) * eye[0] - (b[0] - a[0]) * eye[1] > 1e-9;
  if (!looks(points[(i + n - 1) % n], p) && !looks(p, points[(i + 1) % n])) return false;
  for (let k = 0; k < n; k++) {
    const j = (k + 1) % n;
    if (k === i || j === i) continue;
    if (meets(p, eye, points[k], points[j])) return false;
  }
  return true;
}

/** Whether the ray from p crosses the inside of side a–b, away from p itself. */
function meets(p: Vec2, ray: Vec2, a: Vec2, b: Vec2): boolean {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const slope = ray[0] * dy - ray[1] * dx;
  if (Math.abs(slope) < 1e-9) return false;
  const [ex, ey] = [a[0] - p[0], a[1] - p[1]];
  const far = (ex * dy - ey * dx) / slope;
  const at = (ex * ray[1] - ey * ray[0]) / slope;
  return far > 1e-6 && at > 1e-9 && at < 1 - 1e-9;
}
