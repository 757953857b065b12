import { CLEAR_OF_HOLE } from '../../base/tolerance';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Obstacle } from '../../vocabulary/opening';
import type { Bench } from '../../vocabulary/room';
import type { fields } from './fields';
import { basesAndCaps } from './heads';
import { endsOf } from './pieces';

/**
 * Pillars from block to top, and bases and caps, which stand into the bays: no opening may meet them. Boards and caps stand right below the
 * top, where it overhangs the frame: a hole through it must clear them too.
 */
export function obstacles(
  decided: DecisionsOf<typeof fields>,
  bench: Pick<Bench, 'rod' | 'book'>,
): readonly Obstacle[] {
  const { rod } = bench;
  const low = rod.heights.plinth ?? 0;
  if (low >= rod.frameHeight) return [];
  const { base, cap } = basesAndCaps(decided, bench, low);
  return rod.runs.flatMap((run) =>
    run.pillars.flatMap((pillar): readonly Obstacle[] => {
      const name = `pillar ${pillar.index + 1}`;
      const { inner, outer } = rod.layers.pillar;
      const underTop = ({ from, to, what }: Pick<Obstacle, 'from' | 'to' | 'what'>, out: number): Obstacle => ({
        run: run.id,
        through: 'top',
        from,
        to,
        low: rod.top.overhang - out,
        high: rod.top.overhang - inner,
        what,
        clear: CLEAR_OF_HOLE,
      });
      const inFront = (
        { from, to, what }: Pick<Obstacle, 'from' | 'to' | 'what'>,
        bottom: number,
        high: number,
      ): Obstacle => ({ run: run.id, through: 'front', from, to, low: bottom, high, what });
      const pieces = [base, cap].flatMap((piece): readonly Obstacle[] => {
        if (!piece) return [];
        const { left, right } = endsOf(run, pillar, piece, rod);
        // A mitred end reaches furthest at its face or at its back.
        const at = {
          from: Math.min(left.x, left.x + left.perOut * piece.thickness),
          to: Math.max(right.x, right.x + right.perOut * piece.thickness),
          what: `${piece.which} of ${name}`,
        };
        return [
          inFront(at, piece.low, piece.high),
          ...(piece.which === 'cap' ? [underTop(at, inner + piece.thickness)] : []),
        ];
      });
      const board = { from: pillar.from, to: pillar.to, what: name };
      return [inFront(board, low, rod.frameHeight), ...pieces, underTop(board, outer)];
    }),
  );
}
