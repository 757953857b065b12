import type { Vec2 } from '../../vocabulary/geometry';
import type { Board, BoardEdge } from '../../vocabulary/shape';
import { polygonArea } from '../polygon';
import { leftOf, tenth } from '../tenth';

/** A level cross-section of a board: `out` mm above its back. Two rings at one level bound a flat ledge. */
export interface Ring {
  readonly out: number;
  readonly points: readonly Vec2[];
}

/** Below this sine two neighbouring sides count as in line (about 0.06°): where they meet can't be found by intersecting them. */
const IN_LINE = 1e-3;
/** Levels and points nearer than this are one, mm: noise of the last digits. */
const SAME = 1e-9;

/** How far an edge stands out at a level, mm. At a ledge, `above` chooses between what lies below and above it. */
function growthAt(edge: BoardEdge, out: number, above: boolean): number {
  const steps = edge.steps;
  const first = steps[0];
  if (!first) {
    if (edge.kind === 'square') return 0;
    throw new Error(`a ${edge.kind} edge without steps; it needs a pair [out, growth] at least`);
  }
  let before = first;
  for (const step of steps) {
    if (step[0] > out + SAME || (!above && step[0] >= out - SAME)) {
      const rise = step[0] - before[0];
      if (step === before || rise < SAME) return step[1];
      return before[1] + ((step[1] - before[1]) * Math.max(0, out - before[0])) / rise;
    }
    before = step;
  }
  return before[1];
}

const known = new WeakMap<Board, readonly Ring[]>();

/**
 * The rings of a board from its back to its face: at every level where an edge changes, the outline with each side moved
 * outward by its edge's growth there. All rings have the outline's corners in the same order; the same board gives the same rings.
 * Throws, with the values, when a side is moved in so far that nothing of it is left, or the board is otherwise impossible.
 */
export function ringsOf(board: Board): readonly Ring[] {
  let rings = known.get(board);
  if (!rings) {
    rings = makeRings(board);
    known.set(board, rings);
  }
  return rings;
}

function makeRings({ outline, edges, thickness }: Board): readonly Ring[] {
  if (!(thickness > 0)) throw new Error(`a board ${thickness} mm thick; it must be above 0`);
  if (edges.length !== outline.length) throw new Error(`a board of ${outline.length} sides has ${edges.length} edges`);
  const area = polygonArea(outline);
  if (!(area > 0)) throw new Error(`the outline of a board has an area of ${area} mm²; it must run counter-clockwise`);
  const sides = outline.map((_, i) => sideOf(outline, i));
  const rings: Ring[] = [];
  for (const out of levelsOf(edges, thickness)) {
    const below = edges.map((edge) => growthAt(edge, out, false));
    const above = edges.map((edge) => growthAt(edge, out, true));
    if (out > 0) rings.push({ out, points: moved(outline, sides, below) });
    const ledge = below.some((g, i) => Math.abs(g - above[i]) > SAME);
    if (out === 0 || (ledge && out < thickness)) rings.push({ out, points: moved(outline, sides, above) });
  }
  return rings;
}

/** What is wrong with a board's edges, in words with values, or null when it can be made: to be asked before it is used. */
export function boardFault(board: Board): string | null {
  try {
    ringsOf(board);
    return null;
  } catch (error) {
    return (error as Error).message;
  }
}

function levelsOf(edges: readonly BoardEdge[], thickness: number): number[] {
  const levels = [0, thickness];
  for (const edge of edges) {
    let last = 0;
    for (const [out] of edge.steps) {
      if (!(out >= last - SAME && out <= thickness + SAME)) {
        throw new Error(
          `a step at ${out} mm follows one at ${last}; steps rise from 0 to the thickness, ${thickness} mm`,
        );
      }
      last = out;
      levels.push(out);
    }
  }
  levels.sort((a, b) => a - b);
  return levels.filter((level, i) => {
    const before = levels[i - 1];
    return (before === undefined || level - before > SAME) && (level === thickness || thickness - level > SAME);
  });
}

/** The outline with side i, which runs in direction sides[i], moved outward by growth[i]. */
function moved(outline: readonly Vec2[], sides: readonly Vec2[], growth: readonly number[]): readonly Vec2[] {
  if (growth.every((g) => g === 0)) return outline;
  const n = outline.length;
  const points = outline.map((corner, i): Vec2 => {
    const last = i === 0 ? n - 1 : i - 1;
    const [before, after] = [sides[last], sides[i]];
    const [g, h] = [growth[last], growth[i]];
    // Unit directions d, e; outward normals (dy, −dx). Their meeting point moves by (h·d − g·e) / (d × e).
    const sine = before[0] * after[1] - before[1] * after[0];
    if (Math.abs(sine) < IN_LINE) {
      const mean = (g + h) / 2;
      return [corner[0] + after[1] * mean, corner[1] - after[0] * mean];
    }
    return [corner[0] + (h * before[0] - g * after[0]) / sine, corner[1] + (h * before[1] - g * after[1]) / sine];
  });
  sides.forEach((side, i) => {
    const [a, b] = [points[i], points[(i + 1) % n]];
    const left = (b[0] - a[0]) * side[0] + (b[1] - a[1]) * side[1];
    if (!(left > SAME)) {
      throw new Error(
        `side ${i + 1} of a board, moved ${tenth(growth[i])} mm outward among its neighbours, has ${leftOf(left)} left of its length; that must be above 0`,
      );
    }
  });
  return points;
}

function sideOf(outline: readonly Vec2[], i: number): Vec2 {
  const a = outline[i];
  const b = outline[(i + 1) % outline.length];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (!(length > SAME))
    throw new Error(`side ${i + 1} of a board, from (${a[0]}, ${a[1]}) to (${b[0]}, ${b[1]}), has no length`);
  return [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
}
