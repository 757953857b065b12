import type { Vec2 } from '../../vocabulary/geometry';
import { type AddLine, type Along, alongOf, type Dimension, GAP, PAST } from './along';
import { type Box, type Ink, type Lettering, line } from './ink';
import { around, boxOf, collide, NOTE_MM, textWidth } from './lettering';
import { drawRunning, runningGroups } from './running';

/** Half the length of the oblique stroke in x and in y. */
const STROKE = 0.9;
/** Clear of the dimension line, and between two figures. */
const CLEAR = 0.8;
const BETWEEN = 0.5;

/**
 * Draws the dimensions at a scale (model mm per paper mm). Figures stand on their own span where they fit; one that doesn't is moved
 * away, step by step, until it touches no other and no line. The figures are in their own list, last to be inked.
 * `crowded` when one had to go so far that it is hard to read.
 */
export function drawDimensions(
  dims: readonly Dimension[],
  scale: number,
): { ink: readonly Ink[]; figures: readonly Lettering[]; crowded: boolean } {
  const ink: Ink[] = [];
  const drawn = new Set<string>();
  const add: AddLine = (points) => {
    const key = points.map((p) => p.map((n) => n.toFixed(2)).join()).join(' ');
    if (points.length > 1 && !drawn.has(key)) ink.push(line(points));
    drawn.add(key);
  };
  const isRunning = (d: Dimension): boolean => d.running === true;
  const chains = dims.filter((d) => !isRunning(d)).map((d) => alongOf(d, scale));
  for (const d of chains) drawSpan(d, add);
  const groups = runningGroups(dims.filter(isRunning), scale);
  const figures: Lettering[] = groups.flatMap((group) => drawRunning(group, add, ink));
  const boxes = figures.map(boxOf);
  const place = (letters: Lettering): void => {
    figures.push(letters);
    boxes.push(boxOf(letters));
  };
  const lines = ink.flatMap((one) => (one.kind === 'path' ? (around(one.points) ?? []) : []));
  const others = (d: Along): readonly Box[] => lines.filter((box) => !inChain(d, box));
  const tight: Along[] = [];
  for (const d of chains) {
    const own = ownFigure(d, [...boxes, ...others(d)]);
    if (own) place(own);
    else tight.push(d);
  }
  let crowded = false;
  for (const d of tight) {
    const { figure, leader, level } = freeFigure(d, boxes, others(d));
    place(figure);
    add(leader);
    boxes.push(...beads(leader));
    crowded ||= level >= CROWDED;
  }
  return { ink, figures, crowded };
}

/** Projection lines, oblique strokes and dimension line of one span. */
function drawSpan(d: Along, add: AddLine): void {
  const ends = [
    [d.a, d.footA],
    [d.b, d.footB],
  ] as const;
  for (const [x, foot] of ends) {
    add([d.paper(x, foot + d.side * GAP), d.paper(x, d.at + d.side * PAST)]);
    add([d.paper(x - STROKE, d.at - STROKE), d.paper(x + STROKE, d.at + STROKE)]);
  }
  add([d.paper(d.a, d.at), d.paper(d.b, d.at)]);
}

/** Whether a line's box is the dimension line itself, or a stroke on it: a figure beyond the projection lines' ends is clear of those. */
const inChain = (d: Along, box: Box): boolean => {
  const i = d.vertical ? 0 : 1;
  return Math.abs(box.min[i] - d.at) < PAST && Math.abs(box.max[i] - d.at) < PAST;
};

/** Writing stands above a horizontal dimension line and to the left of an upright one. */
const upOf = (d: Along): number => (d.vertical ? -1 : 1);

const figureAt = (d: Along, along: number, off: number): Lettering => ({
  kind: 'text',
  at: d.paper(along, off),
  text: d.text,
  height: NOTE_MM,
  anchor: 'middle',
  turned: d.vertical,
});

/** A figure on its own span: in the middle, or beside it where a projection line of another chain runs through. Null when none fits. */
function ownFigure(d: Along, taken: readonly Box[]): Lettering | null {
  const width = textWidth(d.text, NOTE_MM);
  const play = (Math.abs(d.b - d.a) - width) / 2 - BETWEEN;
  if (play < 0) return null;
  for (const shift of [0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1, -1].map((share) => share * play)) {
    const figure = figureAt(d, (d.a + d.b) / 2 + shift, d.at + upOf(d) * CLEAR);
    if (!taken.some((box) => collide(box, boxOf(figure), BETWEEN - 0.1))) return figure;
  }
  return null;
}

/** Sideways steps of a figure, as shares of its width; beyond the first few a leader ties it to its span. */
const SHIFTS = [0, 0.15, -0.15, 0.3, -0.3, 0.6, -0.6, 1, -1, 1.3, -1.3, 1.6, -1.6];
const NEEDS_LEADER = 0.3;

/** From this level on a leader may cross a figure, better that than none; and the drawing counts as crowded. */
const CROWDED = 2;

interface Led {
  readonly figure: Lettering;
  /** From the middle of the span to the figure; none when it stands by its span anyway. */
  readonly leader: readonly Vec2[];
  readonly level: number;
}

/** Tries places away from the thing, level by level, and sideways at each. There is an end: what is taken is finite. */
function freeFigure(d: Along, allFigures: readonly Box[], allLines: readonly Box[]): Led {
  const middle = (d.a + d.b) / 2;
  const width = textWidth(d.text, NOTE_MM);
  // Only what stands beside the span can be in the way: without this a long run's chain would be held against itself again and again.
  const reach = (Math.max(...SHIFTS) + 1) * width + NOTE_MM;
  const axis = d.vertical ? 1 : 0;
  const near = (box: Box): boolean => box.max[axis] > middle - reach && box.min[axis] < middle + reach;
  const figures = allFigures.filter(near);
  const lines = allLines.filter(near);
  const isFree = (box: Box, gap: number): boolean =>
    ![figures, lines].some((boxes) => boxes.some((one) => collide(one, box, gap)));
  for (let level = 0; ; level += 1) {
    const off = d.at + d.side * (PAST + BETWEEN + 0.1 + level * (NOTE_MM + CLEAR));
    // The base line lies at the figure's foot: on one side that is its near edge, on the other its far one.
    const base = d.side === upOf(d) ? off : off + d.side * NOTE_MM;
    for (const shift of SHIFTS) {
      const figure = figureAt(d, middle + shift * width, base);
      if (!isFree(boxOf(figure), BETWEEN)) continue;
      const isLed = level > 0 || Math.abs(shift) > NEEDS_LEADER;
      const leader = isLed ? [d.paper(middle, d.at), d.paper(middle + shift * width, off)] : [];
      const isClear = beads(leader).every((bead) => !figures.some((box) => collide(box, bead, 0)));
      if (isClear || level >= CROWDED) return { figure, leader, level };
    }
  }
}

/** A leader as small boxes in a row, so that it can be tested like figures; a millimetre each at most. */
function beads(leader: readonly Vec2[]): readonly Box[] {
  if (leader.length < 2) return [];
  const [[x0, y0], [x1, y1]] = leader;
  const count = Math.ceil(Math.hypot(x1 - x0, y1 - y0));
  const at = (i: number): Vec2 => [x0 + ((x1 - x0) * i) / count, y0 + ((y1 - y0) * i) / count];
  return Array.from({ length: count }, (_, i) => around([at(i), at(i + 1)])!);
}
