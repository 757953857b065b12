import type { BackBay, Carcass, CrossLine } from './carcass';
import type { Finding } from './finding';
import type { Vec2 } from './geometry';
import type { BayWish, Rhythm } from './job';

/** A face line at an offset from the frame line: `inner` its back, `outer` its face, mm outward from the frame's face. */
export interface Layer {
  readonly name: string;
  readonly inner: number;
  readonly outer: number;
}

/** The timber of the frame: `face` in the plane of the front, `depth` behind it. */
export interface FrameTimber {
  readonly stock: string;
  readonly face: number;
  readonly depth: number;
  readonly centres: number;
  readonly method: 'module' | 'equal';
  readonly datum: 'left' | 'right';
  readonly nogginRows: number;
}

/** What a room's decisions mean for the setting-out; every part optional. */
export interface Demands {
  /** A layer lying on another (`on`, default the frame) with a thickness, or with its outer face at a stated offset. */
  readonly layer?:
    | { readonly name: string; readonly on?: string; readonly thickness: number }
    | { readonly name: string; readonly outer: number };
  readonly timber?: FrameTimber;
  /** Pillars stand on the face of `layer`. */
  readonly pillars?: {
    readonly layer: string;
    readonly width: number;
    readonly cornerWidth: number;
    readonly rhythm: Rhythm;
    /** Whether pillars stand at corners; where not, bays run into the corner. */
    readonly atCorners: boolean;
  };
  /** Height at which the front frame stands on something else (a kicked plinth); 0 when it stands on the floor. */
  readonly frameLow?: number;
  /** How much wider than the pillar its foot is, on each side. */
  readonly footOverhang?: number;
  /** The one layer that runs on past a free end. */
  readonly top?: {
    readonly layer: string;
    readonly thickness: number;
    readonly overhang: number;
    readonly endOverhang: number;
    /** Hardwood it is made of, and the cutter along its front edge, where it says so: a flap is of the same. */
    readonly stock?: string;
    readonly edge?: string;
    /** Its corners are butted where they turn enough, not mitred. */
    readonly butted?: boolean;
    /** How much is enough, degrees either way; not said: none is butted. */
    readonly leastButtedDeg?: number;
  };
  /** The frame behind the front; `setBack`: how far its rear face stays in front of the back edge of the top. */
  readonly carcass?: {
    readonly stock: string;
    readonly face: number;
    readonly depth: number;
    readonly setBack: number;
    /** A cross frame at every bay line, or at ends and joins only. */
    readonly lines: 'bays' | 'ends';
    readonly toeHeight: number;
    readonly toeDepth: number;
    /** Rails from post to post at the back. */
    readonly rearRail: boolean;
  };
  /** A worktop lower than the top: its upper face, how far back it reaches from the back of the front frame, and beyond posts that stop under it. */
  readonly worktop?: {
    readonly stock: string;
    readonly high: number;
    readonly thickness: number;
    readonly depth: number;
    readonly behind: number;
  };
  /**
   * Named heights above the floor, for other rooms to work to; and a few sizes beside them. `plinth`: where pillars begin. `plinthRuns`: 1 when
   * a plinth runs along the whole foot, so that nothing else lies there. `baseHeight`, `capHeight`, `baseOverhang`, `capOverhang`: of what
   * stands at the foot and the head of a pillar, and how far it stands into a bay. `skirting`: upper edge of the skirting. `underTop`: height of
   * the moulding under the top. `footBracket`: upper edge of a foot rail's brackets.
   */
  readonly heights?: Readonly<Record<string, number>>;
}

/** One end of a run. At offset d from the frame line the run reaches `grows`·d beyond its frame-line end (negative: falls short). */
export interface RunEnd {
  readonly kind: 'wall' | 'free' | 'corner';
  /** Signed deflection of the corner, degrees; 0 where there is none. */
  readonly deflectionDeg: number;
  /** tan(deflection/2): the corner rule. 0 where there is no corner. */
  readonly grows: number;
  /** The run on the other side of the corner. */
  readonly neighbour?: string;
  /** Whether this run's frame goes through at the corner. */
  readonly through: boolean;
  /** Where the frame is cut square, mm along the run from its left frame-line end. */
  readonly frameAt: number;
  /** Square corner with a generated return: the top is not mitred here but covers it. */
  readonly toReturn: boolean;
  /** How far the top goes beyond the frame-line end here, where it is not mitred. */
  readonly topBeyond: number;
  /** At a wall: how much is left on to be scribed to it; else 0. */
  readonly scribe: number;
  /** A flap hangs here, between this run and `neighbour`; the end itself is free. */
  readonly flap: boolean;
}

