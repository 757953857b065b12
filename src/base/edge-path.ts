import type { Cutter } from '../vocabulary/book';
import type { Segment, Vec2 } from '../vocabulary/geometry';
import { arcOf, arcPoint } from './arc';
import { SAME_LENGTH } from './tolerance';

/**
 * What stands after an arris has been moulded, in section with the arris at (0, 0). First coordinate: out of the face;
 * second: along the face towards the edge. Runs from (0, −height) on the face to (−depth, 0) on the edge, stuff to the left.
 */
export type EdgePath = Pick<Cutter, 'start' | 'segments'>;

/** How much of the arris a path takes away: `height` along the face, `depth` back from it, mm. */
export interface Reach {
  readonly height: number;
  readonly depth: number;
}

/** Noise of the last digits that is let pass when a path is checked against the arris, mm. */
const NOISE = 1e-6;

/** Checks that a path starts on the face, ends on the edge and keeps within the stuff; gives what it takes away. Throws where it doesn't. */
export function reachOf(path: EdgePath): Reach {
  const last = path.segments[path.segments.length - 1];
  if (!last) throw new Error('a moulded edge without segments');
  const [sx, sy] = path.start;
  const [ex, ey] = last.to;
  if (Math.abs(sx) > NOISE || sy > NOISE)
    throw new Error(`a moulded edge starts at (${sx}, ${sy}); it must start on the face, at (0, −height)`);
  if (Math.abs(ey) > NOISE || ex > NOISE)
    throw new Error(`a moulded edge ends at (${ex}, ${ey}); it must end on the edge, at (−depth, 0)`);
  let deepest = 0;
  let lowest = 0;
  for (const [x, y] of pointsAlong(path, 16)) {
    if (x > NOISE || y > NOISE)
      throw new Error(`a moulded edge passes (${x}, ${y}), outside the stuff; both must be 0 or less`);
    deepest = Math.min(deepest, x);
    lowest = Math.min(lowest, y);
  }
  return { height: -lowest, depth: -deepest };
}

/**
 * Whether a strip can be moulded so: no more is taken of its face than there is, and less of its edge than it is thick. A moulding as deep
 * as that leaves a feather edge, or where it undercuts parts a strip of stuff from the rest.
 */
export const leavesStuff = ({ height, depth }: Reach, width: number, thickness: number): boolean =>
  height <= width && depth < thickness - SAME_LENGTH;

/** Points along a path: its corners and `perArc` pieces of each arc. */
function* pointsAlong(path: EdgePath, perArc: number): Generator<Vec2> {
  yield path.start;
  let from = path.start;
  for (const segment of path.segments) {
    const arc = arcOf(from, segment);
    if (arc) for (let k = 1; k < perArc; k++) yield arcPoint(arc, k / perArc);
    yield segment.to;
    from = segment.to;
  }
}

/**
 * The same line walked from its other end, each point sent through `map`, which must mirror it: only so do rounds stay round.
 */
export function walkedBack(path: EdgePath, map: (p: Vec2) => Vec2): { start: Vec2; segments: Segment[] } {
  const corners = [path.start, ...path.segments.map((s) => s.to)];
  const segments: Segment[] = [];
  for (let i = path.segments.length - 1; i >= 0; i--) {
    segments.push(withRadius(map(corners[i]), path.segments[i]?.radius));
  }
  return { start: map(corners[corners.length - 1]), segments };
}

/** The same line, each point sent through `map`, which must be a turn or a shift. */
export function walkedOn(path: EdgePath, map: (p: Vec2) => Vec2): { start: Vec2; segments: Segment[] } {
  return { start: map(path.start), segments: path.segments.map((s) => withRadius(map(s.to), s.radius)) };
}

const withRadius = (to: Vec2, radius: number | undefined): Segment => (radius === undefined ? { to } : { to, radius });
