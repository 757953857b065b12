import type { Place, Vec2, Vec3 } from '../../vocabulary/geometry';
import type { Shape } from '../../vocabulary/shape';
import { flatten } from '../outline';
import { hull } from '../polygon';
import { cross, dot } from '../vec';
import { extentOf } from './extent';
import { boardLines, boardOutline } from './project-board';
import type { LocalView } from './project-local';
import { stickLines, stickOutline } from './project-stick';
import { solidOf } from './solid';

/** An orthographic view: unit vectors at right angles, to the right and up on the paper. The viewer stands at right × up. */
export interface View {
  readonly right: Vec3;
  readonly up: Vec3;
}

/** A part as seen in a view, mm: x to the right, y up, from the unit's own origin. */
export interface Projection {
  /** The silhouette, counter-clockwise. */
  readonly outline: readonly Vec2[];
  /** What one sees through, each counter-clockwise. */
  readonly holes: readonly (readonly Vec2[])[];
  /** Arrises that are seen inside the silhouette. */
  readonly lines: readonly (readonly Vec2[])[];
  /** How far its nearest point stands towards the viewer: draw parts in rising order. */
  readonly nearest: number;
}

/** Lines nearer than this to the silhouette lie on it, mm. */
const ON_OUTLINE = 1e-4;

/**
 * A part in a view. The silhouette is exact for sticks seen along their axis and for boards of one outline from back to face seen
 * square on. From elsewhere it is the convex hull: exact for convex pieces, but it hides hollows in the outline of others.
 */
export function projectOf(part: { readonly shape: Shape; readonly place: Place }, view: View): Projection {
  const { shape, place } = part;
  const local = localView(place, view);
  const [, nearest] = extentOf(part, cross(view.right, view.up));
  const own = shape.kind === 'stick' ? stickOutline(shape, local) : boardOutline(shape, local);
  const outline = own ?? hull(paperPoints(solidOf(shape).points, local));
  const lines = shape.kind === 'stick' ? stickLines(shape, local) : boardLines(shape, local);
  const holes = shape.kind === 'board' && own ? shape.holes.map((hole) => holeOnPaper(flatten(hole), local)) : [];
  return { outline, holes, lines: lines.filter((line) => !liesOn(line, outline)), nearest };
}

function localView(place: Place, view: View): LocalView {
  const local = (d: Vec3): Vec3 => [dot(place.along, d), dot(place.across, d), dot(place.out, d)];
  const right = local(view.right);
  const up = local(view.up);
  const x = dot(place.origin, view.right);
  const y = dot(place.origin, view.up);
  return {
    right,
    up,
    toward: local(cross(view.right, view.up)),
    onPaper: (a, b, c) => [x + right[0] * a + right[1] * b + right[2] * c, y + up[0] * a + up[1] * b + up[2] * c],
  };
}

function paperPoints(points: Float64Array, local: LocalView): Vec2[] {
  const out: Vec2[] = [];
  for (let i = 0; i < points.length; i += 3) out.push(local.onPaper(points[i], points[i + 1], points[i + 2]));
  return out;
}

function holeOnPaper(hole: readonly Vec2[], local: LocalView): Vec2[] {
  const points = hole.map(([a, b]) => local.onPaper(a, b, 0));
  return local.toward[2] < 0 ? points.reverse() : points;
}

/** Whether a line's ends and middle all lie on one side of the outline. */
function liesOn(line: readonly Vec2[], outline: readonly Vec2[]): boolean {
  return outline.some((a, i) => {
    const b = outline[(i + 1) % outline.length];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (length < ON_OUTLINE) return false;
    return line.every((p) => {
      const off = ((p[0] - a[0]) * (b[1] - a[1]) - (p[1] - a[1]) * (b[0] - a[0])) / length;
      const along = ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / length;
      return Math.abs(off) < ON_OUTLINE && along > -ON_OUTLINE && along < length + ON_OUTLINE;
    });
  });
}
