import type { Cutter, Fixing, StockItem } from './book';
import type { Decision } from './field';

/** How bays are divided along a run. */
export type Rhythm =
  | { readonly by: 'count'; readonly count: number }
  | { readonly by: 'pitch'; readonly pitch: number }
  | { readonly by: 'marks'; readonly marks: readonly number[] };

/**
 * What a run ends against. A return carries the front round a square corner and back by `length`, taken over the layer `over`
 * (default: the frame).
 */
export type EndCondition =
  | { readonly kind: 'wall'; readonly wall?: string }
  | { readonly kind: 'free' }
  | { readonly kind: 'return'; readonly length: number; readonly over?: string };

/**
 * One straight length of the plan, from left to right as seen from the front. `over` names the layer to which the length
 * was taken. `deflectionDeg` is the turn to the next run: positive at an outside corner, negative at an inside one.
 */
export interface Run {
  readonly length: number;
  readonly over: string;
  readonly deflectionDeg: number;
  /** Which run's frame goes through at the corner to the next run. */
  readonly through: 'this' | 'next';
  readonly rhythm?: Rhythm;
}

export interface Plan {
  readonly runs: readonly Run[];
  readonly leftEnd: EndCondition;
  readonly rightEnd: EndCondition;
}

/** A surveyed wall: its direction in plan (degrees, counter-clockwise from the first run) and lean from plumb (positive leans back). */
export interface SurveyedWall {
  readonly name: string;
  readonly directionDeg: number;
  readonly leanDeg: number;
}

/** A floor level: at `along` mm from the left end of run number `run` (1 = first), `height` mm above the datum. */
export interface SurveyedLevel {
  readonly run: number;
  readonly along: number;
  readonly height: number;
}

export interface Survey {
  readonly walls: readonly SurveyedWall[];
  readonly levels: readonly SurveyedLevel[];
}

/** One piece of furniture. `elements` holds each room's decisions under the room's kind. */
export interface Unit {
  readonly name: string;
  readonly plan: Plan;
  /** From the finished floor to the upper face of the top. */
  readonly height: number;
  /** From the front edge of the top to its back edge. */
  readonly depth: number;
  readonly elements: Readonly<Record<string, Readonly<Record<string, Decision>>>>;
}

export interface StockBook {
  readonly items: readonly StockItem[];
  readonly fixings: readonly Fixing[];
}

export interface Tools {
  readonly sawKerf: number;
  readonly mitreSawKerf: number;
  /** The furthest that the saw's blade tilts, degrees. */
  readonly mostTiltDeg: number;
  /** Shop lengths are rounded to this, once; the exact length is kept beside it. */
  readonly roundingStep: number;
  readonly cutters: readonly Cutter[];
}

/** All that the joiner decides. Everything else is worked out from it. Lengths in mm. */
export interface Job {
  readonly format: 'counterwright-job';
  readonly version: 1;
  readonly name: string;
  /** Who makes it: the name in the title block. */
  readonly maker: { readonly name: string };
  readonly client: { readonly name: string; readonly contact: string };
  readonly site: { readonly address: string; readonly notes: string };
  /** How lengths are shown and typed; the file always holds millimetres. */
  readonly units: 'mm' | 'inch';
  readonly survey: Survey;
  readonly unit: Unit;
  readonly stock: StockBook;
  readonly tools: Tools;
}
