import { SAME_ANGLE_DEG } from '../base/tolerance';
import { degrees } from '../base/vec';
import type { EndCut } from '../vocabulary/part';

/** An end plane as seen from the stuff: how much longer the piece gets per mm across and per mm out. Tangents. */
export interface EndSlope {
  readonly perAcross: number;
  readonly perOut: number;
}

/** What the slopes act over, mm, and what the edges at across = 0 and at its far side are called. */
export interface Section {
  readonly across: number;
  readonly out: number;
  readonly edgeNames: readonly [string, string];
}

export const EDGE_NAMES = ['lower edge', 'upper edge'] as const;

export const SQUARE_CUT: EndCut = { kind: 'square', angleDeg: 90, sawDeg: 0, tiltDeg: 0, longSide: 'none' };

/**
 * What the person at the saw sets for an end, the piece lying on its back, long edges square to the blade at 0.
 * The saw turns by M, tan M = |perAcross|; the blade tilts by B, sin B = |perOut| / √(1 + perAcross² + perOut²). On a corner
 * of boards that lean this is tan M = sin S / tan(θ/2), sin B = cos S·cos(θ/2) (Snyder & Gottesman, Compound-Angle Joinery,
 * Washington University, 2015). Of a bevel, `angleDeg` is taken in the thickness.
 */
export function endCutOf(slope: EndSlope, section: Section): EndCut {
  const { perAcross: a, perOut: o } = slope;
  const mitre = degrees(Math.atan(Math.abs(a)));
  const tilt = degrees(Math.atan2(Math.abs(o), Math.hypot(1, a)));
  const turned = mitre > SAME_ANGLE_DEG;
  const tilted = tilt > SAME_ANGLE_DEG;
  if (!turned && !tilted) return SQUARE_CUT;
  const acrossSide = section.edgeNames[a > 0 ? 1 : 0];
  const outSide = o > 0 ? 'face' : 'back';
  if (!tilted) return { kind: 'mitre', angleDeg: 90 - mitre, sawDeg: mitre, tiltDeg: 0, longSide: acrossSide };
  if (!turned) return { kind: 'bevel', angleDeg: 90 - tilt, sawDeg: 0, tiltDeg: tilt, longSide: outSide };
  const longSide = Math.abs(a) * section.across >= Math.abs(o) * section.out ? acrossSide : outSide;
  return { kind: 'compound', angleDeg: 90 - mitre, sawDeg: mitre, tiltDeg: tilt, longSide };
}
