import { standing } from '../../base/stuff';
import { tenth } from '../../base/tenth';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Outline } from '../../vocabulary/geometry';
import type { EdgeWork, GrooveWork, PartDraft } from '../../vocabulary/part';
import type { Layer, PillarMark, RodRun } from '../../vocabulary/rod';
import type { Bench, Made } from '../../vocabulary/room';
import type { fields } from './fields';
import { type Fluting, fewer, flutedFace, fluteWidth, grooves } from './flutes';

type Decisions = DecisionsOf<typeof fields>;

/** A mitred board must have this much back to be glued by, mm (common practice, no source). */
const LEAST_BACK = 10;

/** Boards from plinth block to top; at a corner two of them, mitred along their length. */
export function parts(decisions: Decisions, { rod, book }: Bench): Made {
  const layer = rod.layers.pillar;
  const low = rod.heights.plinth ?? 0;
  const path = '/unit/elements/pillar';
  if (low >= rod.frameHeight) {
    return {
      drafts: [],
      findings: [
        stop(
          `${path}`,
          'pillar-no-height',
          `Pillars have no height: the blocks reach ${low} mm and the top begins at ${rod.frameHeight} mm.`,
          'Lower the plinth blocks or raise the unit.',
          low,
          rod.frameHeight,
        ),
      ],
    };
  }
  const { width, flutes, fluteMargin, fluteSpacing, fluteDepth, sheet } = decisions;
  const found =
    flutes > 0
      ? fluteWidth(width, book.item('sheet', sheet).thickness, flutes, fluteMargin, fluteSpacing, fluteDepth)
      : 'none';
  const fluting =
    typeof found === 'number' ? { count: flutes, width: found, spacing: fluteSpacing, depth: fluteDepth } : undefined;
  const findings =
    flutes > 0 && typeof found === 'string'
      ? [
          stop(
            `${path}/flutes`,
            'flutes-do-not-fit',
            `Flutes can't be run: ${found}.`,
            'Fewer or shallower flutes, or less margin. The pillars are drawn plain.',
          ),
        ]
      : [];
  const drafts: PartDraft[] = [];
  for (const run of rod.runs)
    for (const pillar of run.pillars) {
      const short = tooNarrow(run, pillar, layer);
      if (short) findings.push(short);
      else drafts.push(board(run, pillar, layer, { low, high: rod.frameHeight, sheet, fluting, margin: fluteMargin }));
    }
  return { drafts, findings };
}

/** How much further the face of a corner board reaches than its back at the mitred edge: negative at an inside corner. */
const moreFace = (run: RodRun, { mitred, where }: PillarMark, { inner, outer }: Layer): number =>
  mitred ? run[where === 'left' ? 'left' : 'right'].grows * (outer - inner) : 0;

/** At a sharp corner the mitre may take more than the whole board. */
function tooNarrow(run: RodRun, pillar: PillarMark, layer: Layer): Finding | undefined {
  const back = pillar.to - pillar.from - moreFace(run, pillar, layer);
  if (back >= LEAST_BACK) return undefined;
  const need = pillar.to - pillar.from - back + LEAST_BACK;
  return {
    ...stop(
      '/unit/elements/pillar/cornerWidth',
      'corner-board-too-narrow',
      `The corner board at the ${pillar.where} end of run ${run.id} shows ${tenth(pillar.to - pillar.from)} mm; its mitre alone needs ${Math.ceil(need)} mm.`,
      'Widen the corner boards, use thinner stuff, or turn the corner less. The board is left out.',
      pillar.to - pillar.from,
      need,
    ),
    subject: { run: run.id, path: '/unit/elements/pillar/cornerWidth' },
  };
}

interface Make {
  readonly low: number;
  readonly high: number;
  readonly sheet: string;
  readonly fluting: Fluting | undefined;
  readonly margin: number;
}

function board(run: RodRun, pillar: PillarMark, layer: Layer, { low, high, sheet, fluting, margin }: Make): PartDraft {
  const grows = pillar.mitred ? (pillar.where === 'left' ? run.left : run.right) : undefined;
  const more = moreFace(run, pillar, layer);
  const leftMore = pillar.where === 'left' ? more : 0;
  const rightMore = pillar.where === 'right' ? more : 0;
  const face = pillar.to - pillar.from;
  const cut = fluting ? fewer(face, pillar.mitred ? Math.min(margin, face / 4) : margin, fluting) : undefined;
  const flutes = cut ? grooves(face, cut) : [];
  return {
    kind: 'pillar',
    code: 'PI',
    name: grows ? 'corner pillar board' : 'pillar board',
    run: run.id,
    material: sheet,
    finish: 'paint',
    from: 'finished',
    where: pillar.where === 'between' ? `pillar ${pillar.index + 1}` : `${pillar.where} end`,
    edges: grows && grows.grows !== 0 ? [bevelled(pillar.where, grows.deflectionDeg)] : [],
    grooves: flutes,
    ...standing(run, section(face, layer.outer - layer.inner, leftMore, rightMore, flutes), {
      x: pillar.to,
      d: layer.inner,
      low,
      high,
    }),
  };
}

/** u from the right edge of the visible face to the left, v out of the board. */
function section(
  face: number,
  thickness: number,
  leftMore: number,
  rightMore: number,
  cut: readonly GrooveWork[],
): Outline {
  return {
    start: [rightMore, 0],
    segments: [
      { to: [face - leftMore, 0] },
      { to: [face, thickness] },
      ...flutedFace(face, thickness, cut),
      { to: [0, thickness] },
      { to: [rightMore, 0] },
    ],
  };
}

const bevelled = (side: string, deflectionDeg: number): EdgeWork => ({
  edge: `${side} long edge`,
  work: 'bevelled',
  angleDeg: Math.abs(deflectionDeg) / 2,
});

const stop = (
  path: string,
  rule: string,
  message: string,
  remedy: string,
  value?: number,
  limit?: number,
): Finding => ({
  severity: 'stop',
  rule,
  subject: { path },
  message,
  remedy,
  value,
  limit,
  source: 'geometry of the board',
});
