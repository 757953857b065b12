import { isButted as isButtedBy } from '../../base/butted';
import { stripOf } from '../../base/floor';
import { inPlan } from '../../base/place';
import { clip } from '../../base/polygon';
import { add2, dot2, scale2, sub2 } from '../../base/vec';
import type { Vec2 } from '../../vocabulary/geometry';
import type { Rod, RodRun, RunEnd } from '../../vocabulary/rod';

/** How corners are made. A moulded front edge can't stop against a length that goes through, so inside corners are then mitred. */
export interface CornerJoint {
  readonly corner: 'mitred' | 'butted';
  readonly mitredInside: boolean;
}

/** Below this turn a butted corner would end in slivers, so it is mitred (degrees; common practice, no source). */
export const LEAST_BUTTED_DEG = 45;

/**
 * The top over one run, seen from above: x along the run from its left frame-line end, y *back* from the front edge.
 * Counter-clockwise; empty when the corners leave nothing of it.
 */
export function topOutline(rod: Rod, run: RodRun, joint: CornerJoint): readonly Vec2[] {
  const { overhang } = rod.top;
  const strip = stripOf(run, overhang, overhang - rod.depth);
  const cut = (['left', 'right'] as const).reduce((polygon: readonly Vec2[], side) => {
    const { at, beyond } = endOf(rod, run, side, joint);
    return clip(polygon, at, beyond);
  }, strip);
  return cut.map((p) => {
    const from = sub2(p, run.origin);
    return [dot2(from, run.along), overhang - dot2(from, run.front)];
  });
}

/** Whether a corner is butted. */
export const isButted = (end: RunEnd, { corner, mitredInside }: CornerJoint): boolean =>
  isButtedBy(end.deflectionDeg, corner === 'butted' ? LEAST_BUTTED_DEG : undefined, mitredInside);

/** Whether the top of a run meets another length at this end: a corner that is no return, with a top on its other side. */
export const meetsAt = (end: RunEnd, neighbour: RodRun | undefined): boolean =>
  end.kind === 'corner' && !end.toReturn && neighbour?.sound === true && neighbour.jobIndex !== null;

/** A line on which the top of a run ends, and the way that lies beyond it. Plan coordinates. */
interface EndLine {
  readonly at: Vec2;
  readonly beyond: Vec2;
}

function endOf(rod: Rod, run: RodRun, side: 'left' | 'right', joint: CornerJoint): EndLine {
  const end = run[side];
  const away = side === 'left' ? -1 : 1;
  const vertex = side === 'left' ? 0 : run.length;
  if (end.kind !== 'corner' || end.toReturn)
    return { at: inPlan(run, vertex + away * end.topBeyond, 0), beyond: scale2(run.along, away) };
  const other = rod.runs.find((r) => r.id === end.neighbour) as RodRun;
  if (!isButted(end, joint)) return { at: inPlan(run, vertex, 0), beyond: scale2(add2(run.along, other.along), away) };
  const outside = end.deflectionDeg > 0;
  const front = rod.top.overhang;
  const back = front - rod.depth;
  // Through: as far as the neighbour's far edge. Butting: up to the through length's near edge.
  const edge = outside === end.through ? front : back;
  return { at: inPlan(other, 0, edge), beyond: outside ? other.front : scale2(other.front, -1) };
}
