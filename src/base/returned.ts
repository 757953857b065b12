import type { Outline } from '../vocabulary/geometry';
import type { Stick } from '../vocabulary/shape';
import { type BetweenCorners, type Face, onFace } from './place';
import { lying, type Stuff } from './stuff';
import { scale2 } from './vec';

/**
 * A strip that turns the end of a face: from a mitre of 45° back along the end, its own back against it, cut square where it stops.
 * Section u up, v out of the end. `x`: where along the face the end is; it reaches from `front` mm before the face (at its back; further
 * at its face, by the mitre) to `back`, negative behind the face.
 */
export function returned(
  face: Face,
  side: 'left' | 'right',
  section: Outline,
  at: { readonly x: number; readonly front: number; readonly back: number; readonly z: number },
): Stuff<Stick> {
  const [x, y] = onFace(face, at.x, 0, 0);
  const origin = [x, y] as const;
  return side === 'left'
    ? lying({ origin, along: face.front, front: scale2(face.along, -1) }, section, {
        from: at.back,
        to: at.front,
        toPerOut: 1,
        d: 0,
        z: at.z,
      })
    : lying({ origin, along: scale2(face.front, -1), front: face.along }, section, {
        from: -at.front,
        to: -at.back,
        fromPerOut: -1,
        d: 0,
        z: at.z,
      });
}

/** How a strip along a face ends: x at its back, and how much further along its end lies per mm out. */
export interface StripEnd {
  readonly x: number;
  readonly perOut: number;
  readonly how: 'square' | 'mitred' | 'returned';
}

/** The end of a strip whose back lies `inner` mm in front of a face, where the face ends: mitred on the corner's line, or for a piece that turns the end. */
export function stripEnd(
  { length, ...ends }: BetweenCorners,
  side: 'left' | 'right',
  inner: number,
  how: StripEnd['how'],
): StripEnd {
  const outward = side === 'left' ? -1 : 1;
  const grows = how === 'mitred' ? ends[side].grows : 0;
  return {
    x: (side === 'left' ? 0 : length) + outward * inner * grows,
    perOut: how === 'returned' ? outward : outward * grows,
    how,
  };
}
