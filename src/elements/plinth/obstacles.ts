import { stripEnd } from '../../base/returned';
import type { Obstacle } from '../../vocabulary/opening';
import type { RodRun } from '../../vocabulary/rod';
import type { Bench } from '../../vocabulary/room';
import { endsOfBlock } from './blocks';
import { type Decisions, howItEnds, kickStrip, mouldedOn, reach } from './strip';

/** Blocks, or the board that runs along the foot: no opening in the front may meet them. */
export function obstacles(decisions: Decisions, bench: Pick<Bench, 'rod' | 'book'>): readonly Obstacle[] {
  const { rod } = bench;
  const { style, height, endReturn } = decisions;
  const strip = style === 'kicked' ? kickStrip(decisions, bench) : mouldedOn(decisions, bench);
  const from = (run: RodRun, [left, right]: readonly [number, number], what: string): Obstacle => ({
    run: run.id,
    through: 'front',
    from: left,
    to: right,
    low: 0,
    high: height,
    what,
  });
  return rod.runs
    .filter((run) => run.sound)
    .flatMap((run) => {
      if (style === 'blocks')
        return run.pillars.map((pillar) =>
          from(run, reach(endsOfBlock(decisions, rod, run, pillar), strip), `plinth block ${pillar.index + 1}`),
        );
      const end = (side: 'left' | 'right') =>
        stripEnd(run, side, strip.inner, howItEnds(run, side, style === 'plain' && endReturn));
      const what = style === 'plain' ? 'plinth board' : 'kick board';
      return [from(run, reach({ left: end('left'), right: end('right') }, strip), what)];
    });
}
