import { flatten } from '../../../src/base/outline';
import { onFace } from '../../../src/base/place';
import type { Design } from '../../../src/vocabulary/design';
import type { Vec2, Vec3 } from '../../../src/vocabulary/geometry';
import type { Part } from '../../../src/vocabulary/part';
import type { RodRun, RunEnd } from '../../../src/vocabulary/rod';
import type { Board, Stick } from '../../../src/vocabulary/shape';
import { expectedRuns } from '../expected';
import { cornersIn, type Extent, extentAt } from '../measure';
import type { Found } from '../sample';

/** How far in from an edge the timber is looked for: where a fixing goes. */
const IN_FROM_EDGE = [1, 8];
/** Points a twentieth of a millimetre behind the frame's face: in the timber, if there is any. */
const BEHIND = 0.05;
/** A wedge between two frames that is thinner than this is packed, not filled with a part (setting-out/corner.ts). */
const PACKING = 5;

interface Timber {
  /** Its box along the run and up, so that most can be passed over. */
  readonly x: readonly [number, number];
  readonly z: readonly [number, number];
  holds(point: Vec3): boolean;
}

/** The frame's timbers near a run, each as a test for a point: between its two ends and in its section. */
function timbersOf(run: RodRun, parts: readonly Part[]): readonly Timber[] {
  return parts.map((part) => {
    const { shape, place } = part;
    const { origin, along, across, out } = place;
    const corners = cornersIn(run, part);
    const [xs, zs] = [corners.map((c) => c.x), corners.map((c) => c.z)];
    const inside = shape.kind === 'stick' ? insideStick(shape) : insideBoard(shape);
    return {
      x: [Math.min(...xs) - 1e-6, Math.max(...xs) + 1e-6],
      z: [Math.min(...zs) - 1e-6, Math.max(...zs) + 1e-6],
      holds(p) {
        const v: Vec3 = [p[0] - origin[0], p[1] - origin[1], p[2] - origin[2]];
        const on = (axis: Vec3): number => v[0] * axis[0] + v[1] * axis[1] + v[2] * axis[2];
        return inside(on(along), on(across), on(out));
      },
    };
  });
}

type Inside = (along: number, across: number, out: number) => boolean;

function insideStick({ section, start, end }: Stick): Inside {
  const corners = flatten(section);
  return (a, u, w) => {
    const at = (plane: typeof start): number => plane.at + plane.perAcross * u + plane.perOut * w;
    return a >= at(start) - 1e-6 && a <= at(end) + 1e-6 && insideOf(corners, [u, w]);
  };
}

/** A noggin bored for cables: a rectangle with a hole, which is no backing. */
function insideBoard({ outline, holes, thickness }: Board): Inside {
  const bored = holes.map((hole) => flatten(hole));
  return (a, u, w) =>
    w >= -1e-6 && w <= thickness + 1e-6 && insideOf(outline, [a, u]) && !bored.some((hole) => insideOf(hole, [a, u]));
}

/** Whether a point lies in a convex polygon, counter-clockwise, its sides included. Frame sections are rectangles and triangles, holes round. */
function insideOf(polygon: readonly Vec2[], [u, v]: Vec2): boolean {
  return polygon.every(([au, av], i) => {
    const [bu, bv] = polygon[(i + 1) % polygon.length];
    const side = (bu - au) * (v - av) - (bv - av) * (u - au);
    return side >= -1e-6 * Math.hypot(bu - au, bv - av);
  });
}

/** An edge of the skin with no timber behind it. */
export interface Bare {
  readonly run: string;
  readonly part: string;
  readonly edge: 'left' | 'right' | 'top' | 'bottom';
  readonly x: number;
  readonly z: number;
  /** How far in from the edge. */
  readonly inFrom: number;
  /** No further from timber than packing is thick, and at a corner. */
  readonly packed: boolean;
}

