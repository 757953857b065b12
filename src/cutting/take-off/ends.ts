import { boundsOf } from '../../base/outline';
import { radians } from '../../base/vec';
import type { Slant } from '../../vocabulary/cut-problem';
import type { Part } from '../../vocabulary/part';
import type { Board, EndPlane, Stick } from '../../vocabulary/shape';
import { hundredth, leftOn } from './sawn';

/** How a part lies in a bar: overall length, mm, long point to long point of its whole rectangle, and its ends where one is not square. */
export interface LyingInBar {
  readonly length: number;
  readonly ends?: readonly [Slant, Slant];
}

const SQUARE: Slant = [0, 0];

/**
 * A part as it is sawn out of a bar. `onEdge`: it lies on its edge there, what is out from its back being across the bar. What is left on comes
 * off at a square end; with two slanted ones, or with stuff left on the width, it is taken for square.
 */
export function lyingInBar(part: Part, onEdge: boolean): LyingInBar {
  const { shape, size } = part;
  const more = leftOn(part);
  const square: LyingInBar = { length: hundredth(size.length + more.length) };
  const planes = shape.kind === 'stick' ? stickEnds(shape) : boardEnds(shape, size.length);
  if (!planes) return square;
  const [left, right] = planes.ends.map(slantOf);
  const slanted = [left, right].filter((slant) => slant !== SQUARE).length;
  if (slanted === 0 || more.width > 0 || (more.length > 0 && slanted === 2)) return square;
  const laid = onEdge ? rolledOnEdge : (slant: Slant): Slant => slant;
  return { length: hundredth(planes.length + more.length), ends: [laid(left), laid(right)] };
}

/** Tangents smaller than this are a square cut: 0.1 mm over a metre. */
const NO_SLANT = 1e-4;
/** Tangents are kept to a millionth, so that the last digits don't part twins. */
const KEPT = 1e6;

function slantOf({ perAcross, perOut }: Omit<EndPlane, 'at'>): Slant {
  const kept = (slope: number): number => (Math.abs(slope) < NO_SLANT ? 0 : Math.round(slope * KEPT) / KEPT);
  const [a, o] = [kept(perAcross), kept(perOut)];
  return a === 0 && o === 0 ? SQUARE : [a, o];
}

/** A quarter turn about the length: out from the back becomes across; what was across runs down towards the back. */
const rolledOnEdge = ([perAcross, perOut]: Slant): Slant => (perAcross === 0 ? [perOut, 0] : [perOut, -perAcross]);

interface Planes {
  readonly length: number;
  readonly ends: readonly [EndPlane, EndPlane];
}

function stickEnds({ section, start, end }: Stick): Planes {
  const { min, max } = boundsOf(section);
  return { length: overall([start, end], min, max), ends: [start, end] };
}

/** Between two planes, over the rectangle about a section. */
function overall(
  [start, end]: readonly [EndPlane, EndPlane],
  min: readonly [number, number],
  max: readonly [number, number],
): number {
  const corners = [min[0], max[0]].flatMap((u) => [min[1], max[1]].map((v) => [u, v] as const));
  const at = (plane: EndPlane): readonly number[] =>
    corners.map(([u, v]) => plane.at + plane.perAcross * u + plane.perOut * v);
  return Math.max(...at(end)) - Math.min(...at(start));
}

/** What the planes of a board's ends may stand out beyond the board, mm: noise. More, and it has no end from edge to edge. */
const WITHIN = 0.01;

/** The planes of a board's two ends, where each is one cut from edge to edge. */
function boardEnds(board: Board, length: number): Planes | undefined {
  const ends = [planeOf(board, -1), planeOf(board, 1)] as const;
  const across = board.outline.map((p) => p[1]);
  const long = overall(ends, [Math.min(...across), 0], [Math.max(...across), board.thickness]);
  return Math.abs(long - length) <= WITHIN ? { length: long, ends } : undefined;
}

/** The plane through the side that faces most against (−1) or along (1) the length. */
function planeOf({ outline, edges, thickness }: Board, direction: 1 | -1): EndPlane {
  let [best, rise] = [0, 0];
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length];
    // Counter-clockwise, a side that climbs faces along, and one that falls faces against the length.
    if ((b[1] - a[1]) * direction > rise) {
      rise = (b[1] - a[1]) * direction;
      best = i;
    }
  });
  const [ax, ay] = outline[best];
  const [bx, by] = outline[(best + 1) % outline.length];
  const perAcross = (bx - ax) / (by - ay);
  const { kind, steps, angleDeg } = edges[best];
  const tangent =
    kind !== 'bevel'
      ? 0
      : angleDeg !== undefined
        ? Math.tan(radians(angleDeg))
        : (steps[steps.length - 1][1] - steps[0][1]) / thickness;
  // A bevel grows square to the side; along the length that comes to more, by the slant of the side.
  return { at: ax - perAcross * ay, perAcross, perOut: direction * tangent * Math.hypot(1, perAcross) };
}
