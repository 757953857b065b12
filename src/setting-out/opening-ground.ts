import { CLEAR_OF_HOLE, LEAST_BETWEEN, LEAST_TO_EDGE } from '../base/tolerance';
import type { Obstacle } from '../vocabulary/opening';
import type { Rod, RodRun } from '../vocabulary/rod';
import { topEndLine } from './top-ends';

/**
 * Where an opening must not reach, as an upright rectangle: x along the run; z above the floor, in the top back from its front edge. It is
 * `clear` larger, all round, than the thing itself (0 where not said).
 */
export interface Block {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  /** In words. */
  readonly what: string;
  readonly clear?: number;
}

/** The front or the top of one run, with all that stands in the way of an opening. */
export interface Ground {
  readonly blocks: readonly Block[];
  /** From where to where an opening that reaches from `low` to `high` keeps clear of the ends of the run. */
  ends(low: number, high: number): readonly [number, number];
}

/** A thing with what is kept clear of it. */
function kept({ from, to, low, high, what, clear = 0 }: Thing): Block {
  return { from: from - clear, to: to + clear, low: low - clear, high: high + clear, what, clear };
}

/** A thing as it stands, and how far openings stay from it. */
type Thing = Omit<Obstacle, 'run' | 'through'>;

/** An opening that has its place, as others see it: with the web that must be left round it. */
export const withWeb = (box: Omit<Block, 'what' | 'clear'>, what: string): Block =>
  kept({ ...box, what, clear: LEAST_BETWEEN });

/** All that is in the way in one run: what the rooms say, the frame's timbers that can't move, the ends. */
export function groundOf(rod: Rod, run: RodRun, through: Obstacle['through'], obstacles: readonly Obstacle[]): Ground {
  const theirs = obstacles.filter((o) => o.run === run.id && o.through === through);
  const things = [...theirs, ...(through === 'front' ? timbers(rod, run) : edgesOfTop(rod))];
  const blocks = things.map(kept);
  return through === 'front'
    ? { blocks, ends: () => clearOfEnds(rod, run) }
    : { blocks, ends: (low, high) => insideTop(rod, run, low, high) };
}

const ALL_ALONG = { from: -Infinity, to: Infinity };
const ALL_UP = { low: -Infinity, high: Infinity };

/** A stud whose middle lies at x. */
export const aboutStud = (x: number, face: number, what: string): Thing => ({
  from: x - face / 2,
  to: x + face / 2,
  low: -Infinity,
  high: Infinity,
  what,
  clear: CLEAR_OF_HOLE,
});

/** The plates, the studs of each join, every pillar and the studs behind it, those of cross frames. Other studs and the noggins give way. */
function timbers({ timber, frameLow, frameHeight }: Rod, run: RodRun): readonly Thing[] {
  const { face } = timber;
  const clear = CLEAR_OF_HOLE;
  return [
    { ...ALL_ALONG, low: -Infinity, high: frameLow + face, what: 'the bottom plate', clear },
    { ...ALL_ALONG, low: frameHeight - face, high: Infinity, what: 'the top plate', clear },
    ...run.joins.flatMap(({ id, x, coverFrom, coverTo }): Thing[] => [
      { ...ALL_UP, from: x - face, to: x + face, what: `join ${id} with its two studs`, clear },
      { ...ALL_UP, from: coverFrom, to: coverTo, what: `what covers join ${id}` },
    ]),
    ...run.crossLines.map(({ from, to }, i) => aboutStud((from + to) / 2, face, `the stud of cross frame ${i + 1}`)),
    ...run.pillars.flatMap(({ index, where, from, to, centre }): Thing[] => {
      const pillar = { ...ALL_UP, from, to, what: `pillar ${index + 1}` };
      // At an end of the run its studs stand behind its edges.
      if (where !== 'between') return [{ ...pillar, clear }];
      return [pillar, aboutStud(centre, face, `the stud behind pillar ${index + 1}`)];
    }),
  ];
}

/** Clear of the studs at both ends. Where the frame runs on past a corner, the skin's edge asks for a stud of its own. */
function clearOfEnds({ timber: { face } }: Rod, run: RodRun): readonly [number, number] {
  const past = (short: number): number => (short >= 0 ? short : Math.max(0, short + face)) + face + CLEAR_OF_HOLE;
  return [past(run.left.frameAt), run.length - past(run.length - run.right.frameAt)];
}

/** The top's front and back edges, and the plate that it lies on. Where it ends is `insideTop`. */
function edgesOfTop({ depth, top: { overhang }, timber }: Rod): readonly Thing[] {
  const clear = LEAST_TO_EDGE;
  return [
    { ...ALL_ALONG, low: -Infinity, high: 0, what: 'the front edge of the top', clear },
    { ...ALL_ALONG, low: depth, high: Infinity, what: 'the back edge of the top', clear },
    {
      ...ALL_ALONG,
      low: overhang,
      high: overhang + timber.depth,
      what: 'the top plate of the frame below',
      clear: CLEAR_OF_HOLE,
    },
  ];
}

/** Clear of the top's ends, measured square to them: mitred or butted, whatever reaches from `low` to `high` back from the front edge. */
function insideTop({ top, depth }: Rod, run: RodRun, low: number, high: number): readonly [number, number] {
  const beyond = (side: 'left' | 'right'): number => {
    const { at, perOut } = topEndLine(run[side], { ...top, depth });
    const least = Math.min(...[low, high].map((back) => at + perOut * (top.overhang - back)));
    return least - LEAST_TO_EDGE * Math.hypot(1, perOut);
  };
  return [-beyond('left'), run.length + beyond('right')];
}
