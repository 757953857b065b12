import { leavesStuff, reachOf } from '../../base/edge-path';
import { rectangle } from '../../base/outline';
import { mouldedStrip } from '../../base/profiles';
import { returned, type StripEnd } from '../../base/returned';
import { lying, type Stuff } from '../../base/stuff';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Outline } from '../../vocabulary/geometry';
import type { EdgeWork, Oversize, PartDraft } from '../../vocabulary/part';
import type { RodRun } from '../../vocabulary/rod';
import type { Bench } from '../../vocabulary/room';
import type { fields } from './fields';
import { tooBig } from './findings';
import { onSkin, SMALL } from './holds';

export type Decisions = DecisionsOf<typeof fields>;

/** Less than this can't be held at the saw, mm (common practice, no source). */
export const LEAST_PIECE = 10;

/** The strip that plinths are cut from, and where it stands. */
export interface Strip {
  readonly sheet: string;
  readonly section: Outline;
  readonly edges: readonly EdgeWork[];
  readonly inner: number;
  readonly thickness: number;
  readonly height: number;
  /** What is wrong with its moulding; it is then left square. */
  readonly fault?: Finding;
}

/** A moulded strip on the cladding. */
export function mouldedOn({ sheet, height, cutter }: Decisions, { rod, book }: Pick<Bench, 'rod' | 'book'>): Strip {
  const { inner, outer } = rod.layers.plinth;
  const thickness = outer - inner;
  const mould = cutter ? book.cutter(cutter) : undefined;
  const reach = mould ? reachOf(mould) : { height: 0, depth: 0 };
  const fault = mould && !leavesStuff(reach, height, thickness) ? tooBig(reach, height, thickness) : undefined;
  const run = fault ? undefined : mould;
  return {
    sheet,
    section: mouldedStrip(height, thickness, run),
    edges: run ? [{ edge: 'front upper arris', work: 'moulded', cutter: run.name }] : [],
    inner,
    thickness,
    height,
    ...(fault ? { fault } : {}),
  };
}

/** A plain strip under the frame, its face `recess` behind the frame's. */
export function kickStrip({ sheet, height, recess }: Decisions, { book }: Pick<Bench, 'book'>): Strip {
  const { thickness } = book.item('sheet', sheet);
  return { sheet, section: rectangle(height, thickness), edges: [], inner: -recess - thickness, thickness, height };
}

export interface Ends {
  readonly left: StripEnd;
  readonly right: StripEnd;
}

/** The shorter of a piece's back and face. */
export function shortest({ left, right }: Ends, { thickness }: Strip): number {
  const back = right.x - left.x;
  return Math.min(back, back + thickness * (right.perOut - left.perOut));
}

/** From long point to long point along the run: a mitred end reaches furthest at its face or at its back. */
export const reach = ({ left, right }: Ends, { thickness }: Strip): readonly [number, number] => [
  Math.min(left.x, left.x + left.perOut * thickness),
  Math.max(right.x, right.x + right.perOut * thickness),
];

/** How a strip on the cladding ends where the run does. At a flap too it goes round the end; the flap's jamb stands on it. */
export const howItEnds = (run: RodRun, side: 'left' | 'right', turns: boolean): StripEnd['how'] =>
  run[side].kind === 'corner' ? 'mitred' : turns && run[side].kind === 'free' ? 'returned' : 'square';

type Said = Pick<PartDraft, 'code' | 'name' | 'where' | 'holds' | 'from'>;

/** A piece of the strip, cut to length. `at`: which ends of the run it lies at, where it may meet a neighbour or a wall. */
export function pieceOf(
  run: RodRun,
  strip: Strip,
  ends: Ends,
  at: readonly ('left' | 'right')[],
  said: Said,
): PartDraft {
  const { left, right } = ends;
  const mitred = at.filter((side) => ends[side].how === 'mitred');
  const meets = mitred.length === 2 ? 'both' : mitred[0];
  const oversize = at
    .filter((side) => run[side].scribe > 0)
    .map(
      (side): Oversize => ({
        side: `${side} end`,
        amount: run[side].scribe,
        on: 'length',
        reason: 'scribed to the wall',
      }),
    );
  const stuff = lying(run, strip.section, {
    from: left.x,
    to: right.x,
    fromPerOut: left.perOut,
    toPerOut: right.perOut,
    d: strip.inner,
    z: 0,
  });
  return draftOf(run, strip, said, stuff, meets, oversize.length > 0 ? oversize : undefined);
}

/** The short pieces that turn the free ends of a piece, back to the back of the frame. */
export function returnsOf(run: RodRun, strip: Strip, ends: Ends, depth: number): readonly PartDraft[] {
  return (['left', 'right'] as const)
    .filter((side) => ends[side].how === 'returned')
    .map((side) =>
      draftOf(
        run,
        strip,
        {
          code: 'BR',
          name: 'plinth return',
          where: `${side} end`,
          from: 'finished',
          holds: onSkin(strip.thickness, SMALL),
        },
        returned(run, side, strip.section, { x: ends[side].x, front: strip.inner, back: -depth, z: 0 }),
      ),
    );
}

const draftOf = (
  run: RodRun,
  { sheet, edges }: Strip,
  { code, name, where, holds, from }: Said,
  { shape, place }: Stuff,
  meets?: PartDraft['meets'],
  oversize?: PartDraft['oversize'],
): PartDraft => ({
  kind: 'plinth',
  code,
  name,
  run: run.id,
  material: sheet,
  finish: 'paint',
  from,
  edges,
  grooves: [],
  where,
  holds,
  shape,
  place,
  meets,
  oversize,
});
