import type { Place } from './geometry';
import type { Shape } from './shape';

/** What an end looks like to the person at the saw. All angles in degrees, lengths in mm. */
export interface EndCut {
  readonly kind: 'square' | 'mitre' | 'bevel' | 'compound';
  /** Between the cut and the long edge: 90 when square, half the corner when mitred. */
  readonly angleDeg: number;
  /** What the saw's scale is turned to from square: mitre scale for a mitre, blade tilt for a bevel. */
  readonly sawDeg: number;
  readonly tiltDeg: number;
  /** Which side of the piece is the longer at this end. */
  readonly longSide: 'none' | 'face' | 'back' | 'lower edge' | 'upper edge';
}

/** Work along an edge, in words and an angle or cutter. */
export interface EdgeWork {
  readonly edge: string;
  readonly work: 'bevelled' | 'moulded';
  readonly angleDeg?: number;
  readonly cutter?: string;
}

/** A groove run through the length, set out on the visible face from its left edge. */
export interface GrooveWork {
  readonly centre: number;
  readonly width: number;
  readonly depth: number;
}

/** How much of the unit is on: a part appears in the view from this stage on. */
export type BuildStage = 'framed' | 'clad' | 'finished';

/** What a room says of a thing to make; parts/ works out the rest from its shape. */
export interface PartDraft {
  readonly kind: string;
  /** Letters of the mark: ST stud, PL plate … */
  readonly code: string;
  readonly name: string;
  readonly run: string;
  readonly material: string;
  readonly finish: 'bare' | 'paint' | 'oil';
  readonly from: BuildStage;
  readonly shape: Shape;
  readonly place: Place;
  readonly edges: readonly EdgeWork[];
  readonly grooves: readonly GrooveWork[];
  /** Which bay or row or side, for people: "bay 2, top". */
  readonly where: string;
}

/** One thing to cut. */
export interface Part extends PartDraft {
  /** Stable name pencilled on the piece: run, code, number. */
  readonly mark: string;
  /** Exact overall size, long point to long point. */
  readonly size: { readonly length: number; readonly width: number; readonly thickness: number };
  /** Rounded once to the job's step. */
  readonly shopLength: number;
  readonly shortPoint: number;
  readonly ends: readonly [EndCut, EndCut];
  readonly volumeMm3: number;
  readonly weightKg: number;
}
