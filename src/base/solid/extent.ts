import type { Outline, Place, Vec2, Vec3 } from '../../vocabulary/geometry';
import type { EndPlane, Shape, Stick } from '../../vocabulary/shape';
import { flatten } from '../outline';
import { toUnit } from '../place';
import { polygonBounds } from '../polygon';
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

/** From where to where a shape reaches along, across and out, in its own axes. */
type OwnBox = readonly [number, number, number, number, number, number];

const boxes = new WeakMap<Shape, OwnBox>();

function ownBox(shape: Shape): OwnBox {
  const known = boxes.get(shape);
  if (known) return known;
  const box = shape.kind === 'stick' && isSquare(shape.start) && isSquare(shape.end) ? squareBox(shape) : boxOf(shape);
  boxes.set(shape, box);
  return box;
}

const isSquare = ({ perAcross, perOut }: EndPlane): boolean => perAcross === 0 && perOut === 0;

const sections = new WeakMap<Outline, readonly [number, number, number, number]>();

/** Of a stick cut square the section alone tells how far it reaches across and out; sticks alike share it. */
function squareBox(stick: Stick): OwnBox {
  const section = endSection(stick);
  let reach = sections.get(section);
  if (!reach) {
    const { min, max } = polygonBounds(flatten(section));
    reach = [min[0], max[0], min[1], max[1]];
    sections.set(section, reach);
  }
  return [stick.start.at, stick.end.at, ...reach];
}

function boxOf(shape: Shape): OwnBox {
  let [a0, a1, b0, b1, c0, c1] = [Infinity, -Infinity, Infinity, -Infinity, Infinity, -Infinity];
  eachCorner(shape, (along, across, out) => {
    if (along < a0) a0 = along;
    if (along > a1) a1 = along;
    if (across < b0) b0 = across;
    if (across > b1) b1 = across;
    if (out < c0) c0 = out;
    if (out > c1) c1 = out;
  });
  return [a0, a1, b0, b1, c0, c1];
}

/** Directions this near to parallel are: on a part of 30 m a tenth of a micron. */
const PARALLEL = 1 - 1e-15;

/** How far a placed shape reaches along a direction of the room: the least and the greatest of p · direction, mm. `direction` of length 1. */
export function extentOf({ shape, place }: Placed, direction: Vec3): readonly [number, number] {
  const o = dot(place.origin, direction);
  const axes = [dot(place.along, direction), dot(place.across, direction), dot(place.out, direction)];
  // Most parts lie square to what is asked: then their own box tells it.
  const k = axes.findIndex((axis) => Math.abs(axis) >= PARALLEL);
  if (k >= 0) {
    const box = ownBox(shape);
    const [low, high] = [box[2 * k], box[2 * k + 1]];
    return axes[k] > 0 ? [o + low, o + high] : [o - high, o - low];
  }
  const [a, b, c] = axes;
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
export function boundsInRoom(placed: Placed): { min: Vec3; max: Vec3 } {
  const [x, y, z] = ROOM_AXES.map((axis) => extentOf(placed, axis));
  return { min: [x[0], y[0], z[0]], max: [x[1], y[1], z[1]] };
}

const ROOM_AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
