import { polygonBounds } from '../base/polygon';
import { ringsOf } from '../base/solid/rings';
import { radians } from '../base/vec';
import type { Vec2 } from '../vocabulary/geometry';
import type { EndCut } from '../vocabulary/part';
import type { Board, BoardEdge } from '../vocabulary/shape';
import { EDGE_NAMES, endCutOf, type Section } from './end-cut';
import type { Measure } from './measured';

/** Two corners this near in height lie on one long edge, mm. */
const LEVEL = 1e-6;

/** Sizes and ends of a board, with all that its edges stand out. An end is the side that faces most along or against the length. */
export function measureBoard(board: Board, edgeNames: readonly [string, string] = EDGE_NAMES): Measure {
  const rings = ringsOf(board).map((ring) => ring.points);
  const { min, max } = polygonBounds(rings.flat());
  const over = { across: max[1] - min[1], out: board.thickness, edgeNames };
  const turned = board.sawn === true && over.out > over.across;
  const [width, thickness] = turned ? [over.out, over.across] : [over.across, over.out];
  const size = { length: max[0] - min[0], width, thickness };
  return {
    size,
    shortPoint: Math.min(...rings.map(shortestEdgeAlong)),
    ends: [endOf(board, -1, over), endOf(board, 1, over)],
  };
}

/** The shorter of the lower and upper edges along the length; 0 where the board runs out to a point. */
function shortestEdgeAlong(points: readonly Vec2[]): number {
  const { min, max } = polygonBounds(points);
  return Math.min(
    ...[min[1], max[1]].map((level) => {
      const along = points.filter((p) => Math.abs(p[1] - level) < LEVEL).map((p) => p[0]);
      return Math.max(...along) - Math.min(...along);
    }),
  );
}

function endOf(board: Board, direction: 1 | -1, over: Section): EndCut {
  const { outline, edges, thickness } = board;
  let best = 0;
  let rise = 0;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length];
    // Counter-clockwise, a side that climbs faces along, and one that falls faces against the length.
    if ((b[1] - a[1]) * direction > rise) {
      rise = (b[1] - a[1]) * direction;
      best = i;
    }
  });
  const a = outline[best];
  const b = outline[(best + 1) % outline.length];
  const perAcross = ((b[0] - a[0]) / (b[1] - a[1])) * direction;
  // The edge's growth is square to the side; along the length it comes to more, by the slant of the side.
  const perOut = bevelTangent(edges[best], thickness) * Math.hypot(1, perAcross);
  return endCutOf({ perAcross, perOut }, over);
}

function bevelTangent(edge: BoardEdge, thickness: number): number {
  if (edge.kind !== 'bevel') return 0;
  if (edge.angleDeg !== undefined) return Math.tan(radians(edge.angleDeg));
  return (edge.steps[edge.steps.length - 1][1] - edge.steps[0][1]) / thickness;
}
