import { boundsOf, flatten } from '../base/outline';
import { isSquare } from '../base/solid/corners';
import { endSection } from '../base/solid/hollows';
import type { EndPlane, Stick } from '../vocabulary/shape';
import { EDGE_NAMES, endCutOf, SQUARE_CUT } from './end-cut';
import type { Measure } from './measured';

/** Sizes and ends of a stick: measured at every corner of its section, so long and short points are where the saw finds them. */
export function measureStick(stick: Stick, edgeNames: readonly [string, string] = EDGE_NAMES): Measure {
  const { start, end, section } = stick;
  const { min, max } = boundsOf(section);
  const [across, out] = [max[0] - min[0], max[1] - min[1]];
  const width = Math.max(across, out);
  const thickness = Math.min(across, out);
  if (isSquare(start) && isSquare(end)) {
    const length = end.at - start.at;
    return { size: { length, width, thickness }, shortPoint: length, ends: BOTH_SQUARE };
  }
  const over = { across, out, edgeNames };
  let first = Infinity;
  let last = -Infinity;
  let shortPoint = Infinity;
  for (const p of flatten(endSection(stick))) {
    const from = at(start, p[0], p[1]);
    const to = at(end, p[0], p[1]);
    if (from < first) first = from;
    if (to > last) last = to;
    if (to - from < shortPoint) shortPoint = to - from;
  }
  return {
    size: { length: last - first, width, thickness },
    shortPoint,
    ends: [
      // Towards the start the piece grows as the plane falls back, so its slopes change sign.
      endCutOf({ perAcross: -start.perAcross, perOut: -start.perOut }, over),
      endCutOf(end, over),
    ],
  };
}

const BOTH_SQUARE: Measure['ends'] = [SQUARE_CUT, SQUARE_CUT];

const at = (plane: EndPlane, u: number, v: number): number => plane.at + plane.perAcross * u + plane.perOut * v;
