import { level, onFace, placeOf } from '../../base/place';
import { SQUARE_EDGE } from '../../base/profiles';
import { tenth } from '../../base/tenth';
import { SAME_LENGTH } from '../../base/tolerance';
import { scale } from '../../base/vec';
import type { Timber } from '../../vocabulary/book';
import type { PartDraft } from '../../vocabulary/part';
import type { Rod, RodRun } from '../../vocabulary/rod';
import type { Board } from '../../vocabulary/shape';
import { bracketOutline } from './bracket';
import type { Profile } from './layout';

/** All brackets are alike and share one shape. */
export function bracketShape({ rest, back, inner, seat, low, thick }: Profile): Board {
  const outline = bracketOutline(rest, back - inner, seat - low);
  return { kind: 'board', outline, holes: [], thickness: thick, edges: outline.map(() => SQUARE_EDGE) };
}

/** It stands out from the skin: its length outward, its width up, its thickness to the left as seen from the front. */
export function bracket(rod: Rod, run: RodRun, x: number, profile: Profile, shape: Board, timber: Timber): PartDraft {
  const { inner, low, rest, thick, high } = profile;
  const seat =
    rest.seat.length > 0
      ? [
          `seat for the rail ${tenth(rest.deep)} deep in the upper edge, ${tenth(profile.back - inner)} to ${tenth(profile.front - inner)} from the back`,
        ]
      : [];
  return {
    kind: 'footrail',
    code: 'FB',
    name: 'foot rail bracket',
    run: run.id,
    material: timber.id,
    finish: 'paint',
    from: 'finished',
    edges: [],
    grooves: [],
    // They stand out too far for a section to pass a door with them; what they are screwed to is in the frame already.
    fit: 'site',
    where: `at ${tenth(x)}`,
    work: [...(high - low < timber.width - SAME_LENGTH ? [`ripped to ${tenth(high - low)} high`] : []), ...seat],
    holds: [
      {
        by: 'screw',
        through: rod.timber.depth + inner,
        where: { at: 'all', each: 4 },
        endGrain: true,
        glue: 'grab',
        rule: 'from behind, through noggins and skin into the end of the bracket, four each (common practice, no source)',
      },
    ],
    shape,
    place: placeOf(onFace(run, x + thick / 2, inner, low), level(run.front), scale(level(run.along), -1)),
  };
}
