import type { Vec3 } from '../vocabulary/geometry';
import type { Part } from '../vocabulary/part';
import { axesOf, bodyOf, shadow } from './bodies';

/** How one part lies to another, by the boxes round both along the first one's axes. */
export interface Lies {
  /** How far they lie over one another along, across and out: negative where there is a gap. */
  readonly over: Vec3;
  /** From where to where the other reaches along, across and out. */
  readonly from: Vec3;
  readonly to: Vec3;
}

/** How `other` lies to `part`. Exact for square pieces that lie square to one another; for others the boxes round them. */
export function liesTo(part: Part, other: Part): Lies {
  const { reach } = bodyOf(part);
  const body = bodyOf(other);
  const each = axesOf(part.place).map((axis) => shadow(body, axis));
  const over = (k: number): number => Math.min(reach[k][1], each[k][1]) - Math.max(reach[k][0], each[k][0]);
  return {
    over: [over(0), over(1), over(2)],
    from: [each[0][0], each[1][0], each[2][0]],
    to: [each[0][1], each[1][1], each[2][1]],
  };
}
