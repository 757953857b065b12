import type { Vec2 } from '../vocabulary/geometry';
import { type Face, inPlan } from './place';
import { clip, polygonArea } from './polygon';
import { add2, scale2 } from './vec';

/** Longer than anything that stands in a room: a strip to be cut at its ends, mm. */
const FAR = 1e6;

/** An end of a face: at a corner it meets its neighbour's. */
export interface FaceEnd {
  readonly kind: string;
  readonly neighbour?: string;
}

/** A face that ends somewhere, at corners on the corner's own line. */
export interface EndingFace<E extends FaceEnd = FaceEnd> extends Face {
  readonly id: string;
  readonly length: number;
  readonly left: E;
  readonly right: E;
}

/** A strip along a face without ends, from `back` to `front` of it. Counter-clockwise in plan. */
export function stripOf(face: Face, front: number, back: number): readonly Vec2[] {
  const strip = [
    inPlan(face, -FAR, front),
    inPlan(face, FAR, front),
    inPlan(face, FAR, back),
    inPlan(face, -FAR, back),
  ];
  return polygonArea(strip) > 0 ? strip : strip.reverse();
}

/**
 * The floor that a face takes, from `back` to `front` of it, in plan: a strip cut at each end: square, or at a corner that it turns
 * (`turns`) on the corner's own line. Empty when its corners leave it none.
 */
export function floorOf<E extends FaceEnd>(
  faces: readonly EndingFace<E>[],
  face: EndingFace<E>,
  { front, back }: { readonly front: number; readonly back: number },
  turns: (end: E) => boolean,
): readonly Vec2[] {
  return (['left', 'right'] as const).reduce(
    (polygon: readonly Vec2[], side) => cutAt(polygon, faces, face, side, turns),
    stripOf(face, front, back),
  );
}

/** A polygon cut where a face ends. */
export function cutAt<E extends FaceEnd>(
  polygon: readonly Vec2[],
  faces: readonly EndingFace<E>[],
  face: EndingFace<E>,
  side: 'left' | 'right',
  turns: (end: E) => boolean,
): readonly Vec2[] {
  const end = face[side];
  const other = end.kind === 'corner' && turns(end) ? faces.find((f) => f.id === end.neighbour) : undefined;
  const ahead = other ? add2(face.along, other.along) : face.along;
  return clip(polygon, inPlan(face, side === 'left' ? 0 : face.length, 0), scale2(ahead, side === 'left' ? -1 : 1));
}
