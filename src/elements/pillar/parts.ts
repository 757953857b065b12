import { pastCorners } from '../../base/place';
import { SAME_LENGTH } from '../../base/tolerance';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Outline } from '../../vocabulary/geometry';
import type { PartDraft } from '../../vocabulary/part';
import type { Bench, Made } from '../../vocabulary/room';
import { board, moreFace } from './board';
import type { fields } from './fields';
import { fewerFlutes, lessMargin, noFlutes, noHeight, noRoomForStops, pastMitre, tooNarrow } from './findings';
import { canStop, fluteWidth } from './flutes';
import { basesAndCaps, narrowBay } from './heads';
import { makerOf } from './piece-parts';

type Decisions = DecisionsOf<typeof fields>;

/** A mitred board must have this much back to be glued by, mm (common practice, no source). */
const LEAST_BACK = 10;

/** Boards from plinth block, or base, to cap or top; at a corner two of them, mitred along their length. */
export function parts(decisions: Decisions, bench: Bench): Made {
  const { rod, book } = bench;
  const layer = rod.layers.pillar;
  const low = rod.heights.plinth ?? 0;
  if (low >= rod.frameHeight) return { drafts: [], findings: [noHeight(low, rod.frameHeight)] };
  const { width, flutes, fluteMargin, fluteSpacing, fluteDepth, sheet } = decisions;
  const { thickness } = book.item('sheet', sheet);
  const cut = flutes > 0 ? fluteWidth(width, thickness, flutes, fluteMargin, fluteSpacing, fluteDepth) : 0;
  const findings: Finding[] = typeof cut === 'string' ? [noFlutes(cut)] : [];
  const heads = basesAndCaps(decisions, bench, low);
  findings.push(...heads.findings);
  const stop = decisions.fluteEnds === 'stopped' ? decisions.fluteStop : 0;
  const fluting =
    typeof cut === 'number' && cut > 0
      ? { count: flutes, width: cut, spacing: fluteSpacing, depth: fluteDepth, stop }
      : undefined;
  const makers = [heads.base, heads.cap].flatMap((piece) => (piece ? [{ piece, maker: makerOf(piece, bench) }] : []));
  findings.push(...makers.flatMap(({ maker }) => maker.findings));
  const drafts: PartDraft[] = [];
  const sections = new Map<string, Outline>();
  const stoppedAway: number[] = [];
  const fewest: PartDraft[] = [];
  const margins: number[] = [];
  for (const run of rod.runs) {
    const here = makers.flatMap((made) => {
      const tight = narrowBay(run, made.piece);
      if (tight) findings.push(tight);
      return tight ? [] : [made];
    });
    for (const pillar of run.pillars) {
      const face = pillar.to - pillar.from;
      const back = face - moreFace(run, pillar, layer);
      const past =
        pillar.where === 'between'
          ? pastCorners(run, { from: pillar.from, to: pillar.to, inner: layer.inner, outer: layer.outer })
          : 0;
      if (back < LEAST_BACK) findings.push(tooNarrow(run.id, pillar.where, face, face - back + LEAST_BACK));
      else if (past > SAME_LENGTH) findings.push(pastMitre(run.id, pillar.index + 1, past));
      else {
        const at = { low, high: rod.frameHeight };
        const trim: PartDraft[] = [];
        for (const { piece, maker } of here) {
          const made = maker.of(run, pillar);
          findings.push(...made.findings);
          trim.push(...made.drafts);
          if (made.drafts.length === 0) continue;
          if (piece.which === 'base') at.low = piece.high;
          else at.high = piece.low;
        }
        const stopped = fluting !== undefined && !canStop(at.high - at.low, fluting);
        if (stopped) stoppedAway.push(at.high - at.low);
        const made = board(run, pillar, layer, {
          ...at,
          sheet,
          fluting: stopped ? undefined : fluting,
          margin: fluteMargin,
          sections,
        });
        if (fluting && !stopped && made.grooves.length < fluting.count) fewest.push(made);
        drafts.push(made, ...trim);
        if (pillar.mitred) margins.push(marginOf(face, made));
      }
    }
  }
  if (fluting && stoppedAway.length > 0)
    findings.push(noRoomForStops(Math.min(...stoppedAway), 2 * fluting.stop + fluting.width));
  if (fluting && fewest.length > 0)
    findings.push(fewerFlutes(fewest[0].run, decisions.cornerWidth, fewest[0].grooves.length, fluting.count));
  const least = Math.min(...margins);
  if (least < fluteMargin - SAME_LENGTH) findings.push(lessMargin(least, fluteMargin));
  return { drafts, findings };
}

/** What a board keeps plain beside its outermost flutes; without flutes there is no end to it. */
const marginOf = (face: number, { grooves: [first] }: PartDraft): number =>
  first ? Math.min(face / 2, first.centre - first.width / 2) : Infinity;
