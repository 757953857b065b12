import Module, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import { toUnit } from '../../src/base/place';
import { solidOf as exactSolid } from '../../src/base/solid/solid';
import type { Part } from '../../src/vocabulary/part';

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

/** Pairs of parts that share more than `limit` mm³. */
export function overlaps(wasm: ManifoldToplevel, parts: readonly Part[], limit: number): readonly Overlap[] {
  const solids = parts.map((part) => ({ part, solid: solidOf(wasm, part) }));
  const boxes = solids.map(({ solid }) => solid.boundingBox());
  const found: Overlap[] = [];
  for (let i = 0; i < solids.length; i++)
    for (let j = i + 1; j < solids.length; j++) {
      const [p, q] = [boxes[i], boxes[j]];
      if ([0, 1, 2].some((k) => Math.min(p.max[k], q.max[k]) - Math.max(p.min[k], q.min[k]) <= 1e-3)) continue;
      const shared = solids[i].solid.intersect(solids[j].solid);
      const mm3 = shared.volume();
      shared.delete();
      if (mm3 > limit) found.push({ a: solids[i].part.mark, b: solids[j].part.mark, mm3 });
    }
  for (const { solid } of solids) solid.delete();
  return found;
}
