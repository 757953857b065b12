import { level, onFace, placeOf, UP } from '../../base/place';
import { SQUARE_EDGE } from '../../base/profiles';
import { boardFault } from '../../base/solid/rings';
import { tenth } from '../../base/tenth';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Cutter } from '../../vocabulary/book';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Vec2 } from '../../vocabulary/geometry';
import type { PlacedOpening } from '../../vocabulary/opening';
import type { Hold, Oversize, PartDraft } from '../../vocabulary/part';
import type { Rod, RodRun } from '../../vocabulary/rod';
import type { Board, BoardEdge } from '../../vocabulary/shape';
import { edgesOf, unfit } from './edges';
import type { fields } from './fields';
import { carried } from './findings';
import { holeWork, outlineOf } from './holes';

export type Decisions = DecisionsOf<typeof fields>;

/** The moulded front edge, where there is one. */
export type Moulded = { readonly edge: BoardEdge; readonly cutter: Cutter } | undefined;

/** Whether a length is the first or the last of its run. */
export interface Ends {
  readonly left: boolean;
  readonly right: boolean;
}

/** Screws from below, this far apart (common practice, no source). */
const SCREW_CENTRES = 300;

/** How long the end of a length is, along the joint: the longest of its sides that face that way. */
export const sideOf = (outline: readonly Vec2[], side: 'left' | 'right'): number =>
  Math.max(
    ...outline.map((p, i) => {
      const q = outline[(i + 1) % outline.length];
      return (q[1] - p[1]) * (side === 'right' ? 1 : -1) > SAME_LENGTH ? Math.hypot(q[0] - p[0], q[1] - p[1]) : 0;
    }),
  );

/** What is left on at the ends that meet a wall. */
export function oversizeOf(run: RodRun, ends: Ends): readonly Oversize[] {
  return (['left', 'right'] as const).flatMap((side): Oversize[] =>
    ends[side] && run[side].scribe > 0
      ? [{ side: `${side} end`, amount: run[side].scribe, on: 'length', reason: 'to scribe to the wall' }]
      : [],
  );
}

function holdsOf(rod: Rod): readonly Hold[] {
  const screwed = (through: number, into: string): Hold => ({
    by: 'screw',
    through,
    where: { at: 'length', centres: SCREW_CENTRES },
    into: 'itself',
    rule: `top, from below through ${into} in slots across the length, for wood moves (common practice, no source)`,
  });
  const behind = rod.carcass && carried(rod) ? [screwed(rod.carcass.depth, 'the rails behind')] : [];
  return [screwed(rod.timber.face, 'the top plate'), ...behind];
}

/** One length as a board with its holes; `outline` in the run's coordinates. */
export function lengthOf(
  rod: Rod,
  run: RodRun,
  outline: readonly Vec2[],
  { hardwood, corner }: Decisions,
  holes: readonly PlacedOpening[],
  moulded: Moulded,
  ends: Ends,
): { readonly draft: PartDraft; readonly fault?: Finding } {
  const left = Math.min(...outline.map((p) => p[0]));
  const { edges, work } = edgesOf(outline, moulded, run, { ...ends, butted: corner === 'butted' });
  const { thickness } = rod.top;
  const board: Board = {
    kind: 'board',
    thickness,
    holes: holes.map((o) => outlineOf(o, left)),
    edges,
    outline: outline.map(([x, y]) => [x - left, y] as const),
  };
  const wrong = moulded ? boardFault(board) : null;
  const draft: PartDraft = {
    kind: 'top',
    code: 'TP',
    name: 'top',
    run: run.id,
    material: hardwood,
    finish: 'oil',
    from: 'clad',
    where: '',
    grooves: [],
    edges: wrong ? [] : work,
    edgeNames: ['front edge', 'back edge'],
    holds: holdsOf(rod),
    work: holes.map((o) => holeWork(o, left)),
    place: placeOf(onFace(run, left, rod.top.overhang, rod.frameHeight), level(run.along), UP),
    shape: wrong ? { ...board, edges: outline.map(() => SQUARE_EDGE) } : board,
  };
  return wrong && moulded
    ? { draft, fault: unfit(moulded.cutter, `${wrong} (run ${run.id}, from ${tenth(left)} mm)`, thickness) }
    : { draft };
}
