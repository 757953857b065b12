import type { Cutter } from '../vocabulary/book';
import type { Outline, Segment, Vec2 } from '../vocabulary/geometry';
import type { BoardEdge } from '../vocabulary/shape';
import { arcOf, arcPoint, chordsOf } from './arc';
import { type EdgePath, reachOf, walkedBack, walkedOn } from './edge-path';
import { tenth } from './tenth';
import { CHORD_ERROR } from './tolerance';
import { cross2, dot2, sub2 } from './vec';

export type { EdgePath } from './edge-path';
export { bead, cavetto, chamfer, cutterOf, cymaRecta, cymaReversa, ogee, ovolo, torus } from './mouldings';

/** Which arrises of a strip's face are moulded: `upper` at u = width, `lower` at u = 0. */
export interface MouldedArrises {
  readonly upper?: EdgePath;
  readonly lower?: EdgePath;
}

/**
 * Section of a strip: a rectangle, u from 0 to `width` across the face, v from 0 at the back to `thickness`, with the arrises of
 * the face moulded. All mm. Throws when a moulding takes more than there is.
 */
export function mouldedSection(width: number, thickness: number, arrises: MouldedArrises): Outline {
  if (!(width > 0 && thickness > 0))
    throw new Error(`a strip of ${tenth(width)} × ${tenth(thickness)} mm; both must be above 0`);
  const up = arrises.upper ? reachOf(arrises.upper) : { height: 0, depth: 0 };
  const low = arrises.lower ? reachOf(arrises.lower) : { height: 0, depth: 0 };
  if (up.height + low.height > width) {
    throw new Error(
      `the moulding takes ${tenth(up.height + low.height)} mm of the face; the strip is ${tenth(width)} mm wide`,
    );
  }
  if (Math.max(up.depth, low.depth) > thickness) {
    throw new Error(
      `the moulding takes ${tenth(Math.max(up.depth, low.depth))} mm of the edge; the strip is ${tenth(thickness)} mm thick`,
    );
  }
  const segments: Segment[] = [];
  const lineTo = (to: Vec2): void => {
    const from = segments.length === 0 ? ([0, 0] as const) : segments[segments.length - 1].to;
    if (from[0] !== to[0] || from[1] !== to[1]) segments.push({ to });
  };
  lineTo([width, 0]);
  if (arrises.upper) {
    // Seen along the strip the edge comes before the face, so the cutter's path is walked from its edge end.
    const path = walkedBack(arrises.upper, ([out, on]) => [width + on, thickness + out]);
    lineTo(path.start);
    segments.push(...path.segments);
  } else lineTo([width, thickness]);
  if (arrises.lower) {
    const path = walkedOn(arrises.lower, ([out, on]) => [0 - on, thickness + out]);
    lineTo(path.start);
    segments.push(...path.segments);
  } else lineTo([0, thickness]);
  lineTo([0, 0]);
  return { start: [0, 0], segments: withoutTurningBack(segments) };
}

/** Where a moulding takes the whole of the face it begins or ends on the next side: the way to the arris and straight back encloses no stuff. */
function withoutTurningBack(segments: readonly Segment[]): readonly Segment[] {
  const kept: Segment[] = [];
  let before: Vec2 = [0, 0];
  for (const segment of segments) {
    const last = kept[kept.length - 1];
    if (last && last.radius === undefined && segment.radius === undefined) {
      const [there, back] = [sub2(last.to, before), sub2(segment.to, last.to)];
      if (cross2(there, back) === 0 && dot2(there, back) < 0) {
        kept[kept.length - 1] = segment;
        continue;
      }
    }
    if (last) before = last.to;
    kept.push(segment);
  }
  return kept;
}

/**
 * Section of the strip that plinth blocks are cut from: u from 0 to `height` up, v from 0 to `thickness` out, with the cutter run
 * along the upper front arris. Also of a skirting with a moulded upper edge. Throws when the cutter doesn't fit the strip.
 */
export const mouldedStrip = (height: number, thickness: number, cutter?: EdgePath): Outline =>
  mouldedSection(height, thickness, cutter ? { upper: cutter } : {});

/**
 * Section of a panel moulding that lies on its back: u = 0 at the outer edge, `width` at the inner edge, next to the panel;
 * `inner` moulds the arris towards the panel, `outer` the other.
 */
export const panelMoulding = (width: number, thickness: number, inner: EdgePath, outer?: EdgePath): Outline =>
  mouldedSection(width, thickness, outer ? { upper: inner, lower: outer } : { upper: inner });

/**
 * The edge of a board of that thickness with a cutter run along the arris of its face: steps [out, growth], growth 0 or less.
 * Throws when the cutter is deeper than the board, or undercuts (a bead or torus): the steps can't tell of that.
 */
export function mouldedEdge(cutter: Cutter, thickness: number): BoardEdge {
  const { depth } = reachOf(cutter);
  if (depth > thickness)
    throw new Error(`cutter ${cutter.id} goes ${tenth(depth)} mm down; the board is ${tenth(thickness)} mm thick`);
  const walk: Vec2[] = [cutter.start];
  for (const segment of cutter.segments) {
    const arc = arcOf(walk[walk.length - 1], segment);
    const pieces = arc ? chordsOf(arc, CHORD_ERROR) : 1;
    for (let k = 1; arc && k < pieces; k++) walk.push(arcPoint(arc, k / pieces));
    walk.push(segment.to);
  }
  const steps = walk.reverse().map(([o, on]): Vec2 => [thickness + o, on]);
  if (steps[0][0] > 0) steps.unshift([0, 0]);
  let out = 0;
  const levelled = steps.map(([o, growth]): Vec2 => {
    if (o < out - 1e-6)
      throw new Error(
        `cutter ${cutter.id} undercuts, from ${tenth(out)} mm above the back of a board ${tenth(thickness)} mm thick; it can't mould its edge`,
      );
    out = Math.min(thickness, Math.max(out, o));
    return [out, Math.min(0, growth)];
  });
  return { kind: 'moulded', steps: levelled, cutter: cutter.id };
}

/** A board's edge as sawn square. */
export const SQUARE_EDGE: BoardEdge = { kind: 'square', steps: [] };

/**
 * A board's edge sawn `angleDeg` from square; positive: the face is longer than the back. The board's outline is its back
 * (out = 0). Throws beyond 80°, further than any saw tilts.
 */
export function bevelledEdge(thickness: number, angleDeg: number): BoardEdge {
  if (!(Math.abs(angleDeg) <= 80)) throw new Error(`a bevel of ${tenth(angleDeg)}°; at most 80° either way`);
  if (angleDeg === 0) return SQUARE_EDGE;
  const growth =
    angleDeg === 45 ? thickness : angleDeg === -45 ? -thickness : thickness * Math.tan((angleDeg * Math.PI) / 180);
  return {
    kind: 'bevel',
    steps: [
      [0, 0],
      [thickness, growth],
    ],
    angleDeg,
  };
}
