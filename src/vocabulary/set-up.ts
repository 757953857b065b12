import type { PlacedOnBar, PlacedOnSheet, Rect } from './cut-plan';

/*
 * The cuts of a plan in the order of the work, and what is set for them. Sheets and bars lie as in the plan (`cut-plan.ts`); lengths in mm,
 * angles in degrees, settings to a hundredth.
 */

/** What is free after a cut: done, or a panel that is cut further. */
export type Freed =
  | { readonly kind: 'piece'; readonly piece: PlacedOnSheet }
  | { readonly kind: 'panel'; readonly rect: Rect; readonly pieces: readonly PlacedOnSheet[] }
  | { readonly kind: 'left'; readonly rect: Rect; readonly reusable: boolean }
  /** Trimmed off. */
  | { readonly kind: 'waste'; readonly rect: Rect };

/** One pass of the saw over a panel, from edge to edge. */
export interface SheetCut {
  /** In the order of the work on this sheet, from 1. */
  readonly number: number;
  readonly what: 'trim' | 'rip' | 'cross-cut';
  /** As in the tree: a rip runs along the sheet, a cross-cut across it. */
  readonly way: 'along' | 'across';
  /** What lies on the saw. */
  readonly panel: Rect;
  /**
   * From the fence (of a cross-cut: the stop) to the blade: the finished size of what lies between. Not said of the first trim of two edges:
   * that is cut by eye and may take off `takes` at most.
   */
  readonly fence?: number;
  /** Of a trim: how much comes off with the kerf in it. */
  readonly takes?: number;
  /** The edge that bears on the fence: on the side of the smaller or greater coordinate; as bought, trimmed before, or cut before. */
  readonly against: { readonly side: 'low' | 'high'; readonly edge: 'bought' | 'trimmed' | 'cut' };
  /** The edge that is made, to be drawn; the blade runs beside it in `kerf`, some of which may lie beyond the panel. */
  readonly line: { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number };
  readonly kerf: Rect;
  readonly length: number;
  /** Longer than the saw can cut. */
  readonly tooLong: boolean;
  /** What is free after it; what must be cut off the panel by a later cut is not. */
  readonly frees: readonly Freed[];
  /** 0: trims; 1: through the whole sheet; 2: through what those cut free; … */
  readonly level: number;
}

export interface SheetCuts {
  readonly kind: 'sheet';
  readonly stock: number;
  readonly cuts: readonly SheetCut[];
  /** What is free without a cut: a piece as large as the sheet. */
  readonly whole?: Freed;
}

/** One pass of the saw across a bar. */
export interface BarCut {
  readonly number: number;
  /** `trim`: the rough end; `clean`: a new end at another angle than that of the cut before; `end`: the rough end of what is left and kept. */
  readonly what: 'trim' | 'clean' | 'piece' | 'end';
  /** Of the piece that is cut off: from the end just cut to the blade, long point to long point. */
  readonly stop?: number;
  /**
   * What the saw is turned and tilted to, from square; positive where the cut runs to the right away from the sawyer, and where it leans to the
   * right going up, the bar lying on its back with its left end at the left.
   */
  readonly mitreDeg: number;
  readonly tiltDeg: number;
  /** The bar is rolled over on its length for this cut; angles are said of it lying so. */
  readonly over: boolean;
  /** Where the finished end stands at the four corners of the section, mm from the bar's left end: [at the back edge, at the far edge] below and above. */
  readonly edge: { readonly below: readonly [number, number]; readonly above: readonly [number, number] };
  /** The blade runs to the left or to the right of the finished end. */
  readonly waste: 'left' | 'right';
  readonly frees: readonly (
    | { readonly kind: 'piece'; readonly piece: PlacedOnBar }
    | { readonly kind: 'left'; readonly at: number; readonly length: number; readonly reusable: boolean }
  )[];
}

