import type { Place, Vec2 } from '../vocabulary/geometry';
import type { Shape } from '../vocabulary/shape';
import { extentOf } from './solid/extent';

/** A level line in plan, from which lengths along a face are measured: where it starts, and its direction. */
export interface Line {
  readonly origin: Vec2;
  readonly along: Vec2;
}

/** From where to where a placed shape reaches along a face, mm from the start of its line. */
export function alongFace(
  placed: { readonly shape: Shape; readonly place: Place },
  { origin, along }: Line,
): readonly [number, number] {
  const start = origin[0] * along[0] + origin[1] * along[1];
  const reach = extentOf(placed, [along[0], along[1], 0]);
  return [reach[0] - start, reach[1] - start];
}
