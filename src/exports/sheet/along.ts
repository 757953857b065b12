import type { Stroke } from '../../vocabulary/drawing';
import type { Vec2 } from '../../vocabulary/geometry';

export type Dimension = Extract<Stroke, { kind: 'dimension' }>;

/** Projection lines start this far off the thing and end this far past the dimension line, mm of paper (ISO 129-1, from memory: 1–2 past). */
export const GAP = 1;
export const PAST = 1.5;

/**
 * A dimension on paper, seen along its own axis: `a` and `b` along it, `at` the dimension line, `foot` where each projection line
 * starts, `side` +1 or −1 away from the thing. `paper` turns it back: the one place that knows the axis.
 */
export interface Along {
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

/** Draws a line of the narrow pen, once however often it is asked for. */
export type AddLine = (points: readonly Vec2[]) => void;

export function alongOf(d: Dimension, scale: number): Along {
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
