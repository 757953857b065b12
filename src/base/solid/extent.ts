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
    for (const p of flatten(endSection(shape))) {
      visit(planeAt(shape.start, p[0], p[1]), p[0], p[1]);
      visit(planeAt(shape.end, p[0], p[1]), p[0], p[1]);
    }
  } else {
    for (const ring of ringsOf(shape)) for (const p of ring.points) visit(p[0], p[1], ring.out);
  }
}

/** Corners of a placed shape as seen from above, unit coordinates: all that its outline in plan can have, and few besides. */
export function cornersInPlan({ shape, place }: Placed): readonly Vec2[] {
  const corners: Vec2[] = [];
  if (shape.kind === 'stick' && Math.abs(place.along[2]) === 1 && isSquare(shape.start) && isSquare(shape.end)) {
    // Upright, it shows its section, whose hollows lie inside.
    for (const p of withoutHollows(endSection(shape))) {
      const at = toUnit(place, 0, p[0], p[1]);
      corners.push([at[0], at[1]]);
    }
    return corners;
  }
  eachCorner(shape, (along, across, out) => {
    const [x, y] = toUnit(place, along, across, out);
    corners.push([x, y]);
  });
  return corners;
}

const withoutHollows = (section: Outline): readonly Vec2[] =>
  section.segments.every(({ radius }) => radius === undefined || radius < 0)
    ? section.segments.map(({ to }) => to)
    : flatten(section);

/** From where to where a shape reaches along, across and out, in its own axes. */
type OwnBox = readonly [number, number, number, number, number, number];

const boxes = new WeakMap<Shape, OwnBox>();

function ownBox(shape: Shape): OwnBox {
  const known = boxes.get(shape);
  if (known) return known;
  const box = boxOf(shape);
  boxes.set(shape, box);
  return box;
}

const isSquare = ({ perAcross, perOut }: EndPlane): boolean => perAcross === 0 && perOut === 0;

const sections = new WeakMap<Outline, readonly [number, number, number, number]>();

/** How far a stick's section reaches across and out; sticks of one section share it. */
function sectionBox(stick: Stick): readonly [number, number, number, number] {
  const section = endSection(stick);
  let reach = sections.get(section);
  if (!reach) {
    const { min, max } = polygonBounds(flatten(section));
    reach = [min[0], max[0], min[1], max[1]];
    sections.set(section, reach);
  }
  return reach;
}

function boxOf(shape: Shape): OwnBox {
  let a0 = Infinity;
  let b0 = Infinity;
  let c0 = Infinity;
  let a1 = -Infinity;
  let b1 = -Infinity;
  let c1 = -Infinity;
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
  const a = dot(place.along, direction);
  const b = dot(place.across, direction);
  const c = dot(place.out, direction);
  // Most parts lie square to what is asked: then their own box tells it.
  if (Math.abs(a) >= PARALLEL) return ownReach(shape, 0, o, a);
  if (Math.abs(b) >= PARALLEL) return ownReach(shape, 2, o, b);
  if (Math.abs(c) >= PARALLEL) return ownReach(shape, 4, o, c);
  let least = Infinity;
  let greatest = -Infinity;
  eachCorner(shape, (along, across, out) => {
    const value = o + a * along + b * across + c * out;
    if (value < least) least = value;
    if (value > greatest) greatest = value;
  });
  return [least, greatest];
}

/** Reach along one of the shape's own axes (0 along, 2 across, 4 out), which lies along the direction or against it; `o`: the place's origin along it. */
function ownReach(shape: Shape, k: 0 | 2 | 4, o: number, axis: number): readonly [number, number] {
  // A stick cut square is told by its length and its section: most parts are, so nothing is kept for each of them.
  if (shape.kind === 'stick' && isSquare(shape.start) && isSquare(shape.end)) {
    if (k === 0) return turned(shape.start.at, shape.end.at, o, axis);
    const box = sectionBox(shape);
    return turned(box[k - 2], box[k - 1], o, axis);
  }
  const box = ownBox(shape);
  return turned(box[k], box[k + 1], o, axis);
}

const turned = (low: number, high: number, o: number, axis: number): readonly [number, number] =>
  axis > 0 ? [o + low, o + high] : [o - high, o - low];

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
