import { extentOf } from '../base/solid/extent';
import { SAME_LENGTH } from '../base/tolerance';
import type { Part, PartDraft, Piece } from '../vocabulary/part';
import type { RodRun } from '../vocabulary/rod';

/**
 * Says of each piece when it is fitted: on site when its room says so, when it crosses a join, or when it is mitred with a neighbour
 * across one; else in the workshop, on the section in whose part of the run it lies.
 */
export function assign(pieces: readonly Piece[], runs: readonly RodRun[]): Part[] {
  const of = new Map(runs.map((run, i) => [run.id, { run, before: runs[i - 1] }]));
  return pieces.map((piece): Part => {
    const there = of.get(piece.run);
    if (!there || piece.fit === 'site' || meetsJoin(piece, there.run, there.before))
      return { ...piece, fitted: 'site' };
    const { run } = there;
    if (run.joins.length === 0) return { ...piece, fitted: 'workshop', inSection: run.sections[0] };
    const reach = alongRun(piece, run);
    if (run.joins.some(({ x }) => reach[0] < x - SAME_LENGTH && reach[1] > x + SAME_LENGTH))
      return { ...piece, fitted: 'site' };
    const middle = (reach[0] + reach[1]) / 2;
    return { ...piece, fitted: 'workshop', inSection: run.sections[run.joins.filter((j) => j.x < middle).length] };
  });
}

function meetsJoin({ meets }: Piece, run: RodRun, before: RodRun | undefined): boolean {
  const left = run.left.kind === 'corner' && before?.joinAtRight !== undefined;
  const right = run.right.kind === 'corner' && run.joinAtRight !== undefined;
  return ((meets === 'left' || meets === 'both') && left) || ((meets === 'right' || meets === 'both') && right);
}

/** From where to where a piece reaches along its run, mm from the left end of the frame line. */
export function alongRun(
  piece: Pick<PartDraft, 'shape' | 'place'>,
  { origin, along }: RodRun,
): readonly [number, number] {
  const at = origin[0] * along[0] + origin[1] * along[1];
  const [from, to] = extentOf(piece, [along[0], along[1], 0]);
  return [from - at, to - at];
}
