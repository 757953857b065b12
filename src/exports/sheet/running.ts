import { type AddLine, type Along, alongOf, type Dimension, GAP, PAST } from './along';
import type { Ink, Lettering } from './ink';
import { NOTE_MM } from './lettering';
import { spread } from './spread';

/** Least distance of the base lines of running figures side by side. */
const PITCH = NOTE_MM + 0.9;
/** Where a line that was led aside ends, off the dimension line, and how far its figure stands from there. */
const LED = 4;
const CLEAR = 0.6;
const ARROW: readonly [number, number] = [1.8, 0.5];
const DATUM_RADIUS = 0.9;

/** Running dimensions with one datum and one dimension line belong together. */
export function runningGroups(dims: readonly Dimension[], scale: number): readonly (readonly Along[])[] {
  const groups = new Map<string, Along[]>();
  for (const d of dims) {
    const key = `${d.axis} ${d.from.join()} ${d.offsetMm}`;
    const group = groups.get(key);
    if (group) group.push(alongOf(d, scale));
    else groups.set(key, [alongOf(d, scale)]);
  }
  return [...groups.values()];
}

/**
 * Superimposed running dimensions: a circle at the datum with 0 or what a dimension to itself says, an arrow and a figure at each mark (ISO 129-1, from memory). Figures that
 * would touch are led aside. Returns the figures.
 */
export function drawRunning(group: readonly Along[], add: AddLine, ink: Ink[]): readonly Lettering[] {
  const first = group[0];
  if (!first) return [];
  const { a: datum, footA, at, side, paper, vertical } = first;
  const zero = group.find((d) => d.b === datum);
  const away = group.filter((d) => d !== zero);
  const stops = [
    { x: datum, foot: footA, text: zero?.text ?? '0' },
    ...away.map((d) => ({ x: d.b, foot: d.footB, text: d.text })),
  ];
  const marks = stops.sort((m, n) => m.x - n.x);
  const xs = marks.map((mark) => mark.x);
  const places = spread(xs, PITCH);
  const end = at + side * LED;
  add([paper(xs[0], at), paper(xs[xs.length - 1], at)]);
  ink.push({ kind: 'circle', at: paper(datum, at), radius: DATUM_RADIUS, pen: 'narrow' });
  return marks.map((mark, i) => {
    const x = places[i];
    add([paper(mark.x, mark.foot + side * GAP), paper(mark.x, at + side * PAST), paper(x, end)]);
    if (mark.x !== datum) {
      const back = mark.x > datum ? -ARROW[0] : ARROW[0];
      add([paper(mark.x + back, at - ARROW[1]), paper(mark.x, at), paper(mark.x + back, at + ARROW[1])]);
    }
    // The figure is centred on the end of its line: the base line lies half a figure below it, as one reads.
    const off = end + side * CLEAR;
    return {
      kind: 'text',
      at: vertical ? [off, x - NOTE_MM / 2] : [x + NOTE_MM / 2, off],
      text: mark.text,
      height: NOTE_MM,
      anchor: side > 0 ? 'start' : 'end',
      turned: !vertical,
    };
  });
}
