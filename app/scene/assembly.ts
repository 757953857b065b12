import { add } from '../../src/base/vec';
import type { Vec3 } from '../../src/vocabulary/geometry';
import type { BuildStage, Part } from '../../src/vocabulary/part';
import { indexAt } from './ranges';
import { type Solid, solidOf } from './solid';
import { type Surface, surfaceOf } from './surface';

/** All parts of one surface as one list of triangles, in unit coordinates (mm, z up). */
export interface Heap {
  readonly surface: Surface;
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  /** Grain coordinates in mm: along the part, and round it. */
  readonly grain: Float32Array;
  /** Lightness of each part against its neighbours, as a grey colour at each corner (0–255). */
  readonly tones: Uint8Array;
  /** First triangle of each part, and the parts' marks, in the same order. */
  readonly starts: Uint32Array;
  readonly marks: readonly string[];
}

/** Everything to be drawn, in few pieces. */
export interface Assembly {
  readonly heaps: readonly Heap[];
  readonly edges: Float32Array;
}

export interface Box {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** The mark of the part that a triangle of a heap belongs to. */
export function markAt(heap: Heap, triangle: number): string | null {
  return heap.marks[indexAt(heap.starts, heap.positions.length / 9, triangle)] ?? null;
}

/** How the parts are drawn otherwise than they stand. */
export interface Drawn {
  readonly shift?: ((part: Part) => Vec3) | null;
  /** Surface of a part instead of its own; undefined: its own. */
  readonly surface?: ((part: Part) => Surface | undefined) | null;
}

const STILL: Vec3 = [0, 0, 0];

/** Puts parts together, one heap for each surface that occurs. */
export function assemble(parts: readonly Part[], stage: BuildStage, drawn: Drawn = {}): Assembly {
  const bySurface = new Map<Surface, { part: Part; solid: Solid }[]>();
  let edgeNumbers = 0;
  for (const part of parts) {
    const solid = solidOf(part.shape);
    const surface = drawn.surface?.(part) ?? surfaceOf(part, stage);
    const group = bySurface.get(surface);
    if (group) group.push({ part, solid });
    else bySurface.set(surface, [{ part, solid }]);
    edgeNumbers += solid.edges.length;
  }
  const edges = new Float32Array(edgeNumbers);
  let edgeAt = 0;
  const heaps: Heap[] = [];
  for (const [surface, group] of bySurface) {
    heaps.push(heapOf(surface, group, drawn));
    for (const { part, solid } of group) edgeAt = put(part, solid.edges, edges, edgeAt, drawn.shift?.(part) ?? STILL);
  }
  return { heaps, edges };
}

function heapOf(surface: Surface, group: readonly { part: Part; solid: Solid }[], drawn: Drawn): Heap {
  const numbers = group.reduce((sum, { solid }) => sum + solid.positions.length, 0);
  const positions = new Float32Array(numbers);
  const normals = new Float32Array(numbers);
  const grain = new Float32Array((numbers / 3) * 2);
  const tones = new Uint8Array(numbers);
  const starts = new Uint32Array(group.length);
  let at = 0;
  group.forEach(({ part, solid }, i) => {
    starts[i] = at / 9;
    const chance = scatter(part.mark);
    tones.fill(255 - Math.round(chance * 26), at, at + solid.positions.length);
    layGrain(solid, chance * 5000, grain, (at / 3) * 2);
    put(part, solid.normals, normals, at, null);
    at = put(part, solid.positions, positions, at, drawn.shift?.(part) ?? STILL);
  });
  return { surface, positions, normals, grain, tones, starts, marks: group.map(({ part }) => part.mark) };
}

/** Turns a part's own triples into unit coordinates (points, shifted; directions without a shift) and writes them at `to`. */
function put(part: Part, from: Float32Array, into: Float32Array, to: number, shift: Vec3 | null): number {
  const { origin, along: a, across: b, out: c } = part.place;
  const [ox, oy, oz] = shift ? add(origin, shift) : STILL;
  for (let i = 0; i < from.length; i += 3) {
    const x = from[i]!;
    const y = from[i + 1]!;
    const z = from[i + 2]!;
    into[to + i] = ox + a[0] * x + b[0] * y + c[0] * z;
    into[to + i + 1] = oy + a[1] * x + b[1] * y + c[1] * z;
    into[to + i + 2] = oz + a[2] * x + b[2] * y + c[2] * z;
  }
  return to + from.length;
}

/** Grain runs along a part; on its end faces it is looked at end on. `shift` keeps two like parts from looking alike. */
function layGrain(solid: Solid, shift: number, into: Float32Array, to: number): void {
  const { positions: p, normals: n } = solid;
  for (let i = 0, g = to; i < p.length; i += 3, g += 2) {
    const along = Math.abs(n[i]!);
    const across = Math.abs(n[i + 1]!);
    const out = Math.abs(n[i + 2]!);
    const endOn = along > across && along > out;
    into[g] = shift + (endOn ? p[i + 1]! : p[i]!);
    into[g + 1] = shift / 7 + (endOn || across > out ? p[i + 2]! : p[i + 1]!);
  }
}

/** A number from 0 to 1 that is always the same for the same mark: FNV-1a (from memory), by its low bits. */
export function scatter(mark: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < mark.length; i++) hash = Math.imul(hash ^ mark.charCodeAt(i), 0x01000193);
  return ((hash >>> 0) % 1024) / 1023;
}

/** The box round some parts in unit coordinates; null when there are none. */
export function boxOf(parts: readonly Part[], shift?: Drawn['shift']): Box | null {
  if (parts.length === 0) return null;
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const part of parts) {
    const by = shift?.(part) ?? STILL;
    for (const corner of cornersOf(part).map((at) => add(at, by))) {
      for (const axis of [0, 1, 2] as const) {
        min[axis] = Math.min(min[axis], corner[axis]);
        max[axis] = Math.max(max[axis], corner[axis]);
      }
    }
  }
  return { min, max };
}

/** The eight corners of the box round a part in its own axes, in unit coordinates. */
export function cornersOf(part: Pick<Part, 'shape' | 'place'>): readonly Vec3[] {
  const { min, max } = solidOf(part.shape);
  const { origin: o, along: a, across: b, out: c } = part.place;
  const corners: Vec3[] = [];
  for (const x of [min[0], max[0]]) {
    for (const y of [min[1], max[1]]) {
      for (const z of [min[2], max[2]]) {
        corners.push([
          o[0] + a[0] * x + b[0] * y + c[0] * z,
          o[1] + a[1] * x + b[1] * y + c[1] * z,
          o[2] + a[2] * x + b[2] * y + c[2] * z,
        ]);
      }
    }
  }
  return corners;
}
