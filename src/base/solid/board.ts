import type { Vec2 } from '../../vocabulary/geometry';
import type { Board } from '../../vocabulary/shape';
import { flatten } from '../outline';
import { fill } from './caps';
import type { Solid } from './closed-solid';
import { type Ring, ringsOf } from './rings';

/** Ring corners nearer than this are one corner of the solid, mm. */
const SAME = 1e-9;

/** A board as a closed solid in its own axes: rings joined side by side, holes straight through, both faces filled. */
export function boardSolid(board: Board): Solid {
  const rings = ringsOf(board);
  const holes = board.holes.map((hole) => flatten(hole));
  const n = board.outline.length;
  const holePoints = holes.reduce((sum, hole) => sum + hole.length, 0);
  const points: number[] = [];
  const triangles: number[] = [];
  const numbers = numberCorners(rings, points);

  for (let r = 0; r + 1 < rings.length; r++) {
    const low = numbers[r];
    const high = numbers[r + 1];
    for (let i = 0; i < n; i++) {
      const j = i + 1 === n ? 0 : i + 1;
      addTriangle(triangles, low[i], low[j], high[j]);
      addTriangle(triangles, low[i], high[j], high[i]);
    }
  }

  const back = points.length / 3;
  for (const hole of holes) for (const [x, y] of hole) points.push(x, y, 0);
  for (const hole of holes) for (const [x, y] of hole) points.push(x, y, board.thickness);
  let at = back;
  for (const hole of holes) {
    for (let i = 0; i < hole.length; i++) {
      const [a, b] = [at + i, at + ((i + 1) % hole.length)];
      addTriangle(triangles, b, a, a + holePoints);
      addTriangle(triangles, b, a + holePoints, b + holePoints);
    }
    at += hole.length;
  }

  addCap(triangles, rings[0], holes, [...numbers[0], ...count(back, holePoints)], true);
  const last = rings.length - 1;
  addCap(triangles, rings[last], holes, [...numbers[last], ...count(back + holePoints, holePoints)], false);
  return { points: Float64Array.from(points), triangles: Uint32Array.from(triangles) };
}

const count = (from: number, howMany: number): number[] => Array.from({ length: howMany }, (_, i) => from + i);

/** Gives each corner of each ring its number. At a ledge a corner that doesn't move keeps the number it has on the ring below. */
function numberCorners(rings: readonly Ring[], points: number[]): number[][] {
  const numbers: number[][] = [];
  for (let r = 0; r < rings.length; r++) {
    const ring = rings[r];
    const below = rings[r - 1];
    numbers.push(
      ring.points.map(([x, y], i) => {
        const [bx, by] = below?.out === ring.out ? below.points[i] : [Number.NaN, 0];
        if (Math.abs(x - bx) < SAME && Math.abs(y - by) < SAME) return numbers[r - 1][i];
        points.push(x, y, ring.out);
        return points.length / 3 - 1;
      }),
    );
  }
  return numbers;
}

function addTriangle(triangles: number[], a: number, b: number, c: number): void {
  if (a !== b && b !== c && c !== a) triangles.push(a, b, c);
}

function addCap(
  triangles: number[],
  ring: Ring,
  holes: readonly (readonly Vec2[])[],
  numbers: readonly number[],
  facesBack: boolean,
): void {
  const cap = fill(ring.points, holes);
  for (let t = 0; t < cap.length; t += 3) {
    const [a, b, c] = [cap[t], cap[t + 1], cap[t + 2]].map((k) => numbers[k]) as [number, number, number];
    if (facesBack) triangles.push(a, c, b);
    else triangles.push(a, b, c);
  }
}
