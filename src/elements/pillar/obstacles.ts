import type { DecisionsOf } from '../../vocabulary/field';
import type { Obstacle } from '../../vocabulary/opening';
import type { Bench } from '../../vocabulary/room';
import type { fields } from './fields';
import { basesAndCaps } from './heads';
import { endsOf } from './pieces';

/** Pillars from block to top, and bases and caps, which stand into the bays: no opening may meet them. */
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
      const common = { run: run.id, through: 'front' } as const;
      const pieces = [base, cap].flatMap((piece): readonly Obstacle[] => {
        if (!piece) return [];
        const { left, right } = endsOf(run, pillar, piece, rod);
        // A mitred end reaches furthest at its face or at its back.
        return [
          {
            ...common,
            from: Math.min(left.x, left.x + left.perOut * piece.thickness),
            to: Math.max(right.x, right.x + right.perOut * piece.thickness),
            low: piece.low,
            high: piece.high,
            what: `${piece.which} of ${name}`,
          },
        ];
      });
      return [{ ...common, from: pillar.from, to: pillar.to, low, high: rod.frameHeight, what: name }, ...pieces];
    }),
  );
}
