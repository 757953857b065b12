import type { Outline, Place, Vec2 } from '../../vocabulary/geometry';
import type { EndPlane, Shape } from '../../vocabulary/shape';
import { flatten } from '../outline';
import { hull } from '../polygon';
import { endSection } from './hollows';
import { ringsOf } from './rings';
import { planeAt } from './stick';

interface Placed {
  readonly shape: Shape;
  readonly place: Place;
}

export const isSquare = ({ perAcross, perOut }: EndPlane): boolean => perAcross === 0 && perOut === 0;

/** Every corner of a shape in its own axes. Needs no mesh. */
export function eachCorner(shape: Shape, visit: (along: number, across: number, out: number) => void): void {
  if (shape.kind === 'stick') {
    for (const p of flatten(endSection(shape))) {
      visit(planeAt(shape.start, p[0], p[1]), p[0], p[1]);
      visit(planeAt(shape.end, p[0], p[1]), p[0], p[1]);
    }
  } else {
    for (const ring of ringsOf(shape)) for (const p of ring.points) visit(p[0], p[1], ring.out);
  }
}

/** The corners of a placed shape as seen from above, unit coordinates: all that its outline in plan can have, and few besides. */
export function eachCornerInPlan({ shape, place }: Placed, visit: (x: number, y: number) => void): void {
  const { origin: o, along: a, across: b, out: c } = place;
  if (shape.kind === 'board') {
    eachCorner(shape, (along, across, out) =>
      visit(o[0] + a[0] * along + b[0] * across + c[0] * out, o[1] + a[1] * along + b[1] * across + c[1] * out),
    );
    return;
  }
  // Upright, a stick cut square shows its section. The ends of any are planes, so that the section's outermost corners are the stick's.
  const upright = Math.abs(a[2]) === 1 && isSquare(shape.start) && isSquare(shape.end);
  for (const [u, v] of outermost(endSection(shape))) {
    const x = o[0] + b[0] * u + c[0] * v;
    const y = o[1] + b[1] * u + c[1] * v;
    const start = upright ? 0 : planeAt(shape.start, u, v);
    visit(x + a[0] * start, y + a[1] * start);
    if (upright) continue;
    const end = planeAt(shape.end, u, v);
    visit(x + a[0] * end, y + a[1] * end);
  }
}

/** By section: all sticks of one share it, and the hull of a moulding is dear. */
const hulls = new WeakMap<Outline, readonly Vec2[]>();

function outermost(section: Outline): readonly Vec2[] {
  let points = hulls.get(section);
  if (!points) {
    points = hull(flatten(section));
    hulls.set(section, points);
  }
  return points;
}
