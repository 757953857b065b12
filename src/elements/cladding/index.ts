import type { Backing } from '../../vocabulary/backing';
import type { Room } from '../../vocabulary/room';
import { fields } from './fields';
import { edgesOf } from './holes';
import { layRun } from './lay';
import { marks } from './marks';
import { parts } from './parts';

/** The MDF skin on the frame: cut on stud lines, behind a pillar where one is in reach, and at every join. */
export const cladding: Room<typeof fields> = {
  kind: 'cladding',
  label: 'Cladding',
  group: 'front',
  layer: 'cladding',
  fields,
  demands: ({ sheet }, book) => ({ layer: { name: 'cladding', thickness: book.item('sheet', sheet).thickness } }),
  obstacles: (decisions, { rod }) => rod.runs.filter((run) => run.sound).flatMap((run) => edgesOf(run, rod, decisions)),
  /** A stud behind each joint. At a join the two sections' own end studs stand. */
  backing(decisions, { rod, book, openings }) {
    const half = rod.timber.face / 2;
    return rod.runs
      .filter((run) => run.sound)
      .flatMap((run): Backing[] => {
        const { stretches } = layRun(run, decisions, { rod, book, openings });
        const stud = (x: number, centred: boolean, reason: string): Backing => ({
          kind: 'stud',
          run: run.id,
          x,
          centred,
          reason,
        });
        return [
          ...stretches.flatMap(({ cuts }) => (cuts ?? []).map((c) => stud(c.x, true, 'cladding joint'))),
          stud(half, false, 'cladding edge'),
          stud(run.length - half, false, 'cladding edge'),
        ];
      });
  },
  parts,
  marks,
};
