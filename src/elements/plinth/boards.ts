import { tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';
import type { PartDraft } from '../../vocabulary/part';
import type { Bench, Made } from '../../vocabulary/room';
import { boardTooShort, jointed, kickTooDeep, longerThanSheet, smallToeSpace } from './findings';
import { ALONG, onSkin, underPlate } from './holds';
import { lengthsOf } from './lengths';
import {
  type Decisions,
  howItEnds,
  kickStrip,
  LEAST_PIECE,
  mouldedOn,
  pieceOf,
  returnsOf,
  type Strip,
  shortest,
} from './strip';

/** A moulded board along the foot of every run, on the cladding; the pillars stand on it. */
export function plain(decisions: Decisions, bench: Bench): Made {
  const strip = mouldedOn(decisions, bench);
  const made = along(strip, bench, {
    code: 'PB',
    name: 'plinth board',
    from: 'finished',
    holds: onSkin(strip.thickness, ALONG),
    turns: decisions.endReturn,
  });
  return strip.fault ? { ...made, findings: [strip.fault, ...made.findings] } : made;
}

/** A board from floor to frame under the bottom plate, set back from its face. */
export function kicked(decisions: Decisions, bench: Bench): Made {
  const { timber } = bench.rod;
  const strip = kickStrip(decisions, bench);
  const most = timber.depth - strip.thickness;
  if (decisions.recess > most) return { drafts: [], findings: [kickTooDeep(decisions.recess, most, timber.depth)] };
  const made = along(strip, bench, {
    code: 'KB',
    name: 'kick board',
    from: 'framed',
    holds: underPlate(timber.face),
    turns: false,
  });
  return { ...made, findings: [...smallToeSpace(decisions), ...made.findings] };
}

type Said = Pick<PartDraft, 'code' | 'name' | 'from' | 'holds'> & { readonly turns: boolean };

/** The strip along every run: mitred at corners, in lengths that end on joins. */
function along(strip: Strip, { rod, book }: Bench, { turns, ...said }: Said): Made {
  const drafts: PartDraft[] = [];
  const findings: Finding[] = [];
  const { length: longest } = book.item('sheet', strip.sheet);
  for (const run of rod.runs.filter((r) => r.sound)) {
    const how = { left: howItEnds(run, 'left', turns), right: howItEnds(run, 'right', turns) };
    const { lengths, joints } = lengthsOf(run, strip, how, longest, rod.timber.datum);
    if (!joints) findings.push(longerThanSheet(said.name, run.id, longest));
    else if (joints.length > 0) findings.push(jointed(said.name, run.id, joints, longest));
    for (const { ends, at } of lengths) {
      const least = shortest(ends, strip);
      if (least < LEAST_PIECE) findings.push(boardTooShort(said.name, run.id, least, LEAST_PIECE));
      // Its returns first: in the elevation what comes later is painted over them.
      else
        drafts.push(
          ...returnsOf(run, strip, ends, rod.timber.depth),
          pieceOf(run, strip, ends, at, { ...said, where: `${tenth(ends.left.x)} to ${tenth(ends.right.x)}` }),
        );
    }
  }
  return { drafts, findings };
}