export interface BarCuts {
  readonly kind: 'bar';
  readonly stock: number;
  readonly cuts: readonly BarCut[];
  readonly whole?: PlacedOnBar;
}

/** What keeps its setting by itself while others are moved. */
export type Dial = 'rip fence' | 'cross-cut stop' | 'mitre' | 'tilt' | 'length stop';

/** A cut of a plan: of a batch, the number of its sheet or bar in the plan, and of the cut on it. */
export interface CutOf {
  readonly batch: string;
  readonly index: number;
  readonly cut: number;
  /** Marks of the parts that are cut off by it. */
  readonly marks: readonly string[];
}

/** A block cut off a moulded strip: the strip's batch, sheet and place there. */
export interface BlockCut {
  readonly batch: string;
  readonly strip: readonly string[];
  readonly marks: readonly string[];
}

/** Cuts that the saw makes without being set anew. */
export interface SawSetUp {
  readonly kind: 'saw';
  readonly saw: 'panel saw' | 'mitre saw';
  /** What it must stand at; what is not named doesn't matter. */
  readonly at: Readonly<Partial<Record<Dial, number>>>;
  /** Of these, what must be moved. */
  readonly move: readonly Dial[];
  readonly cuts: readonly CutOf[];
  readonly blocks: readonly BlockCut[];
  /** Words of care, where a cut asks for more than the usual. */
  readonly care: readonly string[];
}

/** Bevels and mitres of what was cut out of sheets, the blade tilted or the saw turned. */
export interface BevelSetUp {
  readonly kind: 'bevel';
  /** A long edge, or an end. */
  readonly of: 'edge' | 'end';
  readonly tiltDeg: number;
  readonly mitreDeg: number;
  /** Width (of an edge) or length (of an end) over all, from the fence or stop to the long point, and what is cut so. */
  readonly passes: readonly { readonly fence: number; readonly marks: readonly string[] }[];
}

/** A cutter run along edges. */
export interface ProfileSetUp {
  readonly kind: 'profile';
  readonly cutter: string;
  readonly edge: string;
  /** Each a strip (several marks: blocks that are cut off it afterwards) or a part. */
  readonly passes: readonly { readonly marks: readonly string[]; readonly length: number }[];
  readonly care: readonly string[];
}

/** A pass of the router along a groove. */
export interface GroovePass {
  readonly mark: string;
  /** Which groove, from the left edge of the visible face, from 1. */
  readonly groove: number;
  /** The edge against the fence. Left and right as the face is seen on the unit; the other one: the board turned end for end. */
  readonly against: 'left' | 'right';
  /**
   * Of a stopped groove: how far short of the lower and the upper end of the board, and how far from the cutter's centre a block stands that the
   * board begins at (behind its trailing end) and that it ends at (before its leading end).
   */
  readonly stops?: { readonly lower: number; readonly upper: number; readonly begin: number; readonly end: number };
}

/** All grooves that a fence, cutter and depth serve. */
export interface GrooveSetUp {
  readonly kind: 'groove';
  /** From the fence to the centre of the cutter. */
  readonly fence: number;
  readonly radius: number;
  readonly width: number;
  readonly depth: number;
  readonly passes: readonly GroovePass[];
}

/** Other work, as the parts say it. */
export interface WorkSetUp {
  readonly kind: 'work';
  readonly what: string;
  readonly marks: readonly string[];
}

export interface Settings {
  /** In the order of the work. */
  readonly sheets: readonly SawSetUp[];
  readonly profiles: readonly ProfileSetUp[];
  readonly lengths: readonly SawSetUp[];
  readonly bevels: readonly BevelSetUp[];
  readonly grooves: readonly GrooveSetUp[];
  readonly work: readonly WorkSetUp[];
  /** How often something must be set at the saws in this order; and sheet by sheet and bar by bar, cuts in the order in which the plan is drawn. */
  readonly moves: number;
  readonly movesAsDrawn: number;
  /** The usual cautions that go with it. */
  readonly cautions: readonly string[];
}
