import type { Backing } from '../../vocabulary/backing';
import type { Room } from '../../vocabulary/room';
import { fields } from './fields';
import { layRun } from './lay';
import { marks } from './marks';
import { parts } from './parts';

/** The MDF skin on the frame: cut on stud lines, behind a pillar where one is in reach. */
export const cladding: Room<typeof fields> = {
  kind: 'cladding',
  label: 'Cladding',
  group: 'front',
  layer: 'cladding',
  fields,
  demands: ({ sheet }, book) => ({ layer: { name: 'cladding', thickness: book.item('sheet', sheet).thickness } }),
  backing(decisions, { rod, book }) {
    const half = rod.timber.face / 2;
    return rod.runs
      .filter((run) => run.sound)
      .flatMap((run): Backing[] => {
        const { from, to, cuts } = layRun(run, decisions, { rod, book });
        const stud = (x: number, centred: boolean, reason: string): Backing => ({
          kind: 'stud',
          run: run.id,
          x,
          centred,
          reason,
        });
        return [
          ...(cuts ?? []).map((c) => stud(c.x, true, 'cladding joint')),
          stud(from + half, false, 'cladding edge'),
          stud(to - half, false, 'cladding edge'),
        ];
      });
  },
  parts,
  marks,
};
