import { SAME_LENGTH } from '../../src/base/tolerance';
import type { Rod, RodRun } from '../../src/vocabulary/rod';
import { place, type Wanted, type Written } from './placing';
import { inOrder, type Strip, type Stroke } from './strips';
import type { Room } from './useRoom';

/** Height of each lane on the board, of the strip over it for its widths, gap between lanes, room at the ends and above, px. */
const LANE_HEIGHT: Readonly<Record<Strip['lane'], number>> = { front: 62, skin: 28, timber: 52, behind: 28 };
const WIDTHS_HEIGHT = 15;
const LANE_GAP = 5;
const SIDE = 16;
const HEAD = 4;

/** Rows of figures under the lanes, and the height of one. */
export const ROWS = 2;
export const ROW_HEIGHT = 14;
const RULER_GAP = 12;

export interface LaneBox {
  readonly strip: Strip;
  readonly top: number;
  readonly height: number;
  /** Where the line for its widths lies, over what is drawn in it. */
  readonly widthsAt: number;
}

/** The board of one run, ready to be drawn; everything in pixels unless it says mm. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Width of a figure as written. */
  readonly widthOf: (text: string) => number;
  readonly lanes: readonly LaneBox[];
  /** Where the figures' line lies. */
  readonly ruler: number;
  /** Pixels for a millimetre along the run. */
  readonly scale: number;
  /** Board position of a distance from the datum, mm. */
  readonly at: (mm: number) => number;
  /** Distance of a height above the floor from a lane's foot. */
  readonly rise: (mm: number, lane: LaneBox) => number;
  readonly ticks: readonly number[];
  readonly figures: readonly (Written & { readonly text: string })[];
}

/** A place that has to be written out whatever the crowd: the picked part's ends, the mark in hand. */
export interface Wish {
  readonly x: number;
  readonly rank: number;
}

const RANK: Readonly<Record<Strip['lane'], number>> = { front: 4, skin: 5, timber: 6, behind: 7 };
/** The ends of the frame line come before all marks, and after what has been picked out. */
const END_RANK = 3;

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
    ...strips.flatMap(({ strokes }) => strokes.map(({ x }) => x)),
  ];
  return [Math.min(...reach), Math.max(...reach)];
}

/**
 * Lays a run out on a board.
 * @param heights full height of the unit, which each lane's height stands for, and of its frame, mm
 * @param format a length in mm in the job's units
 */
export function layOut(
  run: Pick<RodRun, 'length'>,
  strips: readonly Strip[],
  room: Room,
  heights: Pick<Rod, 'height' | 'frameHeight'>,
  format: (mm: number) => string,
  wishes: readonly Wish[],
): Layout {
  const { width, digit, sign } = room;
  const widthOf = (text: string): number =>
    [...text].reduce((sum, letter) => sum + (/\d/.test(letter) ? digit : sign), 2);
  const [from, to] = reachOf(run, strips, heights.frameHeight);
  const scale = (width - 2 * SIDE) / Math.max(to - from, 1);
  const at = (mm: number): number => SIDE + (mm - from) * scale;

  const lanes: LaneBox[] = [];
  let top = HEAD;
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
    ruler,
    scale,
    at,
    rise: (mm, lane) => (lane.height * Math.max(0, Math.min(mm, heights.height))) / Math.max(heights.height, 1),
    ticks: [...new Set([0, run.length, ...strokes.map((s) => s.x)])].map(at),
    figures: figuresOf(run, strokes, wishes, at, format, widthOf, width),
  };
}

function figuresOf(
  run: Pick<RodRun, 'length'>,
  strokes: readonly Stroke[],
  wishes: readonly Wish[],
  at: (mm: number) => number,
  format: (mm: number) => string,
  widthOf: (text: string) => number,
  width: number,
): Layout['figures'] {
  const ranked = [
    // What runs off the board has no place under it.
    ...wishes.filter(({ x }) => at(x) >= 0 && at(x) <= width),
    { x: 0, rank: END_RANK },
    { x: run.length, rank: END_RANK },
    ...strokes.map((stroke) => ({ x: stroke.x, rank: RANK[stroke.lane] })),
  ].sort((a, b) => a.rank - b.rank);
  // The same figure at the same place is written once, by the most important reason for it.
  const byPlace = new Map<string, Wanted & { text: string }>();
  for (const { x, rank } of ranked) {
    const text = format(x);
    const id = `${text}@${Math.round(at(x))}`;
    if (!byPlace.has(id)) byPlace.set(id, { id, x: at(x), width: widthOf(text), rank, text });
  }
  return place([...byPlace.values()], ROWS, 0, width).map((written) => ({
    ...written,
    text: byPlace.get(written.id)!.text,
  }));
}
