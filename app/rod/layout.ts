import type { RodRun } from '../../src/vocabulary/rod';
import { place, type Wanted, type Written } from './placing';
import { inOrder, type Strip, type Stroke } from './strips';
import type { Room } from './useRoom';

/** Height of each lane on the board, gap between lanes, room at the ends and above, px. */
const LANE_HEIGHT: Readonly<Record<Strip['lane'], number>> = { front: 74, skin: 44, timber: 66, behind: 30 };
const LANE_GAP = 7;
const SIDE = 16;
const HEAD = 8;

/** Rows of figures under the lanes, and the height of one. */
export const ROWS = 2;
export const ROW_HEIGHT = 14;
const RULER_GAP = 12;

export interface LaneBox {
  readonly strip: Strip;
  readonly top: number;
  readonly height: number;
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

/**
 * Lays a run out on a board.
 * @param heightMm full height of the unit, which each lane's height stands for
 * @param format a length in mm in the job's units
 */
export function layOut(
  run: Pick<RodRun, 'length'>,
  strips: readonly Strip[],
  room: Room,
  heightMm: number,
  format: (mm: number) => string,
  wishes: readonly Wish[],
): Layout {
  const { width, digit } = room;
  const widthOf = (text: string): number => text.length * digit + 2;
  const reach = [
    0,
    run.length,
    ...strips.flatMap((s) => [...s.blocks.flatMap((b) => [b.from, b.to]), ...s.strokes.map((m) => m.x)]),
  ];
  const from = Math.min(...reach);
  const to = Math.max(...reach);
  const scale = (width - 2 * SIDE) / Math.max(to - from, 1);
  const at = (mm: number): number => SIDE + (mm - from) * scale;

  const lanes: LaneBox[] = [];
  let top = HEAD;
  for (const strip of strips) {
    const height = LANE_HEIGHT[strip.lane];
    lanes.push({ strip, top, height });
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
    at,
    rise: (mm, lane) => (lane.height * Math.max(0, Math.min(mm, heightMm))) / Math.max(heightMm, 1),
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
    ...wishes,
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
