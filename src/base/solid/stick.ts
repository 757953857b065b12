import type { Outline } from '../../vocabulary/geometry';
import type { EndPlane, Stick } from '../../vocabulary/shape';
import { flatten } from '../outline';
import { fill } from './caps';

const caps = new WeakMap<Outline, Uint32Array>();

/** Triangles that fill a section; the same section gives the same. */
export function capOf(section: Outline): Uint32Array {
  let cap = caps.get(section);
  if (!cap) {
    cap = fill(flatten(section));
    caps.set(section, cap);
  }
  return cap;
}

/** Where an end plane meets the line of the stick through (u, v) of its section, mm along. */
export const planeAt = (plane: EndPlane, u: number, v: number): number =>
  plane.at + plane.perAcross * u + plane.perOut * v;

/** Corners of a stick in its own axes (along, across, out): the start's, then the end's, in the order of the flattened section. */
export function stickPoints(stick: Stick): Float64Array {
  const section = flatten(stick.section);
  const n = section.length;
  const points = new Float64Array(n * 6);
  for (let i = 0; i < n; i++) {
    const [u, v] = section[i];
    const start = planeAt(stick.start, u, v);
    const end = planeAt(stick.end, u, v);
    if (!(end > start)) {
      throw new Error(
        `a stick ends at ${end} and starts at ${start} mm along its line (${u}, ${v}): its end cuts cross`,
      );
    }
    points.set([start, u, v], 3 * i);
    points.set([end, u, v], 3 * (n + i));
  }
  return points;
}

/** Triangles of a stick, counter-clockwise seen from outside: sides, then the start's cap, then the end's. */
export function stickTriangles(stick: Stick): Uint32Array {
  const n = flatten(stick.section).length;
  const cap = capOf(stick.section);
  const triangles = new Uint32Array(6 * n + 2 * cap.length);
  let t = 0;
  for (let i = 0; i < n; i++) {
    const j = i + 1 === n ? 0 : i + 1;
    triangles[t++] = i;
    triangles[t++] = j;
    triangles[t++] = n + j;
    triangles[t++] = i;
    triangles[t++] = n + j;
    triangles[t++] = n + i;
  }
  for (let k = 0; k < cap.length; k += 3) {
    triangles[t++] = cap[k];
    triangles[t++] = cap[k + 2];
    triangles[t++] = cap[k + 1];
  }
  for (let k = 0; k < cap.length; k++) triangles[t++] = n + cap[k];
  return triangles;
}
