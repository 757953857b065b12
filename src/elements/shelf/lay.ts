import { SAME_LENGTH } from '../../base/tolerance';
import type { BackBay, Carcass } from '../../vocabulary/carcass';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { BayWish } from '../../vocabulary/job';
import type { RodRun } from '../../vocabulary/rod';
import type { Bench } from '../../vocabulary/room';
import type { fields } from './fields';
import { holesRunTogether, noHoles, offHoles, tooClose, tooLarge, tooSmall } from './findings';
import { equalGap, equalUndersides, type HoleRow, holeRow, mostShelves, pinnedUndersides } from './heights';

export type Decisions = DecisionsOf<typeof fields>;

/**
 * A loose shelf is short of each lining by this, mm: it lifts out and still lies on all four supports (common practice is 1 to 2 mm in all;
 * no source).
 */
const LOOSE_END = 0.4;

/** A shelf shorter or shallower than this is none, mm (common practice, no source). */
const LEAST_SHELF = 100;

/** Shelves that can be made in one bay. `undersides` above the floor; a board from `from` to `to` and `back` to `front`. */
export interface Laid {
  readonly run: RodRun;
  readonly bay: BackBay;
  readonly carcass: Carcass;
  readonly support: BayWish['shelves'];
  readonly undersides: readonly number[];
  readonly thickness: number;
  /** The clear height. */
  readonly low: number;
  readonly high: number;
  readonly from: number;
  readonly to: number;
  readonly back: number;
  readonly front: number;
  readonly holes?: HoleRow;
}

/** Works out the shelves of every bay that wants them; where they can't be made a finding says so, with the nearest that can. */
export function layShelves(
  decisions: Decisions,
  { rod, book }: Pick<Bench, 'rod' | 'book'>,
): { readonly laid: readonly Laid[]; readonly findings: readonly Finding[] } {
  const laid: Laid[] = [];
  const findings: Finding[] = [];
  for (const run of rod.runs) {
    for (const bay of run.backBays) {
      if (bay.wish?.purpose !== 'shelves' || !rod.carcass) continue;
      const made = layOne(decisions, book, rod.carcass, run, bay, bay.wish);
      if ('rule' in made) findings.push(made);
      else laid.push(made);
    }
  }
  return { laid, findings };
}

function layOne(
  decisions: Decisions,
  book: Bench['book'],
  carcass: Carcass,
  run: RodRun,
  bay: BackBay,
  { count, shelves: support }: BayWish,
): Laid | Finding {
  const sheet = book.item('sheet', decisions.sheet);
  const bearer = book.item('timber', decisions.bearer);
  const side = book.item('sheet', decisions.lining);
  const fixed = support === 'fixed';
  const end = fixed ? decisions.clearance / 2 : side.thickness + LOOSE_END;
  const [from, to] = [bay.from + end, bay.to - end];
  const [back, front] = [carcass.back, carcass.front - (fixed ? decisions.clearance / 2 : LOOSE_END)];
  const { thickness } = sheet;
  const [low, high] = clearOf(bay, carcass);
  const clear = high - low;
  const least = Math.max(decisions.least, fixed ? bearer.width : 0);
  const gap = equalGap(clear, count, thickness);
  // Bearers take a third of the width at most; the rows of a lining must not meet in its middle.
  const wide = fixed ? Math.max(LEAST_SHELF, 3 * bearer.thickness) : LEAST_SHELF;
  const deep = Math.max(LEAST_SHELF, fixed ? 2 * bearer.thickness : 2 * decisions.rows + decisions.hole);
  if (to - from < wide) return tooSmall(run, bay, 'width', to - from, wide);
  if (front - back < deep) return tooSmall(run, bay, 'depth', front - back, deep);
  if (gap < least - SAME_LENGTH)
    return tooClose(run, bay, { clear, count, gap, least, most: mostShelves(clear, thickness, least) });
  const boards = [
    { what: 'shelf', size: [to - from, front - back], from: sheet },
    ...(fixed
      ? []
      : [
          { what: 'side lining', size: [topOf(carcass) - lowestOf(carcass), carcass.front - carcass.back], from: side },
        ]),
  ] as const;
  const large = boards.find(({ size, from: s }) => Math.max(...size) > s.length || Math.min(...size) > s.width);
  if (large) return tooLarge(run, bay, large.what, large.size, large.from);
  const place = { run, bay, carcass, support, thickness, low, high, from, to, back, front };
  const equal = equalUndersides(clear, count, thickness);
  if (support !== 'holes') return { ...place, undersides: equal.map((u) => low + u) };
  const holes = holeRow(clear, decisions.pitch, decisions.margin);
  if (decisions.hole >= decisions.pitch) return holesRunTogether(run, decisions.hole, decisions.pitch);
  if (holes.count === 0) return noHoles(run, bay, clear, decisions.margin);
  const pinned = pinnedUndersides(holes, equal, { height: clear, thickness, hole: decisions.hole });
  return pinned ? { ...place, holes, undersides: pinned.map((u) => low + u) } : offHoles(run, bay, count, holes);
}

/** Linings stay this far off the floor, mm: they need no scribing, and take up no water (common practice, no source). */
const OFF_FLOOR = 10;

/** Where linings begin: at the underside of the bottom rails, off the floor. */
export const lowestOf = ({ low }: Carcass): number => Math.max(low, OFF_FLOOR);

/** Underside of what lies on the cross frames: the worktop, or the top. */
export const topOf = ({ worktop, high }: Carcass): number => (worktop ? worktop.high - worktop.thickness : high);

/**
 * Clear height for shelves. Where no rail runs along the bottom it begins at the underside of the rails from front to back: below there is
 * nothing to fix to. A worktop's bearer on the front frame hangs as low as a rail.
 */
const clearOf = (bay: BackBay, carcass: Carcass): readonly [number, number] => [
  Math.max(bay.low, lowestOf(carcass)),
  carcass.worktop ? Math.min(bay.high, topOf(carcass) - carcass.depth) : bay.high,
];
