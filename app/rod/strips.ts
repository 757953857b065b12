import { SAME_LENGTH } from '../../src/base/tolerance';
import type { Design } from '../../src/vocabulary/design';
import type { BuildStage, Part } from '../../src/vocabulary/part';
import type { Mark, RodRun } from '../../src/vocabulary/rod';
import { cornersOf } from '../scene/assembly';
import { type Width, widthsOf } from './widths';

/** Where a part lies in its run as seen from the front: along from the datum and up from the floor, mm. */
export interface Block {
  readonly mark: string;
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
}

/** Marks of one lane that fall on the same place: one stroke of the pencil, with every reason for it. */
export interface Stroke {
  readonly id: string;
  readonly lane: Mark['lane'];
  readonly x: number;
  readonly reasons: readonly string[];
  readonly part: string | null;
}

export interface Strip {
  readonly lane: Mark['lane'];
  readonly blocks: readonly Block[];
  readonly widths: readonly Width[];
  readonly strokes: readonly Stroke[];
}

const LANES: readonly Mark['lane'][] = ['front', 'skin', 'timber', 'behind'];

/** Parts are drawn in the lane of what they are put on with. */
const LANE_OF: Readonly<Record<BuildStage, Mark['lane']>> = { framed: 'timber', clad: 'skin', finished: 'front' };

/** The lane of a part: what lies wholly behind the front's frame is behind, whatever it is put on with. */
function laneOf(part: Part, run: Pick<RodRun, 'origin' | 'front'>, frameDepth: number): Mark['lane'] {
  const out = cornersOf(part).map(([x, y]) => (x - run.origin[0]) * run.front[0] + (y - run.origin[1]) * run.front[1]);
  return Math.max(...out) <= SAME_LENGTH - frameDepth ? 'behind' : LANE_OF[part.from];
}

/** A part's extent in its run, by the box round it. */
export function blockOf(part: Part, run: Pick<RodRun, 'origin' | 'along'>): Block {
  const corners = cornersOf(part);
  const xs = corners.map(([x, y]) => (x - run.origin[0]) * run.along[0] + (y - run.origin[1]) * run.along[1]);
  const zs = corners.map(([, , z]) => z);
  return {
    mark: part.mark,
    name: part.name,
    from: Math.min(...xs),
    to: Math.max(...xs),
    low: Math.min(...zs),
    high: Math.max(...zs),
  };
}

/** Marks of one lane from left to right, those on the same place together. */
export function strokesOf(marks: readonly Mark[], lane: Mark['lane']): readonly Stroke[] {
  const strokes: Stroke[] = [];
  for (const mark of marks.filter((m) => m.lane === lane).sort((a, b) => a.x - b.x)) {
    const last = strokes.at(-1);
    if (last && mark.x - last.x < SAME_LENGTH) {
      const reasons = last.reasons.includes(mark.reason) ? last.reasons : [...last.reasons, mark.reason];
      strokes[strokes.length - 1] = { ...last, reasons, part: last.part ?? mark.part ?? null };
    } else {
      strokes.push({ id: mark.id, lane, x: mark.x, reasons: [mark.reason], part: mark.part ?? null });
    }
  }
  return strokes;
}

/** The lanes of one run; a lane with nothing in it is left out. */
export function stripsOf(design: Design, run: RodRun): readonly Strip[] {
  const parts = design.parts.filter((part) => part.run === run.id);
  const marks = design.marks[run.id] ?? [];
  const placed = parts.map((part) => ({
    block: blockOf(part, run),
    lane: laneOf(part, run, design.rod.timber.depth),
  }));
  const strips = LANES.map((lane) => {
    const blocks = placed.flatMap((one) => (one.lane === lane ? [one.block] : []));
    return {
      lane,
      blocks: widestFirst(blocks),
      widths: widthsOf(design, run, lane, blocks),
      strokes: strokesOf(marks, lane),
    };
  });
  const inUse = (lane: Mark['lane']): boolean => lane === 'behind' && run.backBays.length > 0;
  return strips.filter((strip) => strip.blocks.length + strip.strokes.length > 0 || inUse(strip.lane));
}

/** Small things are drawn, and found by the pointer, in front of great ones. */
const widestFirst = (blocks: readonly Block[]): readonly Block[] =>
  [...blocks].sort((a, b) => (b.to - b.from) * (b.high - b.low) - (a.to - a.from) * (a.high - a.low));

/** All strokes of a run in the order of the arrow keys: from left to right, on the same place from the front backwards. */
export function inOrder(strips: readonly Strip[]): readonly Stroke[] {
  const all = strips.flatMap((strip) => strip.strokes);
  return all.sort((a, b) => a.x - b.x || LANES.indexOf(a.lane) - LANES.indexOf(b.lane));
}

/** The nearest stroke in the next lane that has one, `step` lanes backwards (1) or forwards (-1). */
function across(strips: readonly Strip[], from: Stroke, step: 1 | -1): Stroke | undefined {
  const marked = strips.filter((strip) => strip.strokes.length > 0);
  const at = marked.findIndex((strip) => strip.lane === from.lane);
  const strokes = marked[at + step]?.strokes ?? [];
  return [...strokes].sort((a, b) => Math.abs(a.x - from.x) - Math.abs(b.x - from.x))[0];
}

/**
 * The stroke that a key leads to: left and right in order, up and down from lane to lane, Home and End to the ends.
 * Undefined for every other key, and where there is none further.
 */
export function steered(strips: readonly Strip[], from: Stroke, key: string): Stroke | undefined {
  const order = inOrder(strips);
  const at = order.findIndex((stroke) => stroke.id === from.id);
  if (key === 'ArrowRight') return order[at + 1];
  if (key === 'ArrowLeft') return order[at - 1];
  if (key === 'ArrowDown') return across(strips, from, 1);
  if (key === 'ArrowUp') return across(strips, from, -1);
  if (key === 'Home') return order[0];
  return key === 'End' ? order.at(-1) : undefined;
}
