import type { Mesh } from '../../src/vocabulary/shape';

/** Triangles laid out one after another (nine numbers each) with a normal at every corner, and the edges worth drawing. */
export interface Creased {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  /** Pairs of points, six numbers each. */
  readonly edges: Float32Array;
}

/** Faces that turn less than this into each other are shaded as one round; an arc's own facets turn far less. */
const SMOOTH_DEG = 30;
/** An edge that turns more than this is drawn as a line (chosen by eye). */
const EDGE_DEG = 25;

const cosine = (deg: number): number => Math.cos((deg * Math.PI) / 180);

/** Corners nearer than a thousandth of a millimetre are one corner. */
const WELD = 1000;

/** One number for each distinct corner of a mesh, by index into its positions. */
function welded(mesh: Mesh): Uint32Array {
  const seen = new Map<string, number>();
  const count = mesh.positions.length / 3;
  const out = new Uint32Array(count);
  for (let i = 0; i < count; i++) {
    const [x, y, z] = [0, 1, 2].map((axis) => Math.round(mesh.positions[3 * i + axis]! * WELD));
    const key = `${x},${y},${z}`;
    const known = seen.get(key);
    if (known === undefined) seen.set(key, i);
    out[i] = known ?? i;
  }
  return out;
}

/** Unit normals and areas (doubled) of a mesh's triangles. A triangle without area has the normal (0, 0, 0). */
function faces(mesh: Mesh): { normals: Float64Array; areas: Float64Array } {
  const p = mesh.positions;
  const count = mesh.indices.length / 3;
  const normals = new Float64Array(mesh.indices.length);
  const areas = new Float64Array(count);
  for (let t = 0; t < count; t++) {
    const a = 3 * mesh.indices[3 * t]!;
    const b = 3 * mesh.indices[3 * t + 1]!;
    const c = 3 * mesh.indices[3 * t + 2]!;
    const ux = p[b]! - p[a]!;
    const uy = p[b + 1]! - p[a + 1]!;
    const uz = p[b + 2]! - p[a + 2]!;
    const vx = p[c]! - p[a]!;
    const vy = p[c + 1]! - p[a + 1]!;
    const vz = p[c + 2]! - p[a + 2]!;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const area = Math.hypot(nx, ny, nz);
    areas[t] = area;
    if (area < 1e-9) continue;
    normals[3 * t] = nx / area;
    normals[3 * t + 1] = ny / area;
    normals[3 * t + 2] = nz / area;
  }
  return { normals, areas };
}

/**
 * A closed mesh with corners split where the surface turns sharply, so that a moulding's rounds shade softly and its
 * quirks stay crisp, and the sharp edges as lines. Same frame and units as the mesh.
 */
export function creased(mesh: Mesh): Creased {
  const corner = welded(mesh);
  const { normals: n, areas } = faces(mesh);
  const triangles = areas.length;
  const at = (t: number, k: number): number => corner[mesh.indices[3 * t + k]!]!;

  const around = new Map<number, number[]>();
  const edgeFaces = new Map<number, number>();
  const edges: number[] = [];
  const span = mesh.positions.length / 3;
  const turn = (s: number, t: number): number =>
    n[3 * s]! * n[3 * t]! + n[3 * s + 1]! * n[3 * t + 1]! + n[3 * s + 2]! * n[3 * t + 2]!;
  const edgeCosine = cosine(EDGE_DEG);
  for (let t = 0; t < triangles; t++) {
    for (let k = 0; k < 3; k++) {
      const a = at(t, k);
      const b = at(t, (k + 1) % 3);
      const list = around.get(a);
      if (list) list.push(t);
      else around.set(a, [t]);
      if (a === b || areas[t]! < 1e-9) continue;
      const key = Math.min(a, b) * span + Math.max(a, b);
      const other = edgeFaces.get(key);
      if (other === undefined) edgeFaces.set(key, t);
      else if (turn(other, t) < edgeCosine) {
        edges.push(...mesh.positions.subarray(3 * a, 3 * a + 3), ...mesh.positions.subarray(3 * b, 3 * b + 3));
      }
    }
  }

  const positions = new Float32Array(9 * triangles);
  const normals = new Float32Array(9 * triangles);
  const smoothCosine = cosine(SMOOTH_DEG);
  for (let t = 0; t < triangles; t++) {
    for (let k = 0; k < 3; k++) {
      const v = at(t, k);
      let x = 0;
      let y = 0;
      let z = 0;
      for (const s of around.get(v)!) {
        if (turn(s, t) < smoothCosine) continue;
        x += n[3 * s]! * areas[s]!;
        y += n[3 * s + 1]! * areas[s]!;
        z += n[3 * s + 2]! * areas[s]!;
      }
      const size = Math.hypot(x, y, z) || 1;
      const to = 9 * t + 3 * k;
      positions.set(mesh.positions.subarray(3 * v, 3 * v + 3), to);
      normals[to] = x / size;
      normals[to + 1] = y / size;
      normals[to + 2] = z / size;
    }
  }
  return { positions, normals, edges: new Float32Array(edges) };
}