/** A pillar's place on the face of the front: `from`–`to` along the run, at the pillar layer's outer face. */
export interface PillarMark {
  readonly index: number;
  readonly from: number;
  readonly to: number;
  readonly centre: number;
  readonly where: 'left' | 'between' | 'right';
  /** Mitred along its length with the neighbour's board. */
  readonly mitred: boolean;
  /** Where its foot ends towards a bay; towards an end of the run the foot goes as far as the pillar's layer rule says. */
  readonly footFrom: number;
  readonly footTo: number;
}

/** What the job says of a bay, and where in the job. */
export interface SaidOfBay extends BayWish {
  readonly path: string;
}

/** The space between two pillars, at the face of the front. */
export interface Bay {
  readonly index: number;
  readonly from: number;
  readonly to: number;
  /** Between the feet of the pillars. */
  readonly footFrom: number;
  readonly footTo: number;
  /** Where it runs into a corner without a pillar: what lies along it is mitred there. */
  readonly mitredLeft: boolean;
  readonly mitredRight: boolean;
  /** Panel frames on its front. */
  readonly panels: boolean;
  /** What the job says of this bay, if anything. */
  readonly wish?: SaidOfBay;
}

/** A join across a run: two sections meet at x. `behind` what covers it; a cover piece lies from `coverFrom` to `coverTo`. */
export interface RunJoin {
  readonly id: string;
  readonly x: number;
  readonly behind: 'pillar' | 'cover';
  readonly coverFrom: number;
  readonly coverTo: number;
  /** Where the job marks it; not said of one that was worked out. */
  readonly path?: string;
}

/** A flap's gap in the counter, in its left-hand run's coordinates: from the end of that run's frame to the next run's. */
export interface FlapGap {
  readonly left: string;
  readonly right: string;
  readonly width: number;
  readonly hinge: 'left' | 'right';
  readonly gate: boolean;
}

/** A position on the rod, with its reason. Lane: where on the rod it is drawn. `x` from the run's datum, its left frame-line end. */
export interface Mark {
  readonly id: string;
  readonly x: number;
  readonly lane: 'front' | 'skin' | 'timber' | 'behind';
  readonly reason: string;
  readonly part?: string;
}

export interface RodRun {
  readonly id: string;
  readonly name: string;
  /** Index into the job's runs; null for a return, which an end condition made. */
  readonly jobIndex: number | null;
  /** Plan position of the left end of the frame line, and directions: along it, and outward from its face. */
  readonly origin: Vec2;
  readonly along: Vec2;
  readonly front: Vec2;
  /** Length of the frame line. */
  readonly length: number;
  readonly left: RunEnd;
  readonly right: RunEnd;
  readonly pillars: readonly PillarMark[];
  readonly bays: readonly Bay[];
  /** Cross frames behind it, and the spaces between them, from left to right; none without a carcass. */
  readonly crossLines: readonly CrossLine[];
  readonly backBays: readonly BackBay[];
  /** Joins across it, from left to right. */
  readonly joins: readonly RunJoin[];
  /** Id of the join at its right-hand corner or flap, where two sections meet there. */
  readonly joinAtRight?: string;
  /** Ids of the sections that its pieces belong to, from left to right: one more than its joins. */
  readonly sections: readonly string[];
  /** False when the run has no length left after its corners: nothing is made for it, and a finding says so. */
  readonly sound: boolean;
}

/** The setting-out, as on the joiner's full-size board. */
export interface Rod {
  readonly runs: readonly RodRun[];
  readonly layers: Readonly<Record<string, Layer>>;
  readonly heights: Readonly<Record<string, number>>;
  readonly timber: FrameTimber;
  /** Height of the frame: floor to the underside of the top. */
  readonly frameHeight: number;
  /** Where the front frame begins, above the floor. */
  readonly frameLow: number;
  readonly carcass?: Carcass;
  readonly flaps: readonly FlapGap[];
  readonly height: number;
  readonly depth: number;
  readonly top: {
    readonly layer: string;
    readonly thickness: number;
    readonly overhang: number;
    readonly endOverhang: number;
    /** Hardwood it is made of, and the cutter along its front edge, where it says so: a flap is of the same. */
    readonly stock?: string;
    readonly edge?: string;
    /** Its corners are butted where they turn enough, not mitred. */
    readonly butted?: boolean;
    /** How much is enough, degrees either way; not said: none is butted. */
    readonly leastButtedDeg?: number;
  };
  readonly findings: readonly Finding[];
}
