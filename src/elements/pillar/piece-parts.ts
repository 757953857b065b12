import { leavesStuff, reachOf } from '../../base/edge-path';
import { pastCorners } from '../../base/place';
import { mouldedSection } from '../../base/profiles';
import { returned } from '../../base/returned';
import { lying } from '../../base/stuff';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Finding } from '../../vocabulary/finding';
import type { Outline } from '../../vocabulary/geometry';
import type { EdgeWork, PartDraft } from '../../vocabulary/part';
import type { PillarMark, RodRun } from '../../vocabulary/rod';
import type { Bench, Made } from '../../vocabulary/room';
import { onSkin, SMALL } from './holds';
import { cutterTooBig, pastMitre, tooShort } from './piece-findings';
import { type Ends, endsOf, LEAST_PIECE, type PieceAt } from './pieces';

/** How bases, or caps, are made: what is wrong with all of them, and those of one pillar, with the pieces that turn free ends. */
export interface Maker {
  readonly findings: readonly Finding[];
  of(run: RodRun, pillar: PillarMark): Made;
}

export function makerOf(piece: PieceAt, { rod, book }: Pick<Bench, 'rod' | 'book'>): Maker {
  const { inner } = rod.layers.pillar;
  const { which, thickness, low, high } = piece;
  const mould = piece.cutter ? book.cutter(piece.cutter) : undefined;
  const reach = mould ? reachOf(mould) : { height: 0, depth: 0 };
  const run = mould && leavesStuff(reach, high - low, thickness) ? mould : undefined;
  const arrises = run ? { [which === 'base' ? 'upper' : 'lower']: run } : {};
  const make: Make = {
    piece,
    inner,
    back: -rod.timber.depth,
    section: mouldedSection(high - low, thickness, arrises),
    edges: run
      ? [{ edge: which === 'base' ? 'front upper arris' : 'front lower arris', work: 'moulded', cutter: run.name }]
      : [],
  };
  return {
    findings: mould && !run ? [cutterTooBig(which, reach, high - low, thickness)] : [],
    of(run, pillar) {
      const ends = endsOf(run, pillar, piece, rod);
      const back = ends.right.x - ends.left.x;
      const least = Math.min(back, back + thickness * (ends.right.perOut - ends.left.perOut));
      if (least < LEAST_PIECE) return { drafts: [], findings: [tooShort(which, run.id, pillar, least, LEAST_PIECE)] };
      const past =
        pillar.where === 'between'
          ? pastCorners(run, { from: ends.left.x, to: ends.right.x, inner, outer: inner + thickness })
          : 0;
      if (past > SAME_LENGTH) return { drafts: [], findings: [pastMitre(which, run.id, pillar, past)] };
      return { drafts: drawn(run, pillar, ends, make), findings: [] };
    },
  };
}

interface Make {
  readonly piece: PieceAt;
  readonly section: Outline;
  readonly edges: readonly EdgeWork[];
  readonly inner: number;
  /** How far a piece that turns an end runs back. */
  readonly back: number;
}

function drawn(
  run: RodRun,
  pillar: PillarMark,
  { left, right }: Ends,
  { piece: { which, sheet, thickness, low }, section, edges, inner, back }: Make,
): readonly PartDraft[] {
  const mitred = left.how === 'mitred' || right.how === 'mitred';
  const scribed = pillar.where === 'between' ? 0 : run[pillar.where].scribe;
  const common = {
    kind: 'pillar',
    run: run.id,
    material: sheet,
    finish: 'paint',
    from: 'finished',
    edges,
    grooves: [],
    where: pillar.where === 'between' ? `pillar ${pillar.index + 1}` : `${pillar.where} end`,
    holds: onSkin(thickness, SMALL),
  } as const;
  const main: PartDraft = {
    ...common,
    code: which === 'base' ? 'PS' : 'PC',
    name: `${mitred ? 'corner ' : ''}pillar ${which}`,
    ...(mitred && pillar.where !== 'between' ? { meets: pillar.where } : {}),
    ...(scribed > 0
      ? { oversize: [{ side: `${pillar.where} end`, amount: scribed, on: 'length', reason: 'scribed to the wall' }] }
      : {}),
    ...lying(run, section, {
      from: left.x,
      to: right.x,
      fromPerOut: left.perOut,
      toPerOut: right.perOut,
      d: inner,
      z: low,
    }),
  };
  const turned = (['left', 'right'] as const)
    .filter((side) => ({ left, right })[side].how === 'returned')
    .map(
      (side): PartDraft => ({
        ...common,
        code: 'PR',
        name: `pillar ${which} return`,
        ...returned(run, side, section, { x: side === 'left' ? left.x : right.x, front: inner, back, z: low }),
      }),
    );
  // In the elevation what comes later is painted over what comes before.
  return [...turned, main];
}
