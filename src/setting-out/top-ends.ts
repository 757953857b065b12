import { isButted } from '../base/butted';
import { radians } from '../base/vec';
import type { Rod, RunEnd } from '../vocabulary/rod';

/** The line on which a run's top ends: how far it lies beyond the frame-line end at offset 0, and how much further per mm outward. */
export interface TopEnd {
  readonly at: number;
  readonly perOut: number;
}

/**
 * Where the top of a run ends: square; on the mitre; or, butted, on the neighbour's front or back edge. With φ the deflection, a line
 * parallel to the neighbour at its offset e lies e/sin φ − d·cot φ beyond the vertex at this run's offset d.
 */
export function topEndLine(end: RunEnd, top: Rod['top'] & Pick<Rod, 'depth'>): TopEnd {
  if (end.kind !== 'corner' || end.toReturn) return { at: end.topBeyond, perOut: 0 };
  if (!isButted(end.deflectionDeg, top.leastButtedDeg, top.edge !== undefined)) return { at: 0, perOut: end.grows };
  const { overhang, depth } = top;
  const turn = radians(end.deflectionDeg);
  // Through: as far as the neighbour's far edge. Butting: up to the through length's near edge.
  const edge = end.deflectionDeg > 0 === end.through ? overhang : overhang - depth;
  // The cosine of a right angle is to be none at all.
  const square = Math.abs(end.deflectionDeg) === 90;
  return { at: edge / Math.sin(turn), perOut: square ? 0 : -Math.cos(turn) / Math.sin(turn) };
}
