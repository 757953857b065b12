/** Something to be written under a line at `x`; all in pixels. Smaller `rank` is placed first. */
export interface Wanted {
  readonly id: string;
  readonly x: number;
  readonly width: number;
  readonly rank: number;
}

/** Where it is written: its middle, and its row below the line, 0 the nearest. */
export interface Written {
  readonly id: string;
  readonly x: number;
  readonly middle: number;
  readonly width: number;
  readonly row: number;
}

/** Free space between two figures, and between a figure and the leader of one further down. */
const GAP = 5;
const LEADER_GAP = 2;

/**
 * Writes figures in rows so that none runs into another, nor over a leader going down to a further row. What finds no room
 * is left out (its tick stays). Figures stay between `left` and `right`. Same rank: from left to right.
 */
export function place(wanted: readonly Wanted[], rows: number, left: number, right: number): readonly Written[] {
  const written: Written[] = [];
  const order = [...wanted].sort((a, b) => a.rank - b.rank || a.x - b.x);
  for (const want of order) {
    const half = want.width / 2;
    const middle = Math.max(left + half, Math.min(right - half, want.x));
    for (let row = 0; row < rows; row++) {
      const here = { id: want.id, x: want.x, middle, width: want.width, row };
      if (written.every((other) => apart(here, other))) {
        written.push(here);
        break;
      }
    }
  }
  return written;
}

function apart(a: Written, b: Written): boolean {
  if (a.row === b.row) return Math.abs(a.middle - b.middle) >= (a.width + b.width) / 2 + GAP;
  const [upper, lower] = a.row < b.row ? [a, b] : [b, a];
  return Math.abs(lower.x - upper.middle) >= upper.width / 2 + LEADER_GAP;
}
