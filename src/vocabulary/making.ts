import type { Decision } from './field';

/** A block against which the frame is built: one for each different clear gap. */
export interface Spacer {
  /** Clear gap, exact; `shopLength` rounded once. */
  readonly length: number;
  readonly shopLength: number;
  /** Stock it is cut from: offcuts of the frame timber. */
  readonly stock: string;
  readonly times: number;
  /** Where it is used: "between studs, run A", "under noggins, run B". */
  readonly where: readonly string[];
}

/** One line of the fixings: which, how many, for what. `spare` is the allowance on top. */
export interface FixingLine {
  /** Id in the stock book where it has one that suits; undefined where it must be bought in. */
  readonly item?: string;
  readonly name: string;
  readonly unit: 'pieces' | 'g' | 'm of bead';
  readonly amount: number;
  readonly spare: number;
  /** Tubes, bottles or packs that hold amount and spare. */
  readonly packs: number;
  readonly rules: readonly string[];
}

/** The fixings of one part. */
export interface PartFixing {
  readonly part: string;
  readonly name: string;
  readonly item?: string;
  readonly amount: number;
  readonly unit: FixingLine['unit'];
  /** In words: "2 in each end", "at 200 along the edges, 300 in the field". */
  readonly how: string;
  readonly rule: string;
  /** Comes with the part and is bought as counted, without spare. */
  readonly ironmongery?: true;
}

export interface Fixings {
  readonly totals: readonly FixingLine[];
  readonly parts: readonly PartFixing[];
}

/** Timber behind the skin of one run: `from`–`to` in running measurement from the datum end, `low`–`high` above the floor. */
export interface TimberBehind {
  readonly part: string;
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
}

export interface FixingMap {
  readonly run: string;
  readonly name: string;
  readonly datum: 'left' | 'right';
  readonly timber: readonly TimberBehind[];
}

/** One step of putting it together. */
export interface Step {
  readonly number: number;
  readonly place: 'workshop' | 'dry fit' | 'site';
  /** What is done, in an imperative sentence. */
  readonly what: string;
  readonly section?: string;
  readonly parts: readonly string[];
}

/** Two parts that touch: `gap` mm between them (0 when faces meet). */
export interface Contact {
  readonly a: string;
  readonly b: string;
  readonly gap: number;
}

/** A packer under one post: where it stands, how thick, and the floor there. */
export interface Packer {
  readonly part: string;
  readonly run: string;
  readonly x: number;
  readonly thickness: number;
}

/** A line to scribe: along a wall or the floor. */
export interface Scribe {
  readonly where: string;
  readonly run: string;
  readonly length: number;
  /** The most that comes off, and what was left on for it. */
  readonly most: number;
  readonly left: number;
  /** Where along the run most comes off, when that is at one place. */
  readonly x?: number;
}

/** Existing skirting to notch over. */
export interface Notch {
  readonly where: string;
  readonly run: string;
  readonly parts: readonly string[];
  readonly height: number;
  readonly thickness: number;
}

/** What waits on site: packers, scribes, notches. */
export interface SiteWork {
  readonly packers: readonly Packer[];
  readonly scribes: readonly Scribe[];
  readonly notches: readonly Notch[];
  /** What had to be assumed, in words. */
  readonly notes?: readonly string[];
}

/** Everything worked out about the making of a design; nothing of it goes back into the design. */
export interface Making {
  readonly spacers: readonly Spacer[];
  readonly fixings: Fixings;
  readonly maps: readonly FixingMap[];
  readonly contacts: readonly Contact[];
  readonly steps: readonly Step[];
  readonly site: SiteWork;
}

/** One way to set out the frame, by how many different spacers it needs. */
export interface Layout {
  readonly spacers: number;
  readonly studs: number;
  readonly noggins: number;
  /** What has to be decided otherwise than now; none for the layout as it is. */
  readonly decisions: readonly { readonly kind: string; readonly key: string; readonly value: Decision }[];
}
