import { CLEAR_OF_HOLE } from '../../base/tolerance';
import type { Backing } from '../../vocabulary/backing';
import type { Obstacle } from '../../vocabulary/opening';
import type { Bench, Made, Room } from '../../vocabulary/room';
import { fields } from './fields';
import { fixedShelves } from './fixed';
import { type Decisions, layShelves } from './lay';
import { looseShelves } from './loose';

/** Shelves behind the front, seen by those who serve: fixed on bearers, or loose in side linings with holes or standards. */
export const shelf: Room<typeof fields> = {
  kind: 'shelf',
  label: 'Shelves',
  group: 'behind',
  fields,
  demands: () => ({}),
  obstacles,
  /** The bearers of fixed shelves lie along the front frame, and each end of the side bearers at it: a noggin behind each. */
  backing: (decisions, { rod, book }) => {
    const { width } = book.item('timber', decisions.bearer);
    return layShelves(decisions, { rod, book }).laid.flatMap(({ run, bay, support, undersides }) =>
      support === 'fixed'
        ? undersides.map(
            (z): Backing => ({
              kind: 'noggin',
              run: run.id,
              z: z - width / 2,
              from: bay.from,
              to: bay.to,
              reason: 'shelf',
            }),
          )
        : [],
    );
  },
  parts,
  /** Heights, not places along the run. */
  marks: () => [],
};

function parts(decisions: Decisions, bench: Bench): Made {
  const { laid, findings } = layShelves(decisions, bench);
  const bearer = bench.book.item('timber', decisions.bearer);
  const lining = bench.book.item('sheet', decisions.lining);
  return {
    drafts: laid.flatMap((one) =>
      one.support === 'fixed' ? fixedShelves(one, decisions, bearer) : looseShelves(one, decisions, lining.thickness),
    ),
    findings,
  };
}

/** Bearers and linings lie close behind the front frame: what comes through the front would come out in them. Loose shelves can be moved. */
function obstacles(decisions: Decisions, { rod, book }: Pick<Bench, 'rod' | 'book'>): readonly Obstacle[] {
  const bearer = book.item('timber', decisions.bearer);
  const thick = book.item('sheet', decisions.lining).thickness;
  return layShelves(decisions, { rod, book }).laid.flatMap(
    ({ run, bay, support, undersides, thickness, low, high }): Obstacle[] => {
      const at = { run: run.id, through: 'front' as const, clear: CLEAR_OF_HOLE };
      if (support === 'fixed')
        return undersides.map((z, k) => ({
          ...at,
          ...{ from: bay.from, to: bay.to, low: z - bearer.width, high: z + thickness },
          what: `shelf ${k + 1} of bay ${(bay.bay ?? 0) + 1}`,
        }));
      const what = `side lining of bay ${(bay.bay ?? 0) + 1}`;
      return [
        { ...at, from: bay.from, to: bay.from + thick, low, high, what },
        { ...at, from: bay.to - thick, to: bay.to, low, high, what },
      ];
    },
  );
}
