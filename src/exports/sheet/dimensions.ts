import type { Stroke } from '../../vocabulary/drawing';
import type { Vec2 } from '../../vocabulary/geometry';
import { type Box, type Ink, type Lettering, line } from './ink';
import { boxOf, collide, NOTE_MM, textWidth } from './lettering';
import { spread } from './spread';

export type Dimension = Extract<Stroke, { kind: 'dimension' }>;

/** Projection lines start this far off the thing and end this far past the dimension line, mm of paper (ISO 129-1, from memory: 1–2 past). */
const GAP = 1;
const PAST = 1.5;
/** Half the length of the oblique stroke in x and in y. */
const STROKE = 0.9;
/** Clear of the dimension line, and between two figures. */
const CLEAR = 0.8;
const BETWEEN = 0.5;
/** Least distance of the base lines of running figures side by side. */
const PITCH = NOTE_MM + 0.9;

/**
 * A dimension seen along its own axis: `a` and `b` along it, `side` +1 or −1 away from the thing, `at` the dimension line,
 * `foot` where each projection line starts. Turning it back to paper is the one place that knows the axis.
 */
interface Along {
  readonly a: number;
  readonly b: number;
  readonly footA: number;
  readonly footB: number;
  readonly at: number;
  readonly side: 1 | -1;
  readonly text: string;
  readonly paper: (along: number, off: number) => Vec2;
  readonly vertical: boolean;
}

/**
 * Draws the dimensions at a scale (model mm per paper mm) round writing that stands already. Figures stand on their own span where
 * they fit; one that doesn't is moved away, step by step, until it touches no other. Figures come last, for the caller to test.
 */
export function drawDimensions(dims: readonly Dimension[], scale: number): { ink: readonly Ink[]; figures: readonly Lettering[] } {
  const ink: Ink[] = [];
  const drawn = new Set<string>();
  const add = (points: readonly Vec2[]): void => {
    const key = points.map((p) => p.map((n) => n.toFixed(2)).join()).join(' ');
    if (!drawn.has(key)) ink.push(line(points));
    drawn.add(key);
  };
  const chains = dims.filter((d) => d.running !== true).map((d) => alongOf(d, scale));
  const figures: Lettering[] = [];
  const boxes: Box[] = [];
  const place = (letters: Lettering): void => {
    figures.push(letters);
    boxes.push(boxOf(letters));
  };
  for (const d of chains) {
    for (const [x, foot] of [[d.a, d.footA], [d.b, d.footB]] as const) {
      add([d.paper(x, foot + d.side * GAP), d.paper(x, d.at + d.side * PAST)]);
      add([d.paper(x - STROKE, d.at - STROKE), d.paper(x + STROKE, d.at + STROKE)]);
    }
    add([d.paper(d.a, d.at), d.paper(d.b, d.at)]);
  }
  for (const group of runningGroups(dims.filter((d) => d.running === true), scale)) drawRunning(group, add, ink, place);
  const tight: Along[] = [];
  for (const d of chains) {
    const own = figureAt(d, (d.a + d.b) / 2, d.at + upOf(d) * CLEAR);
    const fits = textWidth(d.text, NOTE_MM) + 2 * BETWEEN <= Math.abs(d.b - d.a);
    if (fits && !boxes.some((box) => collide(box, boxOf(own), BETWEEN))) place(own);
    else tight.push(d);
  }
  for (const d of tight) place(freeFigure(d, boxes, add));
  return { ink, figures };
}

/** Writing stands above a horizontal dimension line and to the left of an upright one. */
const upOf = (d: Along): number => (d.vertical ? -1 : 1);

function figureAt(d: Along, along: number, off: number): Lettering {
  return { kind: 'text', at: d.paper(along, off), text: d.text, height: NOTE_MM, anchor: 'middle', turned: d.vertical };
}

/** Tries away from the thing first, then toward it, level by level, and sideways at each; a leader ties a figure to its span. */
function freeFigure(d: Along, boxes: readonly Box[], add: (points: readonly Vec2[]) => void): Lettering {
  const middle = (d.a + d.b) / 2;
  const width = textWidth(d.text, NOTE_MM);
  const step = NOTE_MM + CLEAR;
  for (let level = 0; ; level += 1) {
    const off = d.at + d.side * (PAST + 0.4 + level * step);
    // The base line lies at the figure's foot: on one side that is its near edge, on the other its far one.
    const base = d.side === upOf(d) ? off : off + d.side * NOTE_MM;
    for (const shift of [0, 0.3, -0.3, 0.6, -0.6, 1, -1]) {
      const figure = figureAt(d, middle + shift * width, base);
      if (boxes.some((box) => collide(box, boxOf(figure), BETWEEN))) continue;
      if (level > 0 || shift !== 0) add([d.paper(middle, d.at), d.paper(middle + shift * width, off)]);
      return figure;
    }
  }
}

function alongOf(d: Dimension, scale: number): Along {
  const vertical = d.axis === 'vertical';
  const i = vertical ? 1 : 0;
  const j = vertical ? 0 : 1;
  return {
    a: d.from[i] / scale,
    b: d.to[i] / scale,
    footA: d.from[j] / scale,
    footB: d.to[j] / scale,
    at: d.from[j] / scale + d.offsetMm,
    side: d.offsetMm < 0 ? -1 : 1,
    text: d.text,
    paper: vertical ? (along, off) => [off, along] : (along, off) => [along, off],
    vertical,
  };
}

/** Running dimensions with one datum and one dimension line belong together. */
function runningGroups(dims: readonly Dimension[], scale: number): readonly (readonly Along[])[] {
  const groups = new Map<string, Along[]>();
  for (const d of dims) {
    const key = `${d.axis} ${d.from.join()} ${d.offsetMm}`;
    groups.set(key, [...(groups.get(key) ?? []), alongOf(d, scale)]);
  }
  return [...groups.values()];
}

/** Superimposed running dimensions: a circle at the datum, an arrow and a figure at each mark (ISO 129-1, from memory). */
function drawRunning(
  group: readonly Along[],
  add: (points: readonly Vec2[]) => void,
  ink: Ink[],
  place: (letters: Lettering) => void,
): void {
  const first = group[0];
  if (!first) return;
  const { a: datum, at, side, paper, vertical } = first;
  const marks = [{ x: datum, foot: first.footA, text: '0' }, ...group.map((d) => ({ x: d.b, foot: d.footB, text: d.text }))].sort(
    (m, n) => m.x - n.x,
  );
  const places = spread(marks.map((mark) => mark.x), PITCH);
  add([paper(marks[0]!.x, at), paper(marks.at(-1)!.x, at)]);
  ink.push({ kind: 'circle', at: paper(datum, at), radius: 0.9, pen: 'narrow' });
  marks.forEach((mark, i) => {
    const x = places[i]!;
    const end = at + side * 4;
    add([paper(mark.x, mark.foot + side * GAP), paper(mark.x, at + side * PAST), paper(x, end)]);
    if (mark.x !== datum) {
      const back = mark.x > datum ? -1.8 : 1.8;
      add([paper(mark.x + back, at - 0.5), paper(mark.x, at), paper(mark.x + back, at + 0.5)]);
    }
    // The figure is centred on the end of its line: the base line lies half a figure below it, as one reads.
    place({
      kind: 'text',
      at: vertical ? [end + side * 0.6, x - NOTE_MM / 2] : [x + NOTE_MM / 2, end + side * 0.6],
      text: mark.text,
      height: NOTE_MM,
      anchor: side > 0 ? 'start' : 'end',
      turned: !vertical,
    });
  });
}
