import { toUnit } from '../base/place';
import { solidOf } from '../base/solid/solid';
import { dot } from '../base/vec';
import type { Place, Vec3 } from '../vocabulary/geometry';
import type { Shape } from '../vocabulary/shape';

interface Placed {
  readonly shape: Shape;
  readonly place: Place;
}

/** An upright plane in the room: the points whose product with the unit normal is `at`, mm. The near side is behind it. */
export interface Cut {
  readonly normal: Vec3;
  readonly at: number;
}

/**
 * Where a plane cuts a part: closed loops, counter-clockwise round stuff and clockwise round holes as seen against the normal, that is
 * by a viewer towards whom it points. No loop where it doesn't cut. A point that lies in the plane counts as behind it.
 */
export function sliceOf(part: Placed, cut: Cut): readonly (readonly Vec3[])[] {
  const { points, depths } = cornersOf(part, cut);
  const { triangles } = solidOf(part.shape);
  const next = new Map<string, string>();
  const crossing = new Map<string, Vec3>();
  for (let i = 0; i < triangles.length; i += 3) {
    let [from, to]: (string | undefined)[] = [];
    for (let k = 0; k < 3; k += 1) {
      const [a, b] = [triangles[i + k]!, triangles[i + ((k + 1) % 3)]!];
      const [before, after] = [depths[a]! <= 0, depths[b]! <= 0];
      if (before === after) continue;
      const key = a < b ? `${a} ${b}` : `${b} ${a}`;
      crossing.set(key, between(points[a]!, points[b]!, depths[a]! / (depths[a]! - depths[b]!)));
      if (before) from = key;
      else to = key;
    }
    // The triangle runs from behind to before the plane at one side and back at another: along its cut the stuff lies to the left.
    if (from !== undefined && to !== undefined) next.set(to, from);
  }
  return loopsOf(next).map((keys) => keys.map((key) => crossing.get(key)!));
}

/** The corners of what lies behind a plane, those of the cut among them. */
export function cornersBehind(part: Placed, cut: Cut): readonly Vec3[] {
  const { points, depths } = cornersOf(part, cut);
  return [...points.filter((_, i) => depths[i]! <= 0), ...sliceOf(part, cut).flat()];
}

/** The corners of a part in the room, and how far each stands before the plane. */
function cornersOf(
  { shape, place }: Placed,
  { normal, at }: Cut,
): { points: readonly Vec3[]; depths: readonly number[] } {
  const { points: local } = solidOf(shape);
  const points = Array.from({ length: local.length / 3 }, (_, i) =>
    toUnit(place, local[3 * i]!, local[3 * i + 1]!, local[3 * i + 2]!),
  );
  return { points, depths: points.map((point) => dot(point, normal) - at) };
}

const between = (a: Vec3, b: Vec3, share: number): Vec3 => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
  a[2] + (b[2] - a[2]) * share,
];

/** Follows each step to the next until it closes. A closed solid leaves no open end. */
function loopsOf(next: Map<string, string>): readonly (readonly string[])[] {
  const loops: string[][] = [];
  for (const start of [...next.keys()]) {
    const loop: string[] = [];
    for (let at: string | undefined = start; at !== undefined && next.has(at); ) {
      const to: string = next.get(at)!;
      next.delete(at);
      loop.push(at);
      at = to;
    }
    if (loop.length > 2) loops.push(loop);
  }
  return loops;
}
