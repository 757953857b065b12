import type { Vec2 } from './geometry';

/** Line widths by ISO 128-2, construction group 0.35: narrow 0.18, wide 0.35, extra wide 0.7 mm on paper. */
export type Pen = 'narrow' | 'wide' | 'extra-wide';
export type LineStyle = 'continuous' | 'dashed' | 'chain';

/** Things to draw, in order, in model millimetres: x to the right, y up. */
export type Stroke =
  | {
      readonly kind: 'polygon';
      readonly points: readonly Vec2[];
      readonly fill: 'paper' | 'timber' | 'none';
      readonly pen: Pen;
      readonly part?: string;
    }
  | {
      readonly kind: 'line';
      readonly points: readonly Vec2[];
      readonly pen: Pen;
      readonly style: LineStyle;
      readonly part?: string;
    }
  | {
      readonly kind: 'text';
      readonly at: Vec2;
      readonly text: string;
      readonly heightMm: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly turned: boolean;
      /** Model mm along and across the writing, about `at`: the text stands in the middle, and only where it fits at the sheet's scale. */
      readonly room?: Vec2;
      /** How far down it may be lettered to fit its room; not at all where this is left out. */
      readonly leastMm?: number;
      /** What the sheet's notes say instead where it doesn't fit; left out: the text itself; empty: nothing. */
      readonly otherwise?: string;
    }
  /**
   * A dimension between two model points along the axis, drawn `offsetMm` (on paper; up or to the right positive) off the first
   * point's line. `running`: superimposed with the others from the same `from` (ISO 129-1), its figure at the far end; one that goes
   * nowhere names the datum.
   */
  | {
      readonly kind: 'dimension';
      readonly from: Vec2;
      readonly to: Vec2;
      readonly axis: 'horizontal' | 'vertical';
      readonly offsetMm: number;
      readonly text: string;
      readonly running?: boolean;
    };

/** A view of the unit. Scale is chosen when it is put on paper, unless it is made for one: `scale` 20 means 1:20. */
export interface Drawing {
  readonly id: string;
  readonly title: string;
  readonly scale?: number;
  readonly strokes: readonly Stroke[];
  /** What must be said in words beside the drawing. */
  readonly notes?: readonly string[];
  readonly bounds: { readonly min: Vec2; readonly max: Vec2 };
}
