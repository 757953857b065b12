/*
 * Problems of one sheet: what to cut from it so that the pieces are worth most. Sizes are whole numbers in any unit, without kerf; x runs
 * along the sheet's length, y along its width.
 */

export interface ValuedPiece {
  readonly length: number;
  readonly width: number;
  readonly value: number;
  /** How many are wanted at most. Absent: any number. */
  readonly most?: number;
  /** May lie with its length along y. */
  readonly turnable?: boolean;
}

export interface ValuedSheet {
  readonly length: number;
  readonly width: number;
  readonly pieces: readonly ValuedPiece[];
}

/** A piece as it can lie: `x` along the sheet's length, `y` along its width. */
export interface Lying {
  readonly piece: number;
  readonly turned: boolean;
  readonly x: number;
  readonly y: number;
}

/** Every way in which a piece can lie on the sheet at all. A square lies one way only. */
export function lyings({ length, width, pieces }: ValuedSheet): readonly Lying[] {
  const all: Lying[] = [];
  pieces.forEach((p, piece) => {
    if (p.length <= length && p.width <= width) all.push({ piece, turned: false, x: p.length, y: p.width });
    if (p.turnable && p.length !== p.width && p.width <= length && p.length <= width)
      all.push({ piece, turned: true, x: p.width, y: p.length });
  });
  return all;
}
