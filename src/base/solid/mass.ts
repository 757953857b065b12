import type { Outline, Place, Vec3 } from '../../vocabulary/geometry';
import type { Board, EndPlane, Shape, Stick } from '../../vocabulary/shape';
import { flatten } from '../outline';
import { toUnit } from '../place';
import { polygonCentroid } from '../polygon';
import { solidOf } from './solid';

const centres = new WeakMap<Shape, Vec3>();

/** Where the weight of a placed shape of one stuff acts, unit coordinates: the centre of its volume. */
export function massCentre({ shape, place }: { readonly shape: Shape; readonly place: Place }): Vec3 {
  const own = centres.get(shape) ?? ownCentre(shape);
  centres.set(shape, own);
  return toUnit(place, own[0], own[1], own[2]);
}

const ownCentre = (shape: Shape): Vec3 =>
  (shape.kind === 'stick' ? ofStick(shape) : ofPlainBoard(shape)) ?? ofMesh(shape);

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
  const [l, a, o] = [end.at - start.at, end.perAcross - start.perAcross, end.perOut - start.perOut];
  const volume = l * m.area + a * m.u + o * m.v;
  const squared = ({ at, perAcross: x, perOut: y }: EndPlane): number =>
    at * at * m.area + 2 * at * (x * m.u + y * m.v) + x * x * m.uu + 2 * x * y * m.uv + y * y * m.vv;
  return [
    (squared(end) - squared(start)) / 2 / volume,
    (l * m.u + a * m.uu + o * m.uv) / volume,
    (l * m.v + a * m.uv + o * m.vv) / volume,
  ];
}

/** A board with square edges and no holes balances at half its thickness, on its outline's centre of area. */
function ofPlainBoard({ outline, holes, edges, thickness }: Board): Vec3 | undefined {
  if (holes.length > 0 || edges.some((edge) => edge.steps.length > 0)) return undefined;
  const [x, y] = polygonCentroid(outline);
  return [x, y, thickness / 2];
}

/** Of any shape: the sum over the tetrahedra between its mesh's triangles and the origin. */
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
