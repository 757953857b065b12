import { standing } from '../../base/stuff';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Outline } from '../../vocabulary/geometry';
import type { EdgeWork, GrooveWork, PartDraft } from '../../vocabulary/part';
import type { Layer, PillarMark, RodRun } from '../../vocabulary/rod';
import type { Bench, Made } from '../../vocabulary/room';
import type { fields } from './fields';
import { fewerFlutes, noFlutes, noHeight, tooNarrow } from './findings';
import { type Fluting, fewer, flutedFace, fluteWidth, grooves } from './flutes';

type Decisions = DecisionsOf<typeof fields>;

/** A mitred board must have this much back to be glued by, mm (common practice, no source). */
const LEAST_BACK = 10;

/** Boards from plinth block to top; at a corner two of them, mitred along their length. */
export function parts(decisions: Decisions, { rod, book }: Bench): Made {
  const layer = rod.layers.pillar;
  const low = rod.heights.plinth ?? 0;
  if (low >= rod.frameHeight) return { drafts: [], findings: [noHeight(low, rod.frameHeight)] };
  const { width, flutes, fluteMargin, fluteSpacing, fluteDepth, sheet } = decisions;
  const { thickness } = book.item('sheet', sheet);
  const cut = flutes > 0 ? fluteWidth(width, thickness, flutes, fluteMargin, fluteSpacing, fluteDepth) : 0;
  const fluting =
    typeof cut === 'number' && cut > 0
      ? { count: flutes, width: cut, spacing: fluteSpacing, depth: fluteDepth }
      : undefined;
  const findings: Finding[] = typeof cut === 'string' ? [noFlutes(cut)] : [];
  const drafts: PartDraft[] = [];
  const sections = new Map<string, Outline>();
  for (const run of rod.runs)
    for (const pillar of run.pillars) {
      const face = pillar.to - pillar.from;
      const back = face - moreFace(run, pillar, layer);
      if (back < LEAST_BACK) findings.push(tooNarrow(run.id, pillar.where, face, face - back + LEAST_BACK));
      else
        drafts.push(
          board(run, pillar, layer, { low, high: rod.frameHeight, sheet, fluting, margin: fluteMargin, sections }),
        );
    }
  const short = drafts.find((d) => fluting && d.grooves.length < fluting.count);
  if (fluting && short)
    findings.push(fewerFlutes(short.run, decisions.cornerWidth, short.grooves.length, fluting.count));
  return { drafts, findings };
}

/** How much further the face of a corner board reaches than its back at the mitred edge: negative at an inside corner. */
const moreFace = (run: RodRun, { mitred, where }: PillarMark, { inner, outer }: Layer): number =>
  mitred ? run[where === 'left' ? 'left' : 'right'].grows * (outer - inner) : 0;

interface Make {
  readonly low: number;
  readonly high: number;
  readonly sheet: string;
  readonly fluting: Fluting | undefined;
  readonly margin: number;
  /** Sections already drawn: boards alike share one, so that whatever is worked out from it is worked out once. */
  readonly sections: Map<string, Outline>;
}

function board(
  run: RodRun,
  pillar: PillarMark,
  layer: Layer,
  { low, high, sheet, fluting, margin, sections }: Make,
): PartDraft {
  const grows = pillar.mitred ? (pillar.where === 'left' ? run.left : run.right) : undefined;
  const more = moreFace(run, pillar, layer);
  const leftMore = pillar.where === 'left' ? more : 0;
  const rightMore = pillar.where === 'right' ? more : 0;
  const face = pillar.to - pillar.from;
  const cut = fluting ? fewer(face, pillar.mitred ? Math.min(margin, face / 4) : margin, fluting) : undefined;
  const flutes = cut ? grooves(face, cut) : [];
  const key = [face, leftMore, rightMore].map((mm) => mm.toFixed(6)).join(' ');
  const drawn = sections.get(key) ?? section(face, layer.outer - layer.inner, leftMore, rightMore, flutes);
  sections.set(key, drawn);
  return {
    kind: 'pillar',
    code: 'PI',
    name: grows ? 'corner pillar board' : 'pillar board',
    run: run.id,
    material: sheet,
    finish: 'paint',
    from: 'finished',
    where: pillar.where === 'between' ? `pillar ${pillar.index + 1}` : `${pillar.where} end`,
    edges: grows && more !== 0 ? [bevelled(pillar.where, grows.deflectionDeg, face - more)] : [],
    grooves: flutes,
    ...standing(run, drawn, {
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

const bevelled = (side: string, deflectionDeg: number, backWidth: number): EdgeWork => ({
  edge: `${side} long edge`,
  work: 'bevelled',
  angleDeg: Math.abs(deflectionDeg) / 2,
  longSide: deflectionDeg > 0 ? 'face' : 'back',
  backWidth,
});
