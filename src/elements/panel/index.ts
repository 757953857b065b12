import { boundsOf } from '../../base/outline';
import { alongFace } from '../../base/place';
import { mitredFrame } from '../../base/stuff';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Backing } from '../../vocabulary/backing';
import type { Obstacle } from '../../vocabulary/opening';
import type { Part, PartDraft } from '../../vocabulary/part';
import type { Mark, RodRun } from '../../vocabulary/rod';
import type { Bench, Made, Room } from '../../vocabulary/room';
import { fields } from './fields';
import { raised } from './findings';
import { type Decisions, type Field, framesOf, lowerEdge } from './frames';
import { onSkin } from './holds';
import { railParts, railsOf } from './rails';

/** Frames of moulding in the bays, at an equal margin, mitred and cut to the long point; flat rails between rows, if wished. */
export const panel: Room<typeof fields> = {
  kind: 'panel',
  label: 'Panel frames',
  group: 'front',
  layer: 'panel',
  fields,
  demands: ({ moulding }, book) => ({
    layer: { name: 'panel', on: 'cladding', thickness: boundsOf(book.item('moulding', moulding).section).max[1] },
  }),
  /** Only strips over joins may come in its way. */
  mindsJoins: (_, { runs }) => runs.some(({ joins }) => joins.some(({ behind }) => behind === 'cover')),
  /** The members, not the field: an opening may come through inside a frame. */
  obstacles(decisions, bench) {
    const width = boundsOf(bench.book.item('moulding', decisions.moulding).section).max[0];
    const frames = framesOf(decisions, bench);
    const at = (run: string, { from, to, low, high }: Field, what: string): Obstacle => ({
      run,
      through: 'front',
      from,
      to,
      low,
      high,
      what,
    });
    const sound = frames.filter((f) => !f.fault);
    const rails = railsOf(decisions, frames, bench).filter((r) => !r.fault);
    return [
      ...sound.flatMap(({ run, bay, from, to, low, high }) =>
        membersOf({ from, to, low, high }, width).map((m) => at(run.id, m, `panel frame in bay ${bay.index + 1}`)),
      ),
      ...rails.map(({ run, where, from, to, low, high }) =>
        at(run.id, { from, to, low, high }, `flat rail in ${where}`),
      ),
    ];
  },
  /** A noggin behind the middle of each level member, and of each rail. */
  backing(decisions, bench) {
    const half = boundsOf(bench.book.item('moulding', decisions.moulding).section).max[0] / 2;
    const frames = framesOf(decisions, bench);
    const sound = frames.filter((f) => !f.fault);
    const rails = railsOf(decisions, frames, bench).filter((r) => !r.fault);
    return [
      ...sound.flatMap(({ run, from, to, low, high }): Backing[] =>
        [low + half, high - half].map((z) => ({ kind: 'noggin', run: run.id, z, from, to, reason: 'panel frame' })),
      ),
      ...rails.map(
        ({ run, from, to, low, high }): Backing => ({
          kind: 'noggin',
          run: run.id,
          z: (low + high) / 2,
          from,
          to,
          reason: 'flat rail',
        }),
      ),
    ];
  },
  parts,
  marks: (run, made) =>
    outsides(
      run,
      made.filter((p) => p.code === CODE),
    ),
};

const CODE = 'PM';
const SIDES = ['bottom', 'right', 'top', 'left'] as const;

/** The four members of a frame as rectangles; uprights between the level ones. */
const membersOf = ({ from, to, low, high }: Field, width: number): readonly Field[] => [
  { from, to, low, high: low + width },
  { from: to - width, to, low: low + width, high: high - width },
  { from, to, low: high - width, high },
  { from, to: from + width, low: low + width, high: high - width },
];

/** Outside left and right of each frame, from the members that run level to the right, the lowest row speaking for all. */
function outsides(run: RodRun, made: readonly Part[]): readonly Mark[] {
  const level = made.filter((p) => p.place.along[0] * run.along[0] + p.place.along[1] * run.along[1] > 0.5);
  const lowest = new Map([...level].reverse().map((p) => [alongFace(run, p.place.origin).toFixed(3), p]));
  return [...lowest.values()].flatMap((p): Mark[] => {
    const x = alongFace(run, p.place.origin);
    const mark = { lane: 'front' as const, part: p.mark };
    return [
      { ...mark, id: `${p.mark}-left`, x, reason: 'panel frame, outside left' },
      { ...mark, id: `${p.mark}-right`, x: x + p.size.length, reason: 'panel frame, outside right' },
    ];
  });
}

function parts(decisions: Decisions, bench: Bench): Made {
  const { rod, book } = bench;
  const { section } = book.item('moulding', decisions.moulding);
  const { inner: d, outer } = rod.layers.panel;
  const frames = framesOf(decisions, bench);
  const holds = onSkin(outer - d);
  const drafts = frames
    .filter((f) => !f.fault)
    .flatMap(({ run, bay, row, where, from, to, low, high }) =>
      mitredFrame(run, section, { from, to, low, high, d }).map(
        ({ shape, place }, i): PartDraft => ({
          kind: 'panel',
          code: CODE,
          name: 'panel moulding',
          run: run.id,
          material: decisions.moulding,
          finish: 'paint',
          from: 'finished',
          edges: [],
          grooves: [],
          where: `${where}, ${SIDES[i]}`,
          set: `${run.id} ${bay.index} ${row}`,
          edgeNames: ['outer edge', 'inner edge'],
          holds,
          shape,
          place,
        }),
      ),
    );
  const rails = railParts(decisions, railsOf(decisions, frames, bench), bench);
  const { wished, made } = lowerEdge(decisions, rod);
  return {
    drafts: [...drafts, ...rails.drafts],
    findings: [
      ...frames.flatMap((f) => f.fault ?? []),
      ...rails.findings,
      ...(drafts.length > 0 && made > wished + SAME_LENGTH ? [raised(wished, made, rod.heights.footBracket)] : []),
    ],
  };
}
