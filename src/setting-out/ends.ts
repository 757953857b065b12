import type { EndCondition, Fit } from '../vocabulary/job';
import type { RunEnd } from '../vocabulary/rod';
import { frameCorner, growth } from './corner';
import type { Asked } from './layers';
import type { RunSeed } from './plan';

/** An end of a run before the run's length is known: `frameBeyond` is measured beyond the frame-line end. */
export interface EndSeed extends Omit<RunEnd, 'frameAt'> {
  readonly frameBeyond: number;
}

/** The end of a run that turns no corner. */
function plainEnd(condition: EndCondition['kind'], asked: Asked, fit: Fit): EndSeed {
  const free = condition !== 'wall';
  return {
    kind: free ? 'free' : 'wall',
    deflectionDeg: 0,
    grows: 0,
    through: true,
    // The one place where the tolerances gathered are taken off.
    frameBeyond: free ? 0 : -fit.tolerance,
    toReturn: false,
    topBeyond: free ? asked.top.endOverhang : 0,
    scribe: free ? 0 : fit.scribe,
    flap: false,
  };
}

/** An end at a flap: free, but the top stops with the frame, for the flap to lie beside it. */
const flapEnd = (other: RunSeed, asked: Asked, fit: Fit): EndSeed => ({
  ...plainEnd('free', asked, fit),
  neighbour: other.id,
  topBeyond: 0,
  flap: true,
});

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
    scribe: 0,
    flap: false,
  };
}

/** One side of where two seeds meet: a corner, or a flap between them. */
function meeting(before: RunSeed, after: RunSeed, side: 'before' | 'after', asked: Asked, fit: Fit): EndSeed {
  if (before.flap) return flapEnd(side === 'before' ? after : before, asked, fit);
  return cornerEnd(before, after, side, asked);
}

/** Both ends of each run, in order. */
export function endsOf(
  seeds: readonly RunSeed[],
  left: EndCondition,
  right: EndCondition,
  asked: Asked,
  fit: Fit,
): readonly { readonly left: EndSeed; readonly right: EndSeed }[] {
  const last = seeds.length - 1;
  return seeds.map((seed, i) => ({
    left: i === 0 ? plainEnd(left.kind, asked, fit) : meeting(seeds[i - 1], seed, 'after', asked, fit),
    right: i === last ? plainEnd(right.kind, asked, fit) : meeting(seed, seeds[i + 1], 'before', asked, fit),
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
