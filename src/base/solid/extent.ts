import type { Outline, Place, Vec3 } from '../../vocabulary/geometry';
import type { Shape, Stick } from '../../vocabulary/shape';
import { flatten } from '../outline';
import { polygonBounds } from '../polygon';
import { cover, type Reach } from '../reach';
import { dot } from '../vec';
import { eachCorner, isSquare } from './corners';
import { endSection } from './hollows';

interface Placed {
  readonly shape: Shape;
  readonly place: Place;
}

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

/** Directions this near to parallel are: on a part of 30 m some thousandths of a millimetre at most. */
const PARALLEL = 1 - 1e-15;

/** Where the shape that was asked about last reaches. Thousands are asked about, and an answer of its own for each would all be garbage. */
let least = 0;
let most = 0;

/** How far a placed shape reaches along a direction of the room: the least and the greatest of p · direction, mm. `direction` of length 1. */
export function extentOf(placed: Placed, direction: Vec3): readonly [number, number] {
  measure(placed, direction);
  return [least, most];
}

/** Widens a reach by how far a placed shape reaches along a direction of length 1. */
export function widenBy(reach: Reach, placed: Placed, direction: Vec3): void {
  measure(placed, direction);
  cover(reach, least, most);
}

function measure({ shape, place }: Placed, direction: Vec3): void {
  const o = dot(place.origin, direction);
  const a = dot(place.along, direction);
  const b = dot(place.across, direction);
  const c = dot(place.out, direction);
  // Most parts lie square to what is asked: then their own box tells it.
  if (Math.abs(a) >= PARALLEL) ownReach(shape, 0, o, a);
  else if (Math.abs(b) >= PARALLEL) ownReach(shape, 2, o, b);
  else if (Math.abs(c) >= PARALLEL) ownReach(shape, 4, o, c);
  else {
    least = Infinity;
    most = -Infinity;
    eachCorner(shape, (along, across, out) => {
      const value = o + a * along + b * across + c * out;
      if (value < least) least = value;
      if (value > most) most = value;
    });
  }
}

/** Reach along one of the shape's own axes (0 along, 2 across, 4 out), which lies along the direction or against it; `o`: the place's origin along it. */
function ownReach(shape: Shape, k: 0 | 2 | 4, o: number, axis: number): void {
  // A stick cut square is told by its length and its section: most parts are, so nothing is kept for each of them.
  if (shape.kind === 'stick' && isSquare(shape.start) && isSquare(shape.end)) {
    if (k === 0) turned(shape.start.at, shape.end.at, o, axis);
    else {
      const box = sectionBox(shape);
      turned(box[k - 2], box[k - 1], o, axis);
    }
  } else {
    const box = ownBox(shape);
    turned(box[k], box[k + 1], o, axis);
  }
}

function turned(low: number, high: number, o: number, axis: number): void {
  least = axis > 0 ? o + low : o - high;
  most = axis > 0 ? o + high : o - low;
}
