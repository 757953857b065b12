import { SAME_ANGLE_DEG } from '../../base/tolerance';
import { degrees } from '../../base/vec';
import type { BarTurn, Slant } from '../../vocabulary/cut-problem';
import { posesOf, SQUARE_ENDS } from '../bars/ends';

/** Sides of a bar's section, mm. */
export interface SectionSize {
  readonly width: number;
  readonly thickness: number;
}

export const SQUARE: Slant = [0, 0];
/** Where all ends are square the section doesn't matter. */
const NO_SECTION: SectionSize = { width: 0, thickness: 0 };

/** Left and right end of a piece as it lies in the bar, from those of the piece unturned. */
export function endsOf(ends: readonly [Slant, Slant] | undefined, turn: BarTurn | undefined): readonly [Slant, Slant] {
  const poses = posesOf(ends ?? SQUARE_ENDS, turn ? [turn] : []);
  // A turn that changes nothing is not listed.
  const { left, right } = poses[poses.length - 1];
  return [left, right];
}

/** Whether the face of a piece turned so lies down. */
export const liesOver = (turn: BarTurn | undefined): boolean => turn === 'rolled' || turn === 'tumbled';

/** How far an end's plane leaves x = 0 at the corners of the section: [u = 0, u = width] below (v = 0) and above. */
export function cornersOf([a, o]: Slant, section: SectionSize = NO_SECTION): readonly number[] {
  const { width, thickness } = section;
  return [0, a * width, o * thickness, a * width + o * thickness];
}

/** Where an end's plane stands at u = v = 0, from the foremost point of the piece there. */
export function planeAt(slant: Slant, foremost: number, side: 'left' | 'right', section?: SectionSize): number {
  const corners = cornersOf(slant, section);
  return foremost - (side === 'left' ? Math.min(...corners) : Math.max(...corners));
}

/**
 * What the saw is turned and tilted to for an end, the piece lying on its back, degrees from square: tan M = a, tan B = o/√(1 + a²), which is
 * sin B = o/√(1 + a² + o²) (Snyder & Gottesman, Compound-Angle Joinery, Washington University, 2015). Of a simple cut: atan a, atan o.
 */
export const anglesOf = ([a, o]: Slant): { readonly mitreDeg: number; readonly tiltDeg: number } => ({
  mitreDeg: degrees(Math.atan(a)),
  tiltDeg: degrees(Math.atan2(o, Math.hypot(1, a))),
});

/** Whether two ends are cut at the same setting of the saw. */
export function sameSlant(a: Slant, b: Slant): boolean {
  const [p, q] = [anglesOf(a), anglesOf(b)];
  return Math.abs(p.mitreDeg - q.mitreDeg) < SAME_ANGLE_DEG && Math.abs(p.tiltDeg - q.tiltDeg) < SAME_ANGLE_DEG;
}

/** The same plane as it is seen when the bar is rolled over. */
export const seenOver = ([a, o]: Slant, over: boolean): Slant => (over ? [0 - a, 0 - o] : [a, o]);
