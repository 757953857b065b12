import { CLEAR_OF_HOLE } from '../../base/tolerance';
import type { Backing } from '../../vocabulary/backing';
import type { Obstacle } from '../../vocabulary/opening';
import type { Rod, RodRun } from '../../vocabulary/rod';
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
  obstacles: (decisions, { rod }) =>
    rod.runs.filter((run) => run.sound).flatMap((run) => [...edgesOf(run, rod, decisions), upperEdge(run, rod)]),
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

/** The skin stands right below the top: a hole through that must clear it. */
function upperEdge(run: RodRun, { layers, top: { overhang } }: Rod): Obstacle {
  const { inner, outer } = layers.cladding;
  return {
    ...{ run: run.id, through: 'top', what: 'the cladding below', clear: CLEAR_OF_HOLE },
    from: Math.min(0, -outer * run.left.grows),
    to: run.length + Math.max(0, outer * run.right.grows),
    low: overhang - outer,
    high: overhang - inner,
  };
}
