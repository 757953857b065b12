import { SAME_LENGTH } from '../../src/base/tolerance';
import type { Rod, RodRun } from '../../src/vocabulary/rod';
import { type Figure, figuresOf, ROWS, type Wish } from './figures';
import { inOrder, type Strip } from './strips';
import type { Room } from './useRoom';

/** Height of each lane on the board, of the strip over it for its widths, gap between lanes, room at the ends and above, px. */
const LANE_HEIGHT: Readonly<Record<Strip['lane'], number>> = { front: 62, skin: 28, timber: 52, behind: 28 };
const WIDTHS_HEIGHT = 15;
const LANE_GAP = 5;
const SIDE = 16;
const HEAD = 4;

/** Height of the strip over all lanes for the tags of joins, and of the lane in which the top lies, seen from above, px. */
const TAG_HEIGHT = 15;
const PLAN_HEIGHT = 34;

/** Height of a row of figures under the lanes. */
export const ROW_HEIGHT = 14;
const RULER_GAP = 12;

export interface LaneBox {
  readonly strip: Strip;
  readonly top: number;
  readonly height: number;
  /** Where the line for its widths lies, over what is drawn in it. */
  readonly widthsAt: number;
}

/** The top seen from above, its front edge at the foot of the lane: where what goes through it lies. */
export interface PlanLane {
  readonly top: number;
  readonly height: number;
  /** Distance of a depth behind the front edge from the lane's foot. */
  readonly rise: (mm: number) => number;
}

/** What has to have room over the lanes: tags of joins; the top of so deep, mm, where something goes through it. */
export interface Above {
  readonly tags?: boolean;
  readonly topDepth?: number;
}

/** The board of one run, ready to be drawn; everything in pixels unless it says mm. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Width of a figure as written. */
  readonly widthOf: (text: string) => number;
  readonly lanes: readonly LaneBox[];
  /** Middle of the strip for the tags of joins. */
  readonly tagsAt: number;
  readonly plan: PlanLane | null;
  /** Where the figures' line lies. */
  readonly ruler: number;
  /** Pixels for a millimetre along the run. */
  readonly scale: number;
  /** Board position of a distance from the datum, mm. */
  readonly at: (mm: number) => number;
  /** Distance of a height above the floor from a lane's foot. */
  readonly rise: (mm: number, lane: LaneBox) => number;
  readonly ticks: readonly number[];
  readonly figures: readonly Figure[];
}

/** How far the board goes: over the frame line, and all that is on the front or in the frame; what lies on top of the frame may run off it. */
function reachOf(
  run: Pick<RodRun, 'length'>,
  strips: readonly Strip[],
  frameHeight: number,
): readonly [number, number] {
  const upright = strips.flatMap(({ blocks }) => blocks.filter(({ low }) => low < frameHeight - SAME_LENGTH));
  const reach = [
    0,
    run.length,
    ...upright.flatMap(({ from, to }) => [from, to]),
    // A flap's gap lies beyond the end.
    ...strips.flatMap(({ widths }) => widths.flatMap(({ from, to, of }) => (of ? [from, to] : []))),
    ...strips.flatMap(({ strokes }) => strokes.map(({ x }) => x)),
  ];
  return [Math.min(...reach), Math.max(...reach)];
}

/**
 * Lays a run out on a board.
 * @param heights full height of the unit, which each lane's height stands for, and of its frame, mm
 * @param format a length in mm in the job's units
 * @param above what has to have room over the lanes
 */
export function layOut(
  run: Pick<RodRun, 'length'>,
  strips: readonly Strip[],
  room: Room,
  heights: Pick<Rod, 'height' | 'frameHeight'>,
  format: (mm: number) => string,
  wishes: readonly Wish[],
  above: Above = {},
): Layout {
  const { width, digit, sign } = room;
  const widthOf = (text: string): number =>
    [...text].reduce((sum, letter) => sum + (/\d/.test(letter) ? digit : sign), 2);
  const [from, to] = reachOf(run, strips, heights.frameHeight);
  const scale = (width - 2 * SIDE) / Math.max(to - from, 1);
  const at = (mm: number): number => SIDE + (mm - from) * scale;

  const lanes: LaneBox[] = [];
  let top = above.tags ? HEAD + TAG_HEIGHT + LANE_GAP / 2 : HEAD;
  const plan = above.topDepth === undefined ? null : planLane(top, above.topDepth);
  if (plan) top += plan.height + LANE_GAP;
  for (const strip of strips) {
    const height = LANE_HEIGHT[strip.lane];
    const widthsAt = top + WIDTHS_HEIGHT / 2;
    if (strip.widths.length > 0) top += WIDTHS_HEIGHT;
    lanes.push({ strip, top, height, widthsAt });
    top += height + LANE_GAP;
  }
  const ruler = top + 2;
  const strokes = inOrder(strips);
  return {
    width,
    height: ruler + RULER_GAP + ROWS * ROW_HEIGHT + 2,
    widthOf,
    lanes,
    tagsAt: HEAD / 2 + TAG_HEIGHT / 2,
    plan,
    ruler,
    scale,
    at,
    rise: (mm, lane) => (lane.height * Math.max(0, Math.min(mm, heights.height))) / Math.max(heights.height, 1),
    ticks: [...new Set([0, run.length, ...strokes.map((s) => s.x)])].map(at),
    figures: figuresOf(run, strokes, wishes, at, format, widthOf, width),
  };
}

function planLane(top: number, depth: number): PlanLane {
  const rise = (mm: number): number => (PLAN_HEIGHT * Math.max(0, Math.min(mm, depth))) / Math.max(depth, 1);
  return { top, height: PLAN_HEIGHT, rise };
}