/** Every place along the edges of the skin, as the joiner would try them with a bradawl, where no timber is found behind. */
export function bareEdges({ parts, rod, job }: Design): { readonly bare: readonly Bare[]; readonly looked: number } {
  const frame = parts.filter((p) => p.kind === 'frame');
  const depth = rod.timber.depth;
  const bare: Bare[] = [];
  let looked = 0;
  const expected = expectedRuns(job);
  for (const run of rod.runs) {
    const i = rod.runs.indexOf(run);
    const near = new Set([run.id, rod.runs[i - 1]?.id, rod.runs[i + 1]?.id]);
    const timbers = timbersOf(
      run,
      frame.filter((p) => near.has(p.run)),
    );
    const timberAt = (x: number, d: number, z: number): boolean =>
      timbers.some((t) => t.x[0] <= x && x <= t.x[1] && t.z[0] <= z && z <= t.z[1] && t.holds(onFace(run, x, d, z)));
    const look = (place: Place): void => {
      const { x, z } = place;
      const corner = cornerAt(run, x, depth);
      // A neighbour with no length left is not built, and says so: its frame can't be what stands behind the corner.
      if (corner && rod.runs.some((r) => r.id === corner.neighbour && !r.sound)) return;
      looked++;
      if (timberAt(x, -BEHIND, z)) return;
      const near = timberAt(x, -PACKING, z) || timberAt(x - PACKING, -BEHIND, z) || timberAt(x + PACKING, -BEHIND, z);
      bare.push({ run: run.id, ...place, packed: near && corner !== undefined });
    };
    // At a wall the frame stands clear of it by the tolerances gathered, and the skin is fixed from there on.
    const ends = expected.find((e) => e.id === run.id);
    const clear = (kind: string | undefined): number => (kind === 'wall' ? job.fit.tolerance : 0);
    const fixable = { from: clear(ends?.left.kind), to: run.length - clear(ends?.right.kind) };
    for (const part of parts.filter((p) => p.kind === 'cladding' && p.run === run.id)) edges(run, part, fixable, look);
  }
  return { bare, looked };
}

type Place = Omit<Bare, 'run' | 'packed'>;

/** Square-cut frames meet within their own depth of the corner, or, where it is sharp, as far as the frame stops short of it. */
function cornerAt(run: RodRun, x: number, depth: number): RunEnd | undefined {
  const near = (end: RunEnd, from: number, short: number): boolean =>
    end.kind === 'corner' && from <= Math.max(depth, short + PACKING);
  if (near(run.left, x, run.left.frameAt)) return run.left;
  return near(run.right, run.length - x, run.length - run.right.frameAt) ? run.right : undefined;
}

function edges(run: RodRun, part: Part, frame: Extent, look: (place: Place) => void): void {
  const skin = extentAt(run, part, 0);
  const back = skin && { from: Math.max(skin.from, frame.from), to: Math.min(skin.to, frame.to) };
  if (!back || part.shape.kind !== 'board') throw new Error(`${part.mark} has no back on the frame`);
  const low = part.place.origin[2];
  const high = low + part.size.width;
  const heights = [0, 0.21, 0.5, 0.83, 1].map((k) => low + 8 + (high - low - 16) * k);
  for (const inFrom of IN_FROM_EDGE) {
    for (const z of heights) {
      look({ part: part.mark, edge: 'left', x: back.from + inFrom, z, inFrom });
      look({ part: part.mark, edge: 'right', x: back.to - inFrom, z, inFrom });
    }
    const steps = Math.max(2, Math.ceil((back.to - back.from) / 150));
    for (let k = 0; k <= steps; k++) {
      const x = back.from + 8 + ((back.to - back.from - 16) * k) / steps;
      look({ part: part.mark, edge: 'bottom', x, z: low + inFrom, inFrom });
      look({ part: part.mark, edge: 'top', x, z: high - inFrom, inFrom });
    }
  }
}

/** Every edge of the skin has timber behind it, but for the wedge at a corner that is too thin to be a part. */
export function backed(made: Design): Found {
  const { bare, looked } = bareEdges(made);
  const wrong = bare.filter((b) => !b.packed);
  return {
    wrong: wrong.map((b) => `${b.part} is bare behind its ${b.edge} edge at x ${b.x}, z ${b.z}, ${b.inFrom} in`),
    looked,
  };
}
