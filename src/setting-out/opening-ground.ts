import { CLEAR_OF_HOLE } from '../base/tolerance';
import type { Obstacle } from '../vocabulary/opening';
import type { Rod, RodRun, RunEnd } from '../vocabulary/rod';

/** Something that an opening must not meet, as an upright rectangle: x along the run; z above the floor, in the top back from its front edge. */
export interface Block {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  /** In words. */
  readonly what: string;
}

/** The front or the top of one run, with all that stands in the way of an opening. */
export interface Ground {
  readonly blocks: readonly Block[];
  /** From where to where an opening that reaches from `low` to `high` keeps clear of the ends of the run. */
  ends(low: number, high: number): readonly [number, number];
}

/** An opening through the top stays this far from its edges, mm (common practice, no source). */
const LEAST_TO_EDGE = 50;

/** Between two openings at least this much stays of the sheet, or it breaks out, mm (common practice, no source). */
const LEAST_BETWEEN = 20;

/** An opening that has its place, as others see it: with the web that must be left round it. */
export const withWeb = (box: Omit<Block, 'what'>, what: string): Block => ({
  from: box.from - LEAST_BETWEEN,
  to: box.to + LEAST_BETWEEN,
  low: box.low - LEAST_BETWEEN,
  high: box.high + LEAST_BETWEEN,
  what,
});

/** All that is in the way in one run: what the rooms say, the frame's timbers that can't move, the ends. */
export function groundOf(rod: Rod, run: RodRun, through: Obstacle['through'], obstacles: readonly Obstacle[]): Ground {
  const theirs = obstacles.filter((o) => o.run === run.id && o.through === through);
  return through === 'front'
    ? { blocks: [...theirs, ...timbers(rod, run)], ends: () => clearOfEnds(rod, run) }
    : { blocks: [...theirs, ...edgesOfTop(rod)], ends: (low, high) => insideTop(rod, run, low, high) };
}

const ALL_ALONG = { from: -Infinity, to: Infinity };
const ALL_UP = { low: -Infinity, high: Infinity };

/** A stud whose middle lies at x, with what is kept clear of it. */
export const aboutStud = (x: number, face: number, what: string): Block => {
  const reach = face / 2 + CLEAR_OF_HOLE;
  return { from: x - reach, to: x + reach, ...ALL_UP, what };
};

/** The plates, the studs of each join, every pillar and the studs behind it, those of cross frames. Other studs and the noggins give way. */
function timbers({ timber, frameLow, frameHeight }: Rod, run: RodRun): readonly Block[] {
  const { face } = timber;
  return [
    { ...ALL_ALONG, low: -Infinity, high: frameLow + face + CLEAR_OF_HOLE, what: 'the bottom plate' },
    { ...ALL_ALONG, low: frameHeight - face - CLEAR_OF_HOLE, high: Infinity, what: 'the top plate' },
    ...run.joins.map(({ id, x, coverFrom, coverTo }) => ({
      ...ALL_UP,
      from: Math.min(coverFrom, x - face - CLEAR_OF_HOLE),
      to: Math.max(coverTo, x + face + CLEAR_OF_HOLE),
      what: `join ${id} with its two studs`,
    })),
    ...run.crossLines.map(({ from, to }, i) => aboutStud((from + to) / 2, face, `the stud of cross frame ${i + 1}`)),
    ...run.pillars.map(({ index, where, from, to, centre }) => {
      const [left, right] = where === 'between' ? [centre - face / 2, centre + face / 2] : [from, to];
      return {
        ...ALL_UP,
        from: Math.min(from, left - CLEAR_OF_HOLE),
        to: Math.max(to, right + CLEAR_OF_HOLE),
        what: `pillar ${index + 1}`,
      };
    }),
  ];
}

/** Clear of the studs at both ends. Where the frame runs on past a corner, the skin's edge asks for a stud of its own. */
function clearOfEnds({ timber: { face } }: Rod, run: RodRun): readonly [number, number] {
  const past = (short: number): number => (short >= 0 ? short : Math.max(0, short + face)) + face + CLEAR_OF_HOLE;
  return [past(run.left.frameAt), run.length - past(run.length - run.right.frameAt)];
}

/** The top's front and back edges, and the plate that it lies on. Where it ends is `insideTop`. */
function edgesOfTop({ depth, top: { overhang }, timber }: Rod): readonly Block[] {
  return [
    { ...ALL_ALONG, low: -Infinity, high: LEAST_TO_EDGE, what: 'the front edge of the top' },
    { ...ALL_ALONG, low: depth - LEAST_TO_EDGE, high: Infinity, what: 'the back edge of the top' },
    {
      ...ALL_ALONG,
      low: overhang - CLEAR_OF_HOLE,
      high: overhang + timber.depth + CLEAR_OF_HOLE,
      what: 'the top plate of the frame below',
    },
  ];
}

/** Clear of the top's ends as the mitre has them; a top that is cut otherwise is its own room's to judge. */
function insideTop({ top }: Rod, run: RodRun, low: number, high: number): readonly [number, number] {
  const beyond = (end: RunEnd): number => {
    if (end.kind !== 'corner' || end.toReturn) return end.topBeyond - LEAST_TO_EDGE;
    const least = Math.min(...[low, high].map((back) => end.grows * (top.overhang - back)));
    return least - LEAST_TO_EDGE * Math.hypot(1, end.grows);
  };
  return [-beyond(run.left), run.length + beyond(run.right)];
}
