import type { Vec2 } from '../../vocabulary/geometry';
import type { Stick } from '../../vocabulary/shape';
import { facetsOf, flatten } from '../outline';
import { type LocalView, SQUARE_ON } from './project-local';
import { planeAt } from './stick';

/** Seen along its axis, a stick shows its section; otherwise null: its silhouette is the hull. */
export function stickOutline(stick: Stick, view: LocalView): Vec2[] | null {
  if (Math.abs(view.toward[0]) < SQUARE_ON) return null;
  const end = view.toward[0] > 0 ? stick.end : stick.start;
  const points = flatten(stick.section).map(([u, v]) => view.onPaper(planeAt(end, u, v), u, v));
  return view.toward[0] > 0 ? points : points.reverse();
}

/** Arrises along a stick that the viewer sees, from end to end. None when it is seen along its axis. */
export function stickLines(stick: Stick, view: LocalView): Vec2[][] {
  if (Math.abs(view.toward[0]) >= SQUARE_ON) return [];
  const { points, sharp } = facetsOf(stick.section);
  // In the plane of the section, the direction in which the viewer stands.
  const eye: Vec2 = [view.toward[1], view.toward[2]];
  const lines: Vec2[][] = [];
  points.forEach((p, i) => {
    if (!sharp[i] || !seen(points, i, eye)) return;
    const [u, v] = p;
    lines.push([view.onPaper(planeAt(stick.start, u, v), u, v), view.onPaper(planeAt(stick.end, u, v), u, v)]);
  });
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
