import type { Place, Vec3 } from '../../vocabulary/geometry';
import type { Shape } from '../../vocabulary/shape';
import { toUnit } from '../place';
import { solidOf } from './solid';

const centres = new WeakMap<Shape, Vec3>();

/** Where the weight of a placed shape of one stuff acts, unit coordinates: the centre of its volume, summed over its mesh's tetrahedra. */
export function massCentre({ shape, place }: { readonly shape: Shape; readonly place: Place }): Vec3 {
  const own = centres.get(shape) ?? centreOf(shape);
  centres.set(shape, own);
  return toUnit(place, own[0], own[1], own[2]);
}

function centreOf(shape: Shape): Vec3 {
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
