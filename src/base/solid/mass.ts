import type { Outline, Place, Vec2, Vec3 } from '../../vocabulary/geometry';
import type { Board, EndPlane, Shape, Stick } from '../../vocabulary/shape';
import { flatten } from '../outline';
import { toUnit } from '../place';
import { polygonArea, polygonCentroid } from '../polygon';
import { ringsOf } from './rings';
import { solidOf } from './solid';

/** Where the weight of a placed shape of one stuff acts, unit coordinates: the centre of its volume. */
export function massCentre({ shape, place }: { readonly shape: Shape; readonly place: Place }): Vec3 {
  const own = ownCentre(shape);
  return toUnit(place, own[0], own[1], own[2]);
}

const ownCentre = (shape: Shape): Vec3 => (shape.kind === 'board' ? ofBoard(shape) : (ofStick(shape) ?? ofMesh(shape)));

/** Area, first and second moments of a section about its own (0, 0): ∫1, ∫u, ∫v, ∫u², ∫uv, ∫v². */
interface Moments {
  readonly area: number;
  readonly u: number;
  readonly v: number;
  readonly uu: number;
  readonly uv: number;
  readonly vv: number;
}

const known = new WeakMap<Outline, Moments>();

/** Summed over the triangles between the flattened outline's sides and (0, 0): a quadratic is exact from a triangle's three corners. */
function momentsOf(outline: Outline): Moments {
  const cached = known.get(outline);
  if (cached) return cached;
  const points = flatten(outline);
  let [area, u, v, uu, uv, vv] = [0, 0, 0, 0, 0, 0];
  points.forEach(([ax, ay], i) => {
    const [bx, by] = points[(i + 1) % points.length];
    const w = (ax * by - bx * ay) / 2;
    area += w;
    u += (w * (ax + bx)) / 3;
    v += (w * (ay + by)) / 3;
    uu += (w * (ax * ax + ax * bx + bx * bx)) / 6;
    vv += (w * (ay * ay + ay * by + by * by)) / 6;
    uv += (w * (2 * ax * ay + ax * by + bx * ay + 2 * bx * by)) / 12;
  });
  const moments = { area, u, v, uu, uv, vv };
  known.set(outline, moments);
  return moments;
}

/** A stick between two planes: its length along a line of the section is linear in u and v, so the section's moments give all. */
function ofStick({ section, start, end, stopped }: Stick): Vec3 | undefined {
  if (stopped) return undefined;
  const m = momentsOf(section);
  const l = end.at - start.at;
  const a = end.perAcross - start.perAcross;
  const o = end.perOut - start.perOut;
  const volume = l * m.area + a * m.u + o * m.v;
  return [
    (squared(end, m) - squared(start, m)) / 2 / volume,
    (l * m.u + a * m.uu + o * m.uv) / volume,
    (l * m.v + a * m.uv + o * m.vv) / volume,
  ];
}

/** ∫ of the square of a plane's height over the section. */
const squared = ({ at, perAcross: x, perOut: y }: EndPlane, m: Moments): number =>
  at * at * m.area + 2 * at * (x * m.u + y * m.v) + x * x * m.uu + 2 * x * y * m.uv + y * y * m.vv;

/**
 * A board, ring by ring: between two of them every corner moves in a straight line, so area and moments are at most cubic in height, and
 * Simpson's rule is exact. Holes go straight through.
 */
function ofBoard(board: Board): Vec3 {
  const rings = ringsOf(board);
  const sum = [0, 0, 0, 0];
  const add = (weight: number, points: readonly Vec2[], out: number): void => {
    const area = polygonArea(points);
    if (area === 0) return;
    const [x, y] = polygonCentroid(points);
    sum[0] += weight * area;
    sum[1] += weight * area * x;
    sum[2] += weight * area * y;
    sum[3] += weight * area * out;
  };
  for (let r = 0; r + 1 < rings.length; r++) {
    const [low, high] = [rings[r], rings[r + 1]];
    const sixth = (high.out - low.out) / 6;
    if (sixth === 0) continue;
    const middle = low.points.map(([x, y], i): Vec2 => [(x + high.points[i][0]) / 2, (y + high.points[i][1]) / 2]);
    add(sixth, low.points, low.out);
    add(4 * sixth, middle, (low.out + high.out) / 2);
    add(sixth, high.points, high.out);
  }
  for (const hole of board.holes) add(-board.thickness, flatten(hole), board.thickness / 2);
  return [sum[1] / sum[0], sum[2] / sum[0], sum[3] / sum[0]];
}

/** Of a stick with stopped hollows, as of any shape: the sum over the tetrahedra between its mesh's triangles and the origin. */
function ofMesh(shape: Shape): Vec3 {
  const { points: p, triangles: t } = solidOf(shape);
  let volume = 0;
  const moment = [0, 0, 0];
  for (let k = 0; k < t.length; k += 3) {
    const [a, b, c] = [3 * t[k], 3 * t[k + 1], 3 * t[k + 2]];
    const six =
      p[a] * (p[b + 1] * p[c + 2] - p[b + 2] * p[c + 1]) +
      p[a + 1] * (p[b + 2] * p[c] - p[b] * p[c + 2]) +
      p[a + 2] * (p[b] * p[c + 1] - p[b + 1] * p[c]);
    volume += six;
    for (let i = 0; i < 3; i++) moment[i] += (six * (p[a + i] + p[b + i] + p[c + i])) / 4;
  }
  return [moment[0] / volume, moment[1] / volume, moment[2] / volume];
}
