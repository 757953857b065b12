import type { LineStyle, Pen } from '../../vocabulary/drawing';
import type { Vec2 } from '../../vocabulary/geometry';

/** Something to draw on paper. Millimetres of paper, x to the right, y up. */
export type Ink =
  | {
      readonly kind: 'path';
      readonly points: readonly Vec2[];
      readonly closed: boolean;
      readonly fill: 'paper' | 'timber' | 'ink' | 'none';
      readonly pen: Pen | 'none';
      readonly style: LineStyle;
      readonly part?: string;
    }
  | { readonly kind: 'circle'; readonly at: Vec2; readonly radius: number; readonly pen: Pen }
  | Lettering;

/** Writing: `at` is on its base line. `turned` is read from the right-hand side of the sheet. */
export interface Lettering {
  readonly kind: 'text';
  readonly at: Vec2;
  readonly text: string;
  /** Height of the capitals. */
  readonly height: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turned: boolean;
  /** Squeezed to this length when it would be longer. */
  readonly atMost?: number;
}

/** An upright box on paper. */
export interface Box {
  readonly min: Vec2;
  readonly max: Vec2;
}

export const line = (points: readonly Vec2[], pen: Pen = 'narrow', style: LineStyle = 'continuous'): Ink => ({
  kind: 'path',
  points,
  closed: false,
  fill: 'none',
  pen,
  style,
});

/** Pen widths in mm of paper: group 0.35 for construction drawings (ISO 128-2, narrow : wide : extra-wide = 1 : 2 : 4; from memory). */
export const PEN_MM: Readonly<Record<Pen, number>> = { narrow: 0.18, wide: 0.35, 'extra-wide': 0.7 };
