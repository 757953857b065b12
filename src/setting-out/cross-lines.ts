import { SAME_LENGTH } from '../base/tolerance';
import type { CrossLine } from '../vocabulary/carcass';
import type { FrameTimber, RodRun, RunEnd } from '../vocabulary/rod';

/** Two cross frames must leave at least this much clear between them, or nothing could be fixed there or got in (common practice, no source). */
export const LEAST_CLEAR = 150;

/** The strip in which cross frames stand: d of its front and back, and the side of their timber that lies along the run. */
export interface Strip {
  readonly front: number;
  readonly back: number;
  readonly face: number;
}

/** A length of a run between two ends or joins. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  readonly why: readonly [CrossLine['why'], CrossLine['why']];
}

/**
 * The lengths of a run behind which a carcass can stand, one for each section: from end to end of its frame, less at an outside corner,
 * where the neighbour's carcass begins on the corner's line, and at a return, which stands behind the run's end.
 */
export function piecesOf(run: RodRun, timber: FrameTimber, strip: Strip): readonly Piece[] {
  const from = Math.max(run.left.frameAt, reach(run.left, timber, strip));
  const to = Math.min(run.right.frameAt, run.length - reach(run.right, timber, strip));
  const joins = run.joins.map((j) => j.x).filter((x) => x > from + SAME_LENGTH && x < to - SAME_LENGTH);
  const lines = [from, ...joins, to];
  return lines.slice(1).map((end, i) => ({
    from: lines[i],
    to: end,
    why: [i === 0 ? 'end' : 'join', i === joins.length ? 'end' : 'join'],
  }));
}

/** How far from the frame-line end of a run its carcass must stay, for the neighbour's sake; −∞ where only the frame's end counts. */
function reach(end: RunEnd, timber: FrameTimber, { back }: Strip): number {
  if (end.kind !== 'corner') return -Infinity;
  if (end.toReturn) return timber.depth;
  // At an inside corner the runs part behind their frames.
  return end.deflectionDeg > 0 ? -back * end.grows : -Infinity;
}

/** The least length behind which a cross frame stands at each end, mm. */
export const leastBehind = (face: number): number => 2 * face + LEAST_CLEAR - SAME_LENGTH;

/** Whether a piece is long enough for a cross frame at each end. */
export const holdsTwo = (piece: Piece, { face }: Strip): boolean => piece.to - piece.from >= leastBehind(face);

/**
 * Cross frames of one piece, from left to right: one at each end and, where wished, one behind each pillar that leaves room. Worked from
 * the datum end, so that a mirrored unit is framed alike.
 */
export function crossLinesOf(
  run: RodRun,
  piece: Piece,
  lines: 'bays' | 'ends',
  { face }: Strip,
  datum: FrameTimber['datum'],
): readonly CrossLine[] {
  const ends: readonly CrossLine[] = [
    { from: piece.from, to: piece.from + face, why: piece.why[0] },
    { from: piece.to - face, to: piece.to, why: piece.why[1] },
  ];
  if (lines === 'ends') return ends;
  const behind = run.pillars
    .filter((p) => p.where === 'between')
    .map((p): CrossLine => ({ from: p.centre - face / 2, to: p.centre + face / 2, why: 'bay' }))
    .sort((a, b) => (datum === 'left' ? a.from - b.from : b.from - a.from));
  const stood = [...ends];
  for (const line of behind) {
    const inside = line.from > piece.from && line.to < piece.to;
    if (inside && stood.every((other) => clear(other, line) >= LEAST_CLEAR)) stood.push(line);
  }
  return stood.sort((a, b) => a.from - b.from);
}

const clear = (a: CrossLine, b: CrossLine): number => Math.max(a.from - b.to, b.from - a.to) + SAME_LENGTH;
