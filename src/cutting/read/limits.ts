import type { BarPiece, CutProblem, SheetPiece } from '../../vocabulary/cut-problem';
import type { Issue } from '../../vocabulary/result';
import { MOST } from '../most';
import type { Range } from './fields';

/** Longest text that is read, in characters. */
export const MOST_CHARACTERS = 5_000_000;

/** What is cut, and from what: as long as the longest stock of the classic one-dimensional problems. */
export const SIZE: Range = { least: 0.1, most: 2_000_000, unit: 'mm' };
/** What may be nothing: kerf, trim, least offcut. */
export const ALLOWANCE: Range = { least: 0, most: 2_000_000, unit: 'mm' };
export const QUANTITY: Range = { least: 1, most: MOST.pieces, whole: true };
/** Dearer than any stock; with it and the most pieces, sums of hundredths stay whole numbers in a double. */
export const PRICE: Range = { least: 0, most: 1e9 };
export const COUNT: Range = { least: 0, most: 1_000_000, whole: true };
/** 100 mm along for each mm across: flatter than any saw cuts. */
export const SLANT: Range = { least: -100, most: 100 };
export const STAGES: Range = { least: 1, most: 100, whole: true };

/** What two pieces must share to be the same to the saw: all but name and number. */
const likeness = ({ name: _, quantity: __, ...rest }: BarPiece | SheetPiece): string =>
  JSON.stringify(Object.entries(rest).sort(([a], [b]) => (a < b ? -1 : 1)));

/** Too many pieces, or too many different ones. */
export function tooMany(pieces: CutProblem['pieces'], path: string): Issue | undefined {
  const all = pieces.reduce((sum, { quantity }) => sum + quantity, 0);
  if (all > MOST.pieces) return { path, message: `${all} pieces in all; at most ${MOST.pieces} are allowed` };
  const different = new Set(pieces.map(likeness)).size;
  if (different > MOST.different)
    return { path, message: `${different} different pieces; at most ${MOST.different} are allowed` };
  return undefined;
}

const MOST_ISSUES = 20;

/** The first of them, and how many more there are. */
export function fewest(issues: readonly Issue[]): readonly Issue[] {
  if (issues.length <= MOST_ISSUES) return issues;
  const told = issues.slice(0, MOST_ISSUES - 1);
  return [...told, { path: '', message: `and ${issues.length - told.length} more` }];
}
