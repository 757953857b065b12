import { standing } from '../../base/stuff';
import type { Outline } from '../../vocabulary/geometry';
import type { EdgeWork, GrooveWork, PartDraft } from '../../vocabulary/part';
import type { Layer, PillarMark, RodRun } from '../../vocabulary/rod';
import { type Fluting, fewer, flutedFace, grooves } from './flutes';
import { ALONG, onSkin } from './holds';

/** How much further the face of a corner board reaches than its back at the mitred edge: negative at an inside corner. */
export const moreFace = (run: RodRun, { mitred, where }: PillarMark, { inner, outer }: Layer): number =>
  mitred ? run[where === 'left' ? 'left' : 'right'].grows * (outer - inner) : 0;

export interface Make {
  readonly low: number;
  readonly high: number;
  readonly sheet: string;
  readonly fluting: Fluting | undefined;
  readonly margin: number;
  /** Sections already drawn: boards alike share one, so that whatever is worked out from it is worked out once. */
  readonly sections: Map<string, Outline>;
}

/** One board, its flutes centred on the face that is seen. */
export function board(
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
  // A narrow corner board keeps less beside its flutes, or it would have none; that is said.
  const cut = fluting ? fewer(face, pillar.mitred ? Math.min(margin, face / 4) : margin, fluting) : undefined;
  const flutes = cut ? grooves(face, cut) : [];
  const key = [face, leftMore, rightMore].map((mm) => mm.toFixed(6)).join(' ');
  const drawn = sections.get(key) ?? section(face, layer.outer - layer.inner, leftMore, rightMore, flutes);
  sections.set(key, drawn);
  const stuff = standing(run, drawn, { x: pillar.to, d: layer.inner, low, high });
  const stop = cut?.stop ?? 0;
  const scribed = pillar.where === 'between' ? 0 : run[pillar.where].scribe;
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
    meets: grows && pillar.where !== 'between' ? pillar.where : undefined,
    holds: onSkin(layer.outer - layer.inner, ALONG),
    oversize:
      scribed > 0
        ? [{ side: `${pillar.where} long edge`, amount: scribed, on: 'width', reason: 'scribed to the wall' }]
        : undefined,
    place: stuff.place,
    shape: stop > 0 ? { ...stuff.shape, stopped: { from: stop, to: high - low - stop } } : stuff.shape,
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
