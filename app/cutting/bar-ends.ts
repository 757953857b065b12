import { endsOf, planeAt } from '../../src/cut';
import type { PlacedOnBar } from '../../src/vocabulary/cut-plan';
import type { BarProblem, Slant } from '../../src/vocabulary/cut-problem';

/** Where an end stands on the upper face of the bar, mm from the bar's left end: at the near edge and at the far one. */
interface EndAbove {
  readonly near: number;
  readonly far: number;
}

/** Left and right end of a placed piece as they are seen from above. */
export function endsAbove({ section, pieces }: BarProblem, placed: PlacedOnBar): readonly [EndAbove, EndAbove] {
  const { piece, at, length, turn } = placed;
  const [left, right] = endsOf(pieces[piece]?.ends, turn);
  const above = (slant: Slant, foremost: number, side: 'left' | 'right'): EndAbove => {
    const near = planeAt(slant, foremost, side, section) + slant[1] * (section?.thickness ?? 0);
    return { near, far: near + slant[0] * (section?.width ?? 0) };
  };
  return [above(left, at, 'left'), above(right, at + length, 'right')];
}
