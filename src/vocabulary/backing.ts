/**
 * "Timber is needed here", in one run. A stud line at `x`: `centred` when a joint must fall on the stud's middle, else the
 * line need only lie on the stud. A noggin at height `z` from `from` to `to`, covered within the timber's width.
 */
export type Backing =
  | {
      readonly kind: 'stud';
      readonly run: string;
      readonly x: number;
      readonly centred: boolean;
      readonly reason: string;
    }
  | {
      readonly kind: 'noggin';
      readonly run: string;
      readonly z: number;
      readonly from: number;
      readonly to: number;
      readonly reason: string;
    }
  /** No stud between `from` and `to`: an opening is there, from height `low` to `high`. A stud that would is moved, or the opening trimmed. */
  | {
      readonly kind: 'keep-out';
      readonly run: string;
      readonly from: number;
      readonly to: number;
      readonly low: number;
      readonly high: number;
      readonly reason: string;
      /** Index into the job's openings. */
      readonly opening?: number;
    };

export interface Stud {
  readonly from: number;
  readonly to: number;
  readonly reasons: readonly string[];
}

export interface Noggin {
  readonly from: number;
  readonly to: number;
  /** Height of its lower and upper face above the floor. */
  readonly low: number;
  readonly high: number;
  readonly reasons: readonly string[];
}

/** A three-cornered strip that fills the wedge between two square-cut frames at a corner. Plan points, counter-clockwise. */
export interface CornerFillet {
  readonly points: readonly [readonly [number, number], readonly [number, number], readonly [number, number]];
}

/** A length of plate: one for each section that the run is made in. */
export interface Plate {
  readonly from: number;
  readonly to: number;
}

/** The timber of one run's frame. All x along the run from its left frame-line end. */
export interface RunFraming {
  readonly run: string;
  readonly from: number;
  readonly to: number;
  readonly plates: readonly Plate[];
  readonly studs: readonly Stud[];
  readonly noggins: readonly Noggin[];
  readonly fillets: readonly CornerFillet[];
}
