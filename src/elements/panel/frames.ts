import { footOf, type IntoBay, intoBays, reachBetween } from '../../base/foot';
import { boundsOf } from '../../base/outline';
import { pastCorners } from '../../base/place';
import { tenth } from '../../base/tenth';
import { SAME_LENGTH } from '../../base/tolerance';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Bay, Rod, RodRun } from '../../vocabulary/rod';
import type { Bench } from '../../vocabulary/room';
import type { fields } from './fields';
import { atCover, atPillar, noRoom, pastMitre } from './findings';

export type Decisions = DecisionsOf<typeof fields>;

/** A rectangle on the front: x along the run, heights above the floor. */
export interface Field {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
}

/** One frame by its outside, or why it can't be made. */
export interface Frame extends Field {
  readonly run: RodRun;
  readonly bay: Bay;
  /** From the lowest, 0 upward. */
  readonly row: number;
  readonly where: string;
  readonly fault?: Finding;
}

/** Inside a frame this much must be left, or it reads as a lump (common practice, no source). */
const LEAST_FIELD = 10;

/** A frame stands at least this far above the brackets of a foot rail (common practice, no source). */
const ABOVE_BRACKETS = 10;

/** Every frame that the decisions ask for, bay by bay, lowest row first. */
export function framesOf(decisions: Decisions, { rod, book }: Pick<Bench, 'rod' | 'book'>): readonly Frame[] {
  const width = boundsOf(book.item('moulding', decisions.moulding).section).max[0];
  const heads = intoBays(rod);
  const frames: Frame[] = [];
  for (const run of rod.runs)
    for (const bay of run.bays) {
      if (!bay.panels) continue;
      const rows = outsides(decisions, rod, bay);
      for (let row = 0; row < rows.length; row++) {
        const { from, to, low, high } = rows[row];
        const where = `bay ${bay.index + 1}${decisions.rows > 1 ? `, row ${row + 1}` : ''}`;
        const frame = { from, to, low, high, run, bay, row, where };
        const fault = faultOf(frame, decisions.margin, width, rod, heads);
        frames.push(fault ? { ...frame, fault } : frame);
      }
    }
  return frames;
}

/** Lower edge of the lowest frames: where the margin has it, and where it is made, clear of the brackets of a foot rail. */
export function lowerEdge({ margin }: Decisions, rod: Rod): { readonly wished: number; readonly made: number } {
  const wished = footOf(rod) + margin;
  const brackets = rod.heights.footBracket;
  return { wished, made: brackets === undefined ? wished : Math.max(wished, brackets + ABOVE_BRACKETS) };
}

/** Outside sizes of the frames of one bay, lowest row first. */
function outsides(decisions: Decisions, rod: Rod, bay: Bay): readonly Field[] {
  const { margin, rows, rowGap } = decisions;
  const low = lowerEdge(decisions, rod).made;
  const high = rod.frameHeight - (rod.heights.underTop ?? 0) - margin;
  const each = (high - low - (rows - 1) * rowGap) / rows;
  return Array.from({ length: rows }, (_, r) => ({
    from: bay.from + margin,
    to: bay.to - margin,
    low: low + r * (each + rowGap),
    high: low + r * (each + rowGap) + each,
  }));
}

/** Why a frame can't be made, if it can't. `width`: of its moulding. */
function faultOf(
  frame: Frame,
  margin: number,
  width: number,
  rod: Rod,
  beside: readonly IntoBay[],
): Finding | undefined {
  const { run, bay, from, to, low, high } = frame;
  const need = 2 * width + LEAST_FIELD;
  if (Math.min(to - from, high - low) < need) return noRoom(frame, margin, width, need);
  const { inner, outer } = rod.layers.panel;
  const past = pastCorners(run, { from, to, inner, outer });
  if (past > SAME_LENGTH) return pastMitre(run.id, frame.where, past);
  const cover = run.joins.find(
    (j) => j.behind === 'cover' && j.coverFrom < to - SAME_LENGTH && j.coverTo > from + SAME_LENGTH,
  );
  if (cover) return atCover(frame, cover);
  const block = rod.heights.plinth ?? 0;
  const foot = block > low + SAME_LENGTH ? Math.max(bay.footFrom - from, to - bay.footTo) : 0;
  const heads = reachBetween(beside, low, high) - margin;
  if (foot > SAME_LENGTH) return atPillar(frame, foot, `a plinth block, ${tenth(block)} mm high`);
  if (heads > SAME_LENGTH && !(bay.mitredLeft && bay.mitredRight))
    return atPillar(frame, heads, 'the base or cap of a pillar');
  return undefined;
}
