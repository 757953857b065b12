import { type AlongBay, alongBay } from '../../base/along-bay';
import { footOf, intoBays, reachBetween } from '../../base/foot';
import { tenth } from '../../base/tenth';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Rod, RodRun } from '../../vocabulary/rod';
import type { Bench } from '../../vocabulary/room';
import { type Rest, restOf } from './bracket';
import { bracketsOf } from './brackets';
import { crossingRails } from './crossings';
import type { fields } from './fields';
import { aboveFoot, crossed, noBracket, noLength, tooHigh, tooNear } from './findings';

export type Decisions = DecisionsOf<typeof fields>;

/** At a free end the rail stops this far short of it, mm (common practice, no source). */
const SHORT_OF_END = 50;

/** Less than this is no rail, mm (common practice, no source). */
const LEAST_RAIL = 100;

/** Less of a bracket than this under the rail splits, mm (common practice, no source). */
const LEAST_UNDER = 20;

/** Where rail and brackets lie: offsets from the frame's face, heights above the floor, mm. */
export interface Profile {
  readonly rest: Rest;
  readonly back: number;
  readonly front: number;
  /** Lower edge of the brackets; lowest line of the rail; upper edge of the brackets. */
  readonly low: number;
  readonly seat: number;
  readonly high: number;
  /** The brackets' back, on the skin. */
  readonly inner: number;
  /** Thickness of the brackets, along the run. */
  readonly thick: number;
  /** How far bases and caps of pillars stand into the bays at the height of the brackets. */
  readonly heads: number;
}

/** The rail of one run, with the places of its brackets' middles. */
export interface RunRail {
  readonly run: RodRun;
  readonly rail: AlongBay;
  readonly brackets: readonly number[];
}

export interface Layout {
  readonly profile: Profile;
  readonly rails: readonly RunRail[];
  readonly findings: readonly Finding[];
}

/** Upper edge of the brackets above the floor, mm: for the heights that other rooms work to. */
export function bracketTop({ height }: Decisions, rest: Rest): number {
  return height - rest.height / 2 + rest.deep;
}

/** Rails and brackets wherever they can be; what can't be is left out and said. */
export function layOut(decisions: Decisions, { rod, book }: Pick<Bench, 'rod' | 'book'>): Layout {
  const profile = profileOf(decisions, { rod, book });
  const wrong = faultOf(profile, rod);
  if (wrong) return { profile, rails: [], findings: [wrong] };
  const findings: Finding[] = [];
  const laid = rod.runs.flatMap((run): RunRail[] => {
    if (!run.sound) return [];
    const rail = railOf(run, profile);
    if (rail.shortest < LEAST_RAIL) {
      findings.push(noLength(run.id, rail.shortest, LEAST_RAIL));
      return [];
    }
    const brackets = bracketsOf(run, rail, profile, decisions.spacing, rod.timber.datum);
    if (brackets.length > 0) return [{ run, rail, brackets }];
    findings.push(noBracket(run.id, profile.thick));
    return [];
  });
  const meeting = crossingRails(rod, profile);
  findings.push(...meeting.map(([a, b]) => crossed(a, b)));
  const out = new Set(meeting.flat());
  return { profile, rails: laid.filter((r) => !out.has(r.run.id)), findings };
}

function profileOf({ moulding, timber, height, out }: Decisions, { rod, book }: Pick<Bench, 'rod' | 'book'>): Profile {
  const rest = restOf(book.item('moulding', moulding).section);
  const { thickness, width } = book.item('timber', timber);
  const back = faceOf(rod) + out - rest.thickness / 2;
  const seat = height - rest.height / 2;
  const high = seat + rest.deep;
  const low = Math.max(footOf(rod), high - width);
  return {
    rest,
    back,
    front: back + rest.thickness,
    low,
    seat,
    high,
    inner: rod.layers.cladding.outer,
    thick: thickness,
    heads: reachBetween(intoBays(rod), low, high),
  };
}

/** What stands out furthest at the front, the top aside. */
const faceOf = ({ layers, top }: Rod): number =>
  Math.max(...Object.values(layers).flatMap((l) => (l.name === top.layer ? [] : [l.outer])));

function faultOf({ rest, back, low, seat, high, inner }: Profile, rod: Rod): Finding | undefined {
  const face = faceOf(rod);
  if (back < face || back < inner) return tooNear(tenth(face - back));
  const most = rod.frameHeight - (rod.heights.underTop ?? 0);
  if (seat + rest.height > most) return tooHigh(seat + rest.height, most);
  if (seat - low < LEAST_UNDER) return aboveFoot(seat - low, LEAST_UNDER, low, seat, high);
  return undefined;
}

/** From wall to wall; mitred at corners; short of a free end. */
function railOf(run: RodRun, { back, front }: Profile): AlongBay {
  const short = (kind: RodRun['left']['kind']): number => (kind === 'free' ? SHORT_OF_END : 0);
  return alongBay(
    run,
    {
      from: short(run.left.kind),
      to: run.length - short(run.right.kind),
      mitredLeft: run.left.kind === 'corner',
      mitredRight: run.right.kind === 'corner',
    },
    { inner: back, outer: front },
  );
}
