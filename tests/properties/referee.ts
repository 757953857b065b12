import Module, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import { toUnit } from '../../src/base/place';
import { solidOf as exactSolid } from '../../src/base/solid/solid';
import type { Vec3 } from '../../src/vocabulary/geometry';
import type { Part } from '../../src/vocabulary/part';
import { cornersOf } from './measure';

let kernel: Promise<ManifoldToplevel> | undefined;

/** The solid kernel that stands as referee: it shares no code with the engine. */
export function referee(): Promise<ManifoldToplevel> {
  kernel ??= Module().then((wasm) => {
    wasm.setup();
    return wasm;
  });
  return kernel;
}

/**
 * A part as the kernel's solid, in unit coordinates. The kernel works in double precision but reads single, which moves a face
 * of a long part by up to half a micron per metre: so each corner is put back to where it is. Delete it after use.
 */
export function solidOf(wasm: ManifoldToplevel, { shape, place }: Pick<Part, 'shape' | 'place'>): Manifold {
  const { points, triangles } = exactSolid(shape);
  const rough = Float32Array.from(points);
  const exact = new Map<string, number>();
  for (let i = 0; i < rough.length; i += 3) exact.set(`${rough[i]},${rough[i + 1]},${rough[i + 2]}`, i);
  const read = new wasm.Manifold(new wasm.Mesh({ numProp: 3, vertProperties: rough, triVerts: triangles }));
  const solid = read.warp((corner) => {
    const i = exact.get(`${corner[0]},${corner[1]},${corner[2]}`);
    if (i === undefined) throw new Error(`the kernel moved a corner to ${corner}`);
    const at = toUnit(place, points[i], points[i + 1], points[i + 2]);
    [corner[0], corner[1], corner[2]] = at;
  });
  read.delete();
  return solid;
}

export interface Overlap {
  readonly a: string;
  readonly b: string;
  readonly mm3: number;
}

/**
 * Parts that overlap by less than this in some direction are told apart without the kernel, mm: over the whole of a 3 × 1.2 m sheet
 * that is a third of a cubic millimetre.
 */
const APART = 1e-7;

/** Pairs of parts that share more than `limit` mm³ (not below 1). */
export function overlaps(wasm: ManifoldToplevel, parts: readonly Part[], limit: number): readonly Overlap[] {
  const corners = parts.map((part) => cornersOf(part));
  const boxes = corners.map((points) => AXES.map((axis) => shadow(points, axis)));
  const solids = new Map<number, Manifold>();
  const solid = (i: number): Manifold => {
    const made = solids.get(i) ?? solidOf(wasm, parts[i]);
    solids.set(i, made);
    return made;
  };
  const found: Overlap[] = [];
  for (let i = 0; i < parts.length; i++)
    for (let j = i + 1; j < parts.length; j++) {
      if (AXES.some((_, k) => apart(boxes[i][k], boxes[j][k]))) continue;
      // Neighbours in a run that is turned in plan are told apart along their own axes.
      const own = [parts[i].place, parts[j].place].flatMap(({ along, across, out }) => [along, across, out]);
      if (own.some((axis) => apart(shadow(corners[i], axis), shadow(corners[j], axis)))) continue;
      const mm3 = sharedBy(solid(i), solid(j), limit);
      if (mm3 > limit) found.push({ a: parts[i].mark, b: parts[j].mark, mm3 });
    }
  for (const made of solids.values()) made.delete();
  return found;
}

/**
 * What two solids share, mm³. Where many small faces lie in one another (a rail's curve in its seat) the kernel now and then stitches a
 * paper-thin result wrongly and gives it a body: so it is asked in three ways, and the middle answer counts.
 */
function sharedBy(a: Manifold, b: Manifold, limit: number): number {
  const volume = (made: Manifold): number => {
    const found = made.volume();
    made.delete();
    return found;
  };
  const shared = volume(a.intersect(b));
  if (shared <= limit) return shared;
  const missing = a.volume() + b.volume() - volume(a.add(b));
  const taken = a.volume() - volume(a.subtract(b));
  return [shared, missing, taken].sort((x, y) => x - y)[1];
}

/** Parts further than `limit` mm from every other part, by the kernel's least gap; with how far the nearest is looked for. */
export function touchingNothing(wasm: ManifoldToplevel, parts: readonly Part[], limit: number): readonly string[] {
  const corners = parts.map((part) => cornersOf(part));
  const boxes = corners.map((points) => AXES.map((axis) => shadow(points, axis)));
  const solids = new Map<number, Manifold>();
  const solid = (i: number): Manifold => {
    const made = solids.get(i) ?? solidOf(wasm, parts[i]);
    solids.set(i, made);
    return made;
  };
  const near = (i: number, j: number): boolean =>
    AXES.every((_, k) => Math.min(boxes[i][k][1], boxes[j][k][1]) - Math.max(boxes[i][k][0], boxes[j][k][0]) >= -limit);
  const held = new Set<number>();
  const loose: string[] = [];
  parts.forEach((part, i) => {
    if (held.has(i)) return;
    const mate = parts.findIndex((_, j) => j !== i && near(i, j) && solid(i).minGap(solid(j), 2 * limit) <= limit);
    if (mate < 0) loose.push(part.mark);
    else held.add(i).add(mate);
  });
  for (const made of solids.values()) made.delete();
  return loose;
}

const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** From where to where points reach in a direction. */
function shadow(points: readonly Vec3[], [x, y, z]: Vec3): readonly [number, number] {
  let [from, to] = [Infinity, -Infinity];
  for (const p of points) {
    const at = p[0] * x + p[1] * y + p[2] * z;
    from = Math.min(from, at);
    to = Math.max(to, at);
  }
  return [from, to];
}

const apart = (a: readonly [number, number], b: readonly [number, number]): boolean =>
  Math.min(a[1], b[1]) - Math.max(a[0], b[0]) <= APART;
