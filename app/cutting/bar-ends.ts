import type { PlacedOnBar } from '../../src/vocabulary/cut-plan';
import type { BarProblem, BarTurn, Slant } from '../../src/vocabulary/cut-problem';

/** Where an end stands on the upper face of the bar, mm from the bar's left end: at the near edge and at the far one. */
export interface EndAbove {
  readonly near: number;
  readonly far: number;
}

/** Both ends as they lie after a turn: the plane's lean changes, and end for end the left becomes the right. */
const TURNED: Readonly<Record<BarTurn, (ends: readonly [Slant, Slant]) => readonly [Slant, Slant]>> = {
  rolled: ([left, right]) => [
    [-left[0], -left[1]],
    [-right[0], -right[1]],
  ],
  swung: ([left, right]) => [
    [right[0], -right[1]],
    [left[0], -left[1]],
  ],
  tumbled: ([left, right]) => [
    [-right[0], right[1]],
    [-left[0], left[1]],
  ],
};

/** Left and right end of a placed piece as they are seen from above. */
export function endsAbove({ section, pieces }: BarProblem, placed: PlacedOnBar): readonly [EndAbove, EndAbove] {
  const { piece, at, length, turn } = placed;
  const square: EndAbove = { near: at, far: at };
  const ends = pieces[piece]?.ends;
  if (!ends || !section) return [square, { near: at + length, far: at + length }];
  const [left, right] = turn ? TURNED[turn](ends) : ends;
  const { width, thickness } = section;
  const above = ([a, o]: Slant, foremost: number, side: 'left' | 'right'): EndAbove => {
    const corners = [0, a * width, o * thickness, a * width + o * thickness];
    const zero = foremost - (side === 'left' ? Math.min(...corners) : Math.max(...corners)) + o * thickness;
    return { near: zero, far: zero + a * width };
  };
  return [above(left, at, 'left'), above(right, at + length, 'right')];
}
