import type { EndCondition } from '../vocabulary/job';
import type { RunEnd } from '../vocabulary/rod';
import { frameCorner, growth } from './corner';
import type { Asked } from './layers';
import type { RunSeed } from './plan';

/** An end of a run before the run's length is known: `frameBeyond` is measured beyond the frame-line end. */
export interface EndSeed extends Omit<RunEnd, 'frameAt'> {
  readonly frameBeyond: number;
}

/** The end of a run that turns no corner. */
function plainEnd(condition: EndCondition['kind'], asked: Asked): EndSeed {
  const free = condition !== 'wall';
  return {
    kind: free ? 'free' : 'wall',
    deflectionDeg: 0,
    grows: 0,
    through: true,
    frameBeyond: 0,
    toReturn: false,
    topBeyond: free ? asked.top.endOverhang : 0,
  };
}

/** One side of the corner between two seeds. */
function cornerEnd(before: RunSeed, after: RunSeed, side: 'before' | 'after', asked: Asked): EndSeed {
  const through = (before.through === 'this') === (side === 'before');
  const meet = frameCorner(before.deflectionDeg, asked.timber.depth);
  const other = side === 'before' ? after : before;
  const toReturn = other.jobIndex === null;
  return {
    kind: 'corner',
    deflectionDeg: before.deflectionDeg,
    grows: growth(before.deflectionDeg),
    neighbour: other.id,
    through,
    frameBeyond: through ? meet.through : meet.butting,
    toReturn,
    topBeyond: toReturn ? asked.top.overhang : 0,
  };
}

/** Both ends of each run, in order. */
export function endsOf(
  seeds: readonly RunSeed[],
  left: EndCondition,
  right: EndCondition,
  asked: Asked,
): readonly { readonly left: EndSeed; readonly right: EndSeed }[] {
  const last = seeds.length - 1;
  return seeds.map((seed, i) => ({
    left: i === 0 ? plainEnd(left.kind, asked) : cornerEnd(seeds[i - 1], seed, 'after', asked),
    right: i === last ? plainEnd(right.kind, asked) : cornerEnd(seed, seeds[i + 1], 'before', asked),
  }));
}

/**
 * Frame-line length from a length taken over a layer: what the layer gains at each corner is taken off. Over the top, what the
 * top runs past a free end is taken off too.
 */
export function frameLength(
  seed: RunSeed,
  ends: { readonly left: EndSeed; readonly right: EndSeed },
  asked: Asked,
): number {
  const offset = asked.layers[seed.over]?.outer ?? 0;
  const gain = (end: EndSeed): number =>
    end.kind === 'corner' ? offset * end.grows : seed.over === asked.top.layer ? end.topBeyond : 0;
  return seed.length - gain(ends.left) - gain(ends.right);
}
