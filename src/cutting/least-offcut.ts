import type { SheetProblem } from '../vocabulary/cut-problem';

/** What is left of a bar is worth keeping from this length on where nothing is said, mm (common practice, no source). */
export const LEAST_BAR = 300;

/** A leftover of a sheet is worth keeping from these sides on where nothing is said, mm (common practice, no source). */
const LEAST_SHEET = { length: 300, width: 100 };

/** From which sides on a leftover of a problem's sheets goes into the rack, either way round: the longer first, mm. */
export function leastSides({
  leastOffcut = LEAST_SHEET,
}: Pick<SheetProblem, 'leastOffcut'>): readonly [number, number] {
  const { length, width } = leastOffcut;
  return [Math.max(length, width), Math.min(length, width)];
}

/** Whether a rectangle is no smaller than that, either way round; all in one unit. */
export const largeEnough = (length: number, width: number, [longer, shorter]: readonly [number, number]): boolean =>
  Math.max(length, width) >= longer && Math.min(length, width) >= shorter;

/** What is left over narrower than this comes off as dust and slips, mm, and isn't worth a word (common practice, no source). */
const SLIP = 5;

/** Whether what is left over is too narrow to be spoken of. Sides in mm. */
export const isSlip = ({ length, width }: { readonly length: number; readonly width: number }): boolean =>
  Math.min(length, width) < SLIP;
