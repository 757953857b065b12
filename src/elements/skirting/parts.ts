import { type AlongBay, alongBay } from '../../base/along-bay';
import { runsThrough } from '../../base/foot';
import { level, onFace, placeOf } from '../../base/place';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Finding } from '../../vocabulary/finding';
import type { PlacedOpening } from '../../vocabulary/opening';
import type { PartDraft } from '../../vocabulary/part';
import type { Bay, RodRun } from '../../vocabulary/rod';
import type { Bench, Made } from '../../vocabulary/room';
import { cutBoard, cutInWords, upperEdgeOf } from './board';
import { type Cut, cutsIn, divide, LEAST_LEFT } from './cuts';
import { draft, type Make, stick } from './draft';
import { aboveBlocks, blocksOverlap, byHand, cutInTwo, noLength, pastMitre, skirtingProud } from './findings';

/** Less than this is not worth fixing, mm (common practice, no source). */
const LEAST_PIECE = 20;

/** Blocks that just meet leave no skirting between them: float noise is none, mm. */
const NOISE = 1e-6;

/** Skirting in every bay, between the blocks or to the mitre of a corner without pillar; none where a plinth runs through. */
export function parts({ moulding }: { readonly moulding: string }, { rod, book, openings }: Bench): Made {
  if (runsThrough(rod)) return { drafts: [], findings: [] };
  const { section } = book.item('moulding', moulding);
  const layer = rod.layers.skirting;
  const make = { material: moulding, section, layer, height: rod.heights.skirting };
  const made = rod.runs.flatMap((run) => {
    const mine = openings.filter((o) => o.run === run.id && o.through === 'front');
    return run.bays.map((bay) => inBay(run, bay, make, mine));
  });
  const drafts = made.flatMap((m) => m.drafts);
  const findings = made.flatMap((m) => m.findings);
  const blocks = rod.heights.plinth ?? 0;
  if (drafts.length > 0 && make.height > blocks + SAME_LENGTH) findings.push(aboveBlocks(make.height, blocks));
  const proud = layer.outer - (rod.layers.plinth?.outer ?? layer.outer);
  if (proud > 0) findings.push(skirtingProud(layer.outer - layer.inner, proud));
  return { drafts, findings };
}

function inBay(run: RodRun, bay: Bay, make: Make, openings: readonly PlacedOpening[]): Made {
  const number = bay.index + 1;
  const clear = bay.footTo - bay.footFrom;
  const none = (finding: Finding): Made => ({ drafts: [], findings: [finding] });
  if (!(clear > NOISE)) return none(blocksOverlap(run.id, number, clear));
  const whole = alongBay(run, { ...bay, from: bay.footFrom, to: bay.footTo }, make.layer);
  if (whole.past > SAME_LENGTH) return none(pastMitre(run.id, number, whole.past));
  const least = whole.meets ? LEAST_PIECE : NOISE;
  if (!(whole.shortest > least)) return none(noLength(run.id, number, whole.shortest, least));
  const cuts = cutsIn(openings, { from: whole.from, to: whole.to, height: make.height });
  if (cuts.length === 0) return { drafts: [draft(run, bay, make, stick(run, whole, make), whole.meets)], findings: [] };
  return { ...around(run, bay, make, whole, cuts) };
}

/** The pieces of a bay that openings come through. */
function around(run: RodRun, bay: Bay, make: Make, whole: AlongBay, cuts: readonly Cut[]): Made {
  const number = bay.index + 1;
  const thickness = make.layer.outer - make.layer.inner;
  const { stretches, gaps } = divide(
    {
      from: whole.from,
      to: whole.to,
      clearFrom: whole.from + Math.max(0, whole.fromPerOut * thickness),
      clearTo: whole.to + Math.min(0, whole.toPerOut * thickness),
    },
    cuts,
  );
  const upper = upperEdgeOf(make.section);
  const findings = gaps.map((gap) => cutInTwo(run.id, number, gap, LEAST_LEFT));
  const drafts = stretches.flatMap((stretch, i): PartDraft[] => {
    const first = i === 0;
    const last = i === stretches.length - 1;
    const piece = alongBay(
      run,
      { ...stretch, mitredLeft: first && bay.mitredLeft, mitredRight: last && bay.mitredRight },
      make.layer,
    );
    if (piece.shortest < LEAST_PIECE) return [];
    const left = {
      at: piece.from + Math.min(0, piece.fromPerOut * thickness),
      called: piece.fromPerOut === 0 ? 'the left end' : 'the long point of the left end',
    };
    const sawn = [
      ...(first ? [] : [`stops at the right side of the opening for ${gaps[i - 1].names.join(' and ')}`]),
      ...(last ? [] : [`stops at the left side of the opening for ${gaps[i].names.join(' and ')}`]),
    ];
    if (stretch.cuts.length === 0) return [draft(run, bay, make, stick(run, piece, make), piece.meets, sawn)];
    const board = upper
      ? cutBoard(
          upper,
          {
            length: piece.to - piece.from,
            leftDeg: piece.fromPerOut === 0 ? 0 : run.left.deflectionDeg / 2,
            rightDeg: piece.toPerOut === 0 ? 0 : run.right.deflectionDeg / 2,
          },
          piece.from,
          stretch.cuts,
        )
      : undefined;
    if (!upper || !board) {
      findings.push(
        byHand(
          run.id,
          number,
          stretch.cuts.flatMap((c) => c.names),
          Math.min(...stretch.cuts.map((c) => c.low)),
          make.height,
        ),
      );
      return [draft(run, bay, make, stick(run, piece, make), piece.meets, sawn)];
    }
    const place = placeOf(onFace(run, piece.from, make.layer.inner, 0), level(run.along), level(run.front));
    const work = [...sawn, ...stretch.cuts.map((cut) => cutInWords(cut, left, upper.plainTo))];
    return [draft(run, bay, make, { shape: board, place }, piece.meets, work)];
  });
  return { drafts, findings };
}
