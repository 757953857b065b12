import { runsThrough } from '../../base/foot';
import { boundsOf } from '../../base/outline';
import type { Backing } from '../../vocabulary/backing';
import type { Room } from '../../vocabulary/room';
import { fields } from './fields';
import { parts } from './parts';

/** Fixings go this far below the upper edge, clear of the moulding of a usual skirting (common practice, no source). */
const FIXING_BELOW_EDGE = 30;

/** Ready-moulded skirting between the plinth blocks, mitred at a corner without pillar; none where a plinth runs through. */
export const skirting: Room<typeof fields> = {
  kind: 'skirting',
  label: 'Skirting',
  group: 'front',
  layer: 'skirting',
  fields,
  demands({ moulding }, book) {
    const { max } = boundsOf(book.item('moulding', moulding).section);
    return { layer: { name: 'skirting', on: 'cladding', thickness: max[1] }, heights: { skirting: max[0] } };
  },
  /** It ends at the blocks. */
  mindsJoins: () => false,
  backing: (_, { rod }) =>
    runsThrough(rod)
      ? []
      : rod.runs.flatMap((run) =>
          run.bays.map(
            (bay): Backing => ({
              kind: 'noggin',
              run: run.id,
              z: rod.heights.skirting - FIXING_BELOW_EDGE,
              from: bay.footFrom,
              to: bay.footTo,
              reason: 'skirting',
            }),
          ),
        ),
  parts,
  /** Its ends are the blocks' edges, marked already. */
  marks: () => [],
};
