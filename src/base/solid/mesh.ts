import type { Place } from '../../vocabulary/geometry';
import type { Mesh, Shape } from '../../vocabulary/shape';
import { solidOf } from './solid';

/**
 * A part as a closed triangle mesh in unit coordinates, mm. Triangles are counter-clockwise seen from outside; corners are
 * shared, so every edge is run once in each direction. Its place must be right-handed (along × across = out).
 */
export function meshOf(part: { readonly shape: Shape; readonly place: Place }): Mesh {
  const { points, triangles } = solidOf(part.shape);
  const { origin: o, along: a, across: b, out: c } = part.place;
  const positions = new Float32Array(points.length);
  for (let i = 0; i < points.length; i += 3) {
    const x = points[i];
    const y = points[i + 1];
    const z = points[i + 2];
    positions[i] = o[0] + a[0] * x + b[0] * y + c[0] * z;
    positions[i + 1] = o[1] + a[1] * x + b[1] * y + c[1] * z;
    positions[i + 2] = o[2] + a[2] * x + b[2] * y + c[2] * z;
  }
  return { positions, indices: triangles };
}
