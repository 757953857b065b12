import { rectangle } from '../../base/outline';
import { level, onFace, placeOf, UP } from '../../base/place';
import { mouldedEdge, SQUARE_EDGE } from '../../base/profiles';
import { SQUARE_START, squareCut } from '../../base/stuff';
import { scale } from '../../base/vec';
import type { PartDraft } from '../../vocabulary/part';
import type { Rod } from '../../vocabulary/rod';
import type { Bench } from '../../vocabulary/room';
import { board, box, common, hinged, MOST_ON_TWO, runAt, type Side } from './common';
import type { Decisions, Gap } from './gap';

/** Lines the end of a frame, from the plinth blocks to the underside of the top: the bearer and the gate hang on it. */
export function jambOf(gap: Gap, { jamb }: Decisions, side: Side): PartDraft {
  const { left, face, back, low, high } = gap;
  const turn = side === 'left' ? 1 : -1;
  const origin = side === 'left' ? onFace(left, gap.from, back, low) : onFace(left, gap.to, face, low);
  return {
    ...common('JB', 'jamb', runAt(gap, side)),
    material: jamb,
    finish: 'paint',
    from: 'clad',
    where: `${side} of the flap`,
    edgeNames: side === 'left' ? ['back edge', 'front edge'] : ['front edge', 'back edge'],
    holds: [
      {
        by: 'screw',
        through: gap.jamb,
        where: { at: 'length', centres: 300 },
        rule: 'jamb to the end stud (common practice, no source)',
      },
    ],
    shape: board(box(high - low, face - back), gap.jamb),
    place: placeOf(origin, UP, scale(level(left.along), turn)),
  };
}

/** Carries the flap: its upper face is level with the frame. */
export function bearerOf(gap: Gap, material: string, side: Side): PartDraft {
  const { left, face, back, bearer, bearerHeight, jamb, high } = gap;
  const x = side === 'left' ? gap.from + jamb : gap.to - jamb - bearer;
  return {
    ...common('LB', 'flap bearer', runAt(gap, side)),
    material,
    finish: 'oil',
    from: 'clad',
    where: `${side} of the flap`,
    holds: [
      {
        by: 'screw',
        through: bearer,
        where: { at: 'length', centres: 150 },
        glue: 'pva',
        rule: 'flap bearer to the jamb, at 150 (common practice, no source)',
      },
    ],
    shape: {
      kind: 'stick',
      section: rectangle(bearer, bearerHeight),
      start: SQUARE_START,
      end: squareCut(face - back),
    },
    place: placeOf(onFace(left, x, back, high - bearerHeight), level(left.front), UP),
  };
}

/** The flap: a length of the same top that lies on the bearers, hinged to the top beside it. */
export function flapOf(gap: Gap, rod: Rod, book: Bench['book'], material: string): PartDraft {
  const { left, clear, flap } = gap;
  const { thickness, overhang, edge } = rod.top;
  const long = gap.to - gap.from - 2 * clear;
  const cutter = edge === undefined ? undefined : book.cutter(edge);
  const shape = board(box(long, rod.depth), thickness);
  const kg = long * rod.depth * thickness * 1e-9 * book.item('hardwood', material).densityKgM3;
  const hinges = rod.depth > MOST_ON_TWO.depth || kg > MOST_ON_TWO.kg ? 3 : 2;
  return {
    ...common('LF', 'flap', runAt(gap, flap.hinge)),
    material,
    finish: 'oil',
    from: 'clad',
    where: `hinged at the ${flap.hinge}`,
    edgeNames: ['front edge', 'back edge'],
    edges: cutter ? [{ edge: 'front edge', work: 'moulded', cutter: cutter.name }] : [],
    holds: [hinged(hinges, 'flap to the top beside it')],
    hardware: [
      { what: 'counter flap hinge', count: hinges },
      { what: 'stay that holds the flap open', count: 1 },
      { what: 'catch', count: 1 },
    ],
    shape: cutter
      ? { ...shape, edges: [mouldedEdge(cutter, thickness), SQUARE_EDGE, SQUARE_EDGE, SQUARE_EDGE] }
      : shape,
    place: placeOf(onFace(left, gap.from + clear, overhang, rod.frameHeight), level(left.along), UP),
  };
}
