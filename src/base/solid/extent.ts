import type { Place, Vec2, Vec3 } from '../../vocabulary/geometry';
import type { Shape } from '../../vocabulary/shape';
import { flatten } from '../outline';
import { toUnit } from '../place';
import { dot } from '../vec';
import { endSection } from './hollows';
import { ringsOf } from './rings';
import { planeAt } from './stick';

interface Placed {
  readonly shape: Shape;
  readonly place: Place;
}

/** Every corner of a shape in its own axes. Needs no mesh. */
function eachCorner(shape: Shape, visit: (along: number, across: number, out: number) => void): void {
  if (shape.kind === 'stick') {
    for (const [u, v] of flatten(endSection(shape))) {
      visit(planeAt(shape.start, u, v), u, v);
      visit(planeAt(shape.end, u, v), u, v);
    }
  } else {
    for (const ring of ringsOf(shape)) for (const [x, y] of ring.points) visit(x, y, ring.out);
  }
}

/** Every corner of a placed shape as seen from above, unit coordinates. */
export function cornersInPlan({ shape, place }: Placed): readonly Vec2[] {
  const corners: Vec2[] = [];
  eachCorner(shape, (along, across, out) => {
    const [x, y] = toUnit(place, along, across, out);
    corners.push([x, y]);
  });
  return corners;
}

/** How far a placed shape reaches along a direction of the room: the least and the greatest of p · direction, mm. */
export function extentOf({ shape, place }: Placed, direction: Vec3): readonly [number, number] {
  const o = dot(place.origin, direction);
  const [a, b, c] = [dot(place.along, direction), dot(place.across, direction), dot(place.out, direction)];
  let least = Infinity;
  let greatest = -Infinity;
  eachCorner(shape, (along, across, out) => {
    const value = o + a * along + b * across + c * out;
    if (value < least) least = value;
    if (value > greatest) greatest = value;
  });
  return [least, greatest];
}

/** The box a placed shape stands in, along x, y and z of the room, mm. */
export function boundsInRoom({ shape, place }: Placed): { min: Vec3; max: Vec3 } {
  let [x0, y0, z0, x1, y1, z1] = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
  eachCorner(shape, (along, across, out) => {
    const [x, y, z] = toUnit(place, along, across, out);
    if (x < x0) x0 = x;
    if (x > x1) x1 = x;
    if (y < y0) y0 = y;
    if (y > y1) y1 = y;
    if (z < z0) z0 = z;
    if (z > z1) z1 = z;
  });
  return { min: [x0, y0, z0], max: [x1, y1, z1] };
}
