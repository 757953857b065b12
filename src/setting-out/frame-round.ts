import type { Backing } from '../vocabulary/backing';
import type { Opening } from '../vocabulary/job';
import type { Obstacle, PlacedOpening } from '../vocabulary/opening';
import type { Rod } from '../vocabulary/rod';
import { type Framed, frameUp } from './framing';
import { aboutStud } from './opening-ground';
import { placeOpenings } from './openings';

/**
 * Places the openings and frames up round them. Where a stud that something needs has no place because of an opening, that stud is in the
 * opening's way like a pillar, and the openings are placed anew: it is refused, with how far the nearest good place is.
 * @param backingOf what the rooms ask for, with the openings that have their place.
 */
export function frameRound(
  rod: Rod,
  openings: readonly Opening[],
  obstacles: readonly Obstacle[],
  backingOf: (placed: readonly PlacedOpening[]) => readonly Backing[],
): Framed & { readonly openings: readonly PlacedOpening[] } {
  const studs: Obstacle[] = [];
  // Every turn refuses one opening at least; more turns than that can't be needed.
  for (let turn = 0; ; turn++) {
    const { placed, findings } = placeOpenings(rod, openings, [...obstacles, ...studs]);
    const framed = frameUp(rod, backingOf(placed));
    if (framed.kept.length === 0 || turn > openings.length)
      return { ...framed, openings: placed, findings: [...findings, ...framed.findings] };
    studs.push(
      ...framed.kept.map(({ run, centre, reason }): Obstacle => {
        const stud = aboutStud(centre, rod.timber.face, `the stud for the ${reason}`);
        return { ...stud, run, through: 'front' };
      }),
    );
  }
}
