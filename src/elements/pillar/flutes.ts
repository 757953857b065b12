import { tenth } from '../../base/tenth';
import type { Segment, Vec2 } from '../../vocabulary/geometry';
import type { GrooveWork } from '../../vocabulary/part';

/** Flutes as one cutter makes them. */
export interface Fluting {
  readonly count: number;
  readonly width: number;
  readonly spacing: number;
  readonly depth: number;
  /** Left plain at each end of the board; 0: they run through. */
  readonly stop: number;
}

/** Something to fix to must be left behind a flute (common practice, no source). */
const LEAST_WEB = 3;

/**
 * Width of each of n flutes on a face: f = (W − 2·margin − (n − 1)·spacing)/n. All mm.
 * Returns a reason instead when the flutes can't be run.
 */
export function fluteWidth(
  face: number,
  thickness: number,
  count: number,
  margin: number,
  spacing: number,
  depth: number,
): number | string {
  const width = (face - 2 * margin - (count - 1) * spacing) / count;
  if (width <= 0)
    return `${count} flutes with margins of ${tenth(margin)} and fillets of ${tenth(spacing)} mm leave nothing for each on a face of ${tenth(face)} mm`;
  if (depth > width / 2)
    return `flutes ${tenth(width)} mm wide can't be ${tenth(depth)} mm deep: at most half their width`;
  if (thickness - depth < LEAST_WEB)
    return `flutes ${tenth(depth)} mm deep leave less than ${LEAST_WEB} mm of a board ${tenth(thickness)} mm thick`;
  return width;
}

/** The same flutes on another face, as many (odd) as leave at least the margin on both sides, centred. */
export function fewer(face: number, margin: number, fluting: Fluting): Fluting | undefined {
  for (let count = fluting.count; count > 0; count -= 2) {
    if (setWidth({ ...fluting, count }) + 2 * margin <= face + 1e-9) return { ...fluting, count };
  }
  return undefined;
}

const setWidth = ({ count, width, spacing }: Fluting): number => count * width + (count - 1) * spacing;

/** Whether stopped flutes are at least as long as they are wide on a board of that height; shorter ones read as dents (common practice, no source). */
export const canStop = (height: number, { stop, width }: Fluting): boolean => stop === 0 || height - 2 * stop >= width;

/** The radius of an arc from its chord w and rise d: r = (w²/4 + d²)/(2d). */
const radiusOf = ({ width, depth }: Fluting): number => (width * width) / (8 * depth) + depth / 2;

/** Each flute on a visible face, centred on it, measured from the face's left edge. */
export function grooves(face: number, fluting: Fluting): readonly GrooveWork[] {
  const first = (face - setWidth(fluting)) / 2 + fluting.width / 2;
  return Array.from({ length: fluting.count }, (_, i) => ({
    centre: first + i * (fluting.width + fluting.spacing),
    width: fluting.width,
    depth: fluting.depth,
    radius: radiusOf(fluting),
    ...(fluting.stop > 0 ? { stops: [fluting.stop, fluting.stop] as const } : {}),
  }));
}

/**
 * The face of a fluted board as the last leg of its outline, going to the right as seen from the front: flutes are hollows of the
 * radius r = (w²/4 + d²)/(2d) that has the flute's width and depth.
 * @param left u of the face's left edge (u runs to the left), @param v of the face.
 */
export function flutedFace(left: number, v: number, cut: readonly GrooveWork[]): readonly Segment[] {
  return cut.flatMap(({ centre, width, radius }): Segment[] => {
    const near: Vec2 = [left - centre + width / 2, v];
    const far: Vec2 = [left - centre - width / 2, v];
    return [{ to: near }, { to: far, radius: -radius }];
  });
}
