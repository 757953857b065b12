import type { Place } from './geometry';
import type { Shape } from './shape';

/**
 * What an end looks like to the person at the saw, the piece lying on its back. Degrees. A mitre goes across the width, a bevel
 * through the thickness, a compound cut both ways. (A bevel is cut on edge by turning the saw instead of tilting the blade.)
 */
export interface EndCut {
  readonly kind: 'square' | 'mitre' | 'bevel' | 'compound';
  /** Between the cut and the longer side: 90 when square, half the corner when mitred. */
  readonly angleDeg: number;
  /** What the saw's mitre scale is turned to, from square. */
  readonly sawDeg: number;
  /** What the blade is tilted to, from upright. */
  readonly tiltDeg: number;
  /** Which side of the piece is the longer at this end: its face, its back, or an edge by the name it has on the unit; 'none' when square. */
  readonly longSide: string;
}

/** Work along an edge, in words and an angle or cutter. */
export interface EdgeWork {
  readonly edge: string;
  readonly work: 'bevelled' | 'moulded';
  readonly angleDeg?: number;
  readonly cutter?: string;
  /** After a bevel, whether the face or the back is the wider. */
  readonly longSide?: 'face' | 'back';
  /** The width of the back after a bevel, mm. */
  readonly backWidth?: number;
}

/** A groove along the length, set out on the visible face from its left edge. */
export interface GrooveWork {
  readonly centre: number;
  readonly width: number;
  readonly depth: number;
  /** Of the round cutter that leaves this width at this depth. */
  readonly radius: number;
  /** How far it stops short of the lower and of the upper end of the board, mm. Left out: it runs through. */
  readonly stops?: readonly [number, number];
}

/** How much of the unit is on: a part appears in the view from this stage on. */
export type BuildStage = 'framed' | 'clad' | 'finished';

/**
 * How a part is fixed to what it lies against. The making works out sizes and numbers from it by the rules in `making/fixings`.
 * `through`: mm of stuff the fixing goes through before it reaches the base.
 */
export interface Hold {
  readonly by: 'screw' | 'brad' | 'bolt' | 'dowel' | 'glue';
  readonly through: number;
  /** `ends`: `each` at each end; `length`: along it at `centres`; `sheet`: round its edges and wherever it crosses timber, at so much; `all`: `each` in all. */
  readonly where:
    | { readonly at: 'ends'; readonly each: number }
    | { readonly at: 'length'; readonly centres: number }
    | { readonly at: 'sheet'; readonly edges: number; readonly field: number }
    | { readonly at: 'all'; readonly each: number };
  /** It comes through a neighbour into this part, from below or from inside: it must not come out of its face. */
  readonly into?: 'itself';
  /** Into end grain: half as long again (a derating; from memory). */
  readonly endGrain?: boolean;
  readonly glue?: 'pva' | 'grab';
  /** Which rule this is and where it comes from. */
  readonly rule: string;
}

/** Stuff left on beyond the finished size, to be taken off in fitting. */
export interface Oversize {
  /** Which side of the part, by the name it has on the unit. */
  readonly side: string;
  readonly amount: number;
  /** Whether it lengthens the piece or widens it. */
  readonly on: 'length' | 'width';
  readonly reason: string;
  /** At the foot of the piece: what is scribed to the floor comes off it. */
  readonly below?: true;
}

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
  /** What its long edges are called on the unit: at across = 0, then at its width. Default lower and upper edge. */
  readonly edgeNames?: readonly [string, string];
  /** Its section in words, when it is neither a rectangle nor a stock moulding. */
  readonly section?: string;
  readonly grooves: readonly GrooveWork[];
  /** Which bay or row or side, for people: "bay 2, top". */
  readonly where: string;
  /** Pieces of one thing carry the same word, where a joiner may want them cut from one length: the members of a panel frame. */
  readonly set?: string;
  /** Always fitted on site, whether it crosses a join or not; else the joins decide. */
  readonly fit?: 'site';
  /** Mitred with the neighbour at that end of the run: on site where a join is there. */
  readonly meets?: 'left' | 'right' | 'both';
  /** Whether it is divided where a join is made; not said: all of frame and skin is, and nothing that is put on them. */
  readonly dividesAtJoins?: boolean;
  /** Of a stud: whether it stands only so that no two are further apart than the centres; in a shorter frame it may stand elsewhere, or not at all. */
  readonly byCentres?: boolean;
  readonly holds?: readonly Hold[];
  readonly oversize?: readonly Oversize[];
  /** Ironmongery that comes with it: hinges, stays, standards, each in words with its number. */
  readonly hardware?: readonly { readonly what: string; readonly count: number }[];
  /** Other work on it, in words with figures: "hole 60, centre 210 from the left end". Part of what makes parts alike. */
  readonly work?: readonly string[];
}

/** One thing to cut, and when it is fitted. */
export interface Part extends PartDraft {
  /** Stable name pencilled on the piece: run, code, number. */
  readonly mark: string;
  /** Exact overall size, long point to long point. Of a stick's two section sides the greater is the width, as timber is named. */
  readonly size: { readonly length: number; readonly width: number; readonly thickness: number };
  /** Rounded once to the job's step. */
  readonly shopLength: number;
  readonly shortPoint: number;
  readonly ends: readonly [EndCut, EndCut];
  readonly volumeMm3: number;
  readonly weightKg: number;
  /** Workshop-fitted parts leave the workshop on a section; site-fitted ones loose. */
  readonly fitted: 'workshop' | 'site';
  /** The section it leaves on; undefined for a site-fitted part. */
  readonly inSection?: string;
}

/** Parts that are cut alike: their marks in order, and one of them to speak for all. */
export interface Alike {
  readonly marks: readonly string[];
  readonly part: Part;
}
