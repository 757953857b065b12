import { flatten } from '../base/outline';
import { isConvex } from '../base/polygon';
import { fill } from '../base/solid/caps';
import { endSection } from '../base/solid/hollows';
import { ringsOf } from '../base/solid/rings';
import { planeAt } from '../base/solid/stick';
import type { Outline, Vec2 } from '../vocabulary/geometry';
import type { Board, Shape, Stick } from '../vocabulary/shape';
import type { Points } from './gap';

/** Convex pieces that make up a shape, in its own axes. */
const known = new WeakMap<Shape, readonly Points[]>();

/** A shape cut up into convex pieces, in its own axes (along, across, out); one where it is convex itself. Arcs as the mesh has them. */
export function piecesOf(shape: Shape): readonly Points[] {
  let pieces = known.get(shape);
  if (!pieces) {
    pieces = shape.kind === 'stick' ? ofStick(shape) : ofBoard(shape);
    known.set(shape, pieces);
  }
  return pieces;
}

const sections = new WeakMap<Outline, readonly (readonly number[])[]>();

/** Flutes that stop short are left out: nothing reaches into them. */
function ofStick(stick: Stick): readonly Points[] {
  const { start, end } = stick;
  const section = endSection(stick);
  const points = flatten(section);
  const parts = sections.get(section) ?? convexParts(points, []);
  sections.set(section, parts);
  return parts.map((part) => {
    const piece = new Float64Array(6 * part.length);
    part.forEach((i, k) => {
      const [u, v] = points[i];
      piece[6 * k] = planeAt(start, u, v);
      piece[6 * k + 3] = planeAt(end, u, v);
      piece[6 * k + 1] = piece[6 * k + 4] = u;
      piece[6 * k + 2] = piece[6 * k + 5] = v;
    });
    return piece;
  });
}

/** Slabs from ring to ring, each cut up alike. */
function ofBoard(board: Board): readonly Points[] {
  const rings = ringsOf(board);
  const holes = board.holes.map((hole) => flatten(hole));
  const parts = convexParts(rings[0].points, holes);
  const inHoles = holes.flat();
  const n = board.outline.length;
  return rings.slice(1).flatMap((high, r) => {
    const low = rings[r];
    if (high.out - low.out < 1e-9) return [];
    return parts.map((part) => {
      const points = new Float64Array(6 * part.length);
      part.forEach((i, k) => {
        const [a, b] = i < n ? [low.points[i], high.points[i]] : [inHoles[i - n], inHoles[i - n]];
        points.set(a, 6 * k);
        points[6 * k + 2] = low.out;
        points.set(b, 6 * k + 3);
        points[6 * k + 5] = high.out;
      });
      return points;
    });
  });
}

/** A polygon with holes as convex polygons, by the numbers of its points: triangles joined wherever they stay convex (Hertel & Mehlhorn, 1983). */
export function convexParts(
  points: readonly Vec2[],
  holes: readonly (readonly Vec2[])[],
): readonly (readonly number[])[] {
  const all = [...points, ...holes.flat()];
  if (holes.length === 0 && isConvex(points)) return [points.map((_, i) => i)];
  const triangles = fill(points, holes);
  const parts: (number[] | null)[] = [];
  for (let t = 0; t < triangles.length; t += 3) parts.push([triangles[t], triangles[t + 1], triangles[t + 2]]);
  // An inner edge is run once each way: by the part on its left, and by its neighbour.
  const owner = new Map<number, number>();
  const key = (a: number, b: number): number => a * all.length + b;
  const own = (part: readonly number[], p: number): void => {
    part.forEach((a, i) => {
      owner.set(key(a, part[(i + 1) % part.length]), p);
    });
  };
  parts.forEach((part, p) => {
    if (part) own(part, p);
  });
  for (let t = 0; t < triangles.length; t++) {
    const [a, b] = [triangles[t], triangles[t - (t % 3) + ((t + 1) % 3)]];
    const [p, q] = [owner.get(key(a, b)), owner.get(key(b, a))];
    if (p === undefined || q === undefined || p === q) continue;
    const [mine, theirs] = [parts[p], parts[q]];
    if (!mine || !theirs) continue;
    const joined = [...from(mine, b), ...from(theirs, a).slice(1, -1)];
    if (!isConvex(joined.map((i) => all[i]))) continue;
    parts[p] = joined;
    parts[q] = null;
    own(joined, p);
    owner.delete(key(a, b));
    owner.delete(key(b, a));
  }
  return parts.filter((part) => part !== null);
}

/** A ring of numbers, begun at one of them. */
const from = (ring: readonly number[], first: number): readonly number[] => {
  const at = ring.indexOf(first);
  return [...ring.slice(at), ...ring.slice(0, at)];
};
