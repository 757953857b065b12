import { meshOf } from '../base/solid/mesh';
import type { Part } from '../vocabulary/part';
import type { Mesh } from '../vocabulary/shape';

/** Looks of the finishes: base colour (linear RGB) and roughness. Chosen by eye. */
const LOOKS = {
  paint: { name: 'painted', colour: [0.55, 0.6, 0.56], roughness: 0.6 },
  bare: { name: 'softwood', colour: [0.75, 0.55, 0.33], roughness: 0.9 },
  oil: { name: 'oiled hardwood', colour: [0.36, 0.19, 0.08], roughness: 0.45 },
} as const satisfies Record<
  Part['finish'],
  { name: string; colour: readonly [number, number, number]; roughness: number }
>;

const MM_PER_M = 1000;

/** Twice the area below which a triangle has no direction worth the name, m²: a thousandth of a millimetre square, about what a single float resolves a few metres from the origin. */
const FLAT = 1e-12;

/**
 * The parts as one glTF 2.0 binary file: metres, y up (the unit's front, seen along +y in plan, faces +z), a node for each part
 * named by its mark, with name, material, sizes in mm, weight and the section that it leaves on among its extras. Flat normals.
 */
export async function modelGlb(parts: readonly Part[], name: string): Promise<Uint8Array> {
  const { Document, WebIO } = await import('@gltf-transform/core');
  const document = new Document();
  const buffer = document.createBuffer();
  const scene = document.createScene(name);
  document.getRoot().setDefaultScene(scene);
  const used = new Map<Part['finish'], ReturnType<typeof document.createMaterial>>();
  const materialOf = (finish: Part['finish']) => {
    const look = LOOKS[finish];
    const material =
      used.get(finish) ??
      document
        .createMaterial(look.name)
        .setBaseColorFactor([...look.colour, 1])
        .setMetallicFactor(0)
        .setRoughnessFactor(look.roughness);
    used.set(finish, material);
    return material;
  };
  for (const part of parts) {
    const { positions, normals } = facets(meshOf(part));
    const accessor = (array: Float32Array<ArrayBuffer>) =>
      document.createAccessor().setType('VEC3').setArray(array).setBuffer(buffer);
    const primitive = document
      .createPrimitive()
      .setAttribute('POSITION', accessor(positions))
      .setAttribute('NORMAL', accessor(normals))
      .setMaterial(materialOf(part.finish));
    const node = document
      .createNode(part.mark)
      .setMesh(document.createMesh(part.mark).addPrimitive(primitive))
      .setExtras({
        name: part.name,
        where: part.where,
        run: part.run,
        fitted: part.fitted,
        ...(part.inSection === undefined ? {} : { section: part.inSection }),
        material: part.material,
        lengthMm: part.shopLength,
        widthMm: part.size.width,
        thicknessMm: part.size.thickness,
        weightKg: part.weightKg,
      });
    scene.addChild(node);
  }
  return new WebIO().writeBinary(document);
}

/** Triangles with corners of their own, each with its normal; metres, y up. Triangles that single floats flatten are left out. */
function facets(mesh: Mesh): { positions: Float32Array<ArrayBuffer>; normals: Float32Array<ArrayBuffer> } {
  const positions: number[] = [];
  const normals: number[] = [];
  for (let i = 0; i < mesh.indices.length; i += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => corner(mesh, mesh.indices[i + k]!)) as [Triple, Triple, Triple];
    const u: Triple = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
    const v: Triple = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
    const across: Triple = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const size = Math.hypot(...across);
    if (size < FLAT) continue;
    positions.push(...a, ...b, ...c);
    for (let k = 0; k < 3; k += 1) normals.push(across[0] / size, across[1] / size, across[2] / size);
  }
  return { positions: new Float32Array(positions), normals: new Float32Array(normals) };
}

type Triple = [number, number, number];

/** Plan x stays x, up becomes y, plan y (away from the front of the first run) becomes −z. */
function corner({ positions }: Mesh, index: number): Triple {
  const at = (k: number): number => Math.fround((positions[index * 3 + k] ?? 0) / MM_PER_M);
  return [at(0), at(2), -at(1) + 0];
}
