import { pastCorners } from '../../base/place';
import { stripEnd } from '../../base/returned';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Finding } from '../../vocabulary/finding';
import type { PartDraft } from '../../vocabulary/part';
import type { PillarMark, Rod, RodRun } from '../../vocabulary/rod';
import type { Bench, Made } from '../../vocabulary/room';
import { meetInBay, pastMitre, tooShort } from './findings';
import { onSkin, SMALL } from './holds';
import { type Decisions, type Ends, howItEnds, LEAST_PIECE, mouldedOn, pieceOf, returnsOf, shortest } from './strip';

/** Blocks that just meet don't overlap by float noise, mm. */
const NOISE = 1e-6;

/** Blocks under the pillars: moulded as a strip, then cut to length; mitred at corners, and at free ends with a piece that turns the end. */
export function blocks(decisions: Decisions, bench: Pick<Bench, 'rod' | 'book'>): Made {
  const { rod } = bench;
  const strip = mouldedOn(decisions, bench);
  const drafts: PartDraft[] = [];
  const findings: Finding[] = strip.fault ? [strip.fault] : [];
  for (const run of rod.runs) {
    // Where two blocks would meet in a bay too narrow for both, neither is made: which of them must give way is the joiner's to say.
    const tight = run.bays.filter((bay) => bay.footTo < bay.footFrom - NOISE);
    findings.push(...tight.map((bay) => meetInBay(run.id, bay.index + 1, bay.footFrom - bay.footTo)));
    for (const pillar of run.pillars) {
      if (tight.some((bay) => Math.min(Math.abs(bay.to - pillar.from), Math.abs(bay.from - pillar.to)) < SAME_LENGTH))
        continue;
      const ends = endsOfBlock(decisions, rod, run, pillar);
      const least = shortest(ends, strip);
      const past = pillar.where === 'between' ? pastOf(run, ends, rod) : 0;
      if (least < LEAST_PIECE) findings.push(tooShort(run.id, pillar.where, least, LEAST_PIECE));
      else if (past > SAME_LENGTH) findings.push(pastMitre(run.id, pillar.index + 1, past));
      else {
        const mitred = pillar.mitred && pillar.where !== 'between';
        // Its returns first: in the elevation what comes later is painted over them.
        drafts.push(
          ...returnsOf(run, strip, ends, rod.timber.depth),
          pieceOf(run, strip, ends, pillar.where === 'between' ? [] : [pillar.where], {
            code: 'BK',
            name: mitred ? 'corner plinth block' : 'plinth block',
            where: pillar.where === 'between' ? `pillar ${pillar.index + 1}` : `${pillar.where} end`,
            from: 'finished',
            holds: onSkin(strip.thickness, SMALL),
          }),
        );
      }
    }
  }
  return { drafts, findings };
}

/** At a corner a block runs to the mitre of its own layer, not of the pillar's; towards a bay as far as the foot of the pillar. */
export function endsOfBlock({ endReturn }: Decisions, rod: Pick<Rod, 'layers'>, run: RodRun, pillar: PillarMark): Ends {
  const { inner } = rod.layers.plinth;
  return {
    left:
      pillar.where === 'left'
        ? stripEnd(run, 'left', inner, howItEnds(run, 'left', endReturn))
        : { x: pillar.footFrom, perOut: 0, how: 'square' },
    right:
      pillar.where === 'right'
        ? stripEnd(run, 'right', inner, howItEnds(run, 'right', endReturn))
        : { x: pillar.footTo, perOut: 0, how: 'square' },
  };
}

/** A block hard by an inside corner that has no pillar of its own may stand past the corner's mitre. */
const pastOf = (run: RodRun, { left, right }: Ends, { layers }: Pick<Rod, 'layers'>): number =>
  pastCorners(run, { from: left.x, to: right.x, inner: layers.plinth.inner, outer: layers.plinth.outer });
