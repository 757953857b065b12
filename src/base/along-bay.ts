import { type BetweenCorners, pastCorners } from './place';

/** Where a piece lies along a face, and at which of its ends it is mitred with its neighbour's at the corner there. */
export interface Between {
  readonly from: number;
  readonly to: number;
  readonly mitredLeft: boolean;
  readonly mitredRight: boolean;
}

/** A level piece cut to length: `from` and `to` at its back, slopes as in `lying`. */
export interface AlongBay {
  readonly from: number;
  readonly to: number;
  readonly fromPerOut: number;
  readonly toPerOut: number;
  /** The shorter of its back and face, mm; 0 or less where nothing is left of it. */
  readonly shortest: number;
  /** How far a square end would stand past a corner's mitre, mm; not above 0 when it is clear. */
  readonly past: number;
  /** At which ends it is mitred. */
  readonly meets?: 'left' | 'right' | 'both';
}

/**
 * A piece lying in front of a face from offset `inner` to `outer`: square, or where it runs into a corner mitred by the corner rule, its
 * back reaching grows·inner beyond the end of the face.
 */
export function alongBay(
  face: BetweenCorners,
  { from, to, mitredLeft, mitredRight }: Between,
  { inner, outer }: { readonly inner: number; readonly outer: number },
): AlongBay {
  const start = mitredLeft ? -inner * face.left.grows : from;
  const end = mitredRight ? face.length + inner * face.right.grows : to;
  const fromPerOut = mitredLeft ? -face.left.grows : 0;
  const toPerOut = mitredRight ? face.right.grows : 0;
  // A mitred end lies on the corner's own line: only a square one can stand past it.
  const square = { from: mitredLeft ? Infinity : from, to: mitredRight ? -Infinity : to, inner, outer };
  const meets = mitredLeft ? (mitredRight ? 'both' : 'left') : mitredRight ? 'right' : undefined;
  return {
    from: start,
    to: end,
    fromPerOut,
    toPerOut,
    shortest: end - start + Math.min(0, (outer - inner) * (toPerOut - fromPerOut)),
    past: pastCorners(face, square),
    meets,
  };
}
