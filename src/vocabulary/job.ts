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
  /** A lifting flap in the counter between this run and the next, which then goes straight on. */
  readonly flap?: Flap;
}

/** A part of the top that lifts, over a gap of `width` between two frames. Hinged at the left or right as seen from the front. */
export interface Flap {
  readonly width: number;
  readonly hinge: 'left' | 'right';
  /** A plain gate below it, hung at the same side. */
  readonly gate: boolean;
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
  /** Skirting that is on the wall already and stays there: what stands against the wall is notched over it. Not said: none. */
  readonly skirtingHeight?: number;
  readonly skirtingThickness?: number;
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

/**
 * Where the unit is taken apart: nowhere, in the fewest sections that can be carried, or by hand. A mark by hand lies in run number `run`
 * (1 = first), `x` from the left end of its frame line; without `x` at the run's right-hand corner (run 0: at the left return's).
 */
export type Joins =
  | { readonly by: 'none' }
  | { readonly by: 'least' }
  | { readonly by: 'hand'; readonly at: readonly JoinMark[] };

export interface JoinMark {
  readonly run: number;
  readonly x?: number;
}

/**
 * A hole for something that comes through, in run number `run` (1 = first). `x` is its middle along the run from the left end of the
 * frame line; `z` its middle above the floor, or through the top: back from the front edge. A pipe's hole is round, `width` across.
 */
export interface Opening {
  readonly name: string;
  readonly run: number;
  readonly through: 'front' | 'top';
  readonly use: 'socket' | 'pipe' | 'grille';
  readonly x: number;
  readonly z: number;
  readonly width: number;
  readonly height: number;
}

/** What stands behind a bay. */
export type BayPurpose = 'open' | 'shelves' | 'appliance' | 'sink' | 'bin' | 'doors' | 'drawers';

/** One bay that is not like the others: run number (1 = first) and bay number from the left (1 = first). Sizes of what stands in it. */
export interface BayWish {
  readonly run: number;
  readonly bay: number;
  /** Panel frames on its front. */
  readonly panels: boolean;
  readonly purpose: BayPurpose;
  /** Shelves, doors or drawers. */
  readonly count: number;
  readonly shelves: 'fixed' | 'standards' | 'holes';
  /** Of the appliance, sink bowl or bin: width along the run, height, depth from the back. 0: not stated. */
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  /** Clear space it needs at each side, above it and behind it (towards the front of the unit). */
  readonly besides: number;
  readonly above: number;
  readonly behind: number;
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
  readonly joins: Joins;
  readonly openings: readonly Opening[];
  readonly bays: readonly BayWish[];
}

/** What a section must get through, and who carries it. Clear sizes, mm. */
export interface Carry {
  readonly shopDoorWidth: number;
  readonly shopDoorHeight: number;
  readonly vanLength: number;
  readonly vanWidth: number;
  readonly vanHeight: number;
  readonly routeDoorWidth: number;
  readonly routeDoorHeight: number;
  /** Clear widths of two corridors that meet at a right angle; 0: the route has no such turn. */
  readonly corridorBefore: number;
  readonly corridorAfter: number;
  readonly people: number;
  /** What each of them may be asked to lift alone. */
  readonly liftKg: number;
}

/** Allowances for the room. */
export interface Fit {
  /** Tolerances gathered – cladding, paint, fit – as one number: the frame stands this far clear of a wall. */
  readonly tolerance: number;
  /** Left on whatever meets a wall, to be scribed to it. */
  readonly scribe: number;
  /** Heights of the bolts through the two studs at a join, above the floor. */
  readonly bolts: readonly number[];
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

/** How stock is cut up. Lengths in mm. */
export interface Cutting {
  /** Off each edge of a new sheet. */
  readonly sheetTrim: number;
  /** Off each end of new timber and mouldings, at least. */
  readonly barTrim: number;
  /** Off each edge or end of an offcut. */
  readonly offcutTrim: number;
  /** How often the direction of cutting a sheet may change, counting the first. */
  readonly stages: 'any' | '2' | '3';
  /** A last cut that only trims a piece to its size is no stage. */
  readonly trimsFree: boolean;
  /** Of the saw; 0: any. */
  readonly longestCut: number;
  /** What goes back into the rack: a sheet of at least this length and width, a bar of at least this length. */
  readonly leastLength: number;
  readonly leastWidth: number;
  readonly leastBar: number;
  /** Which pieces of sheet are sawn over size, and by how much on each side. */
  readonly oversizeOn: 'none' | 'worked' | 'all';
  readonly oversize: number;
  /** Of a strip that is moulded before blocks are cut from it. */
  readonly longestStrip: number;
  /** The members of a panel frame come from one bar. */
  readonly framesTogether: boolean;
  /** Hardwood may be used with either face up. */
  readonly eitherFace: boolean;
}

/** All that the joiner decides. Everything else is worked out from it. Lengths in mm. */
export interface Job {
  readonly format: 'counterwright-job';
  readonly version: 2;
  readonly name: string;
  /** Who makes it: the name in the title block. */
  readonly maker: { readonly name: string };
  readonly client: { readonly name: string; readonly contact: string };
  readonly site: { readonly address: string; readonly notes: string };
  /** How lengths are shown and typed; the file always holds millimetres. */
  readonly units: 'mm' | 'inch';
  readonly survey: Survey;
  readonly carry: Carry;
  readonly fit: Fit;
  readonly unit: Unit;
  readonly stock: StockBook;
  readonly tools: Tools;
  readonly cutting: Cutting;
}
