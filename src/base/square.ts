import type { Vec2 } from '../vocabulary/geometry';
import { degrees } from './vec';

/**
 * How far a line in plan is turned from square to a direction, degrees, from −90 to 90, counter-clockwise positive. The line has no
 * sense of direction: half a turn makes the same line.
 */
export function fromSquareDeg(lineDeg: number, along: Vec2): number {
  const alongDeg = degrees(Math.atan2(along[1], along[0]));
  return ((((lineDeg - alongDeg) % 180) + 180) % 180) - 90;
}
