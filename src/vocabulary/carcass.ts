import type { SaidOfBay } from './rod';

/** The frame behind the front, on the side of those who serve. Offsets d from the front frame's face, negative behind it; heights above the floor. */
export interface Carcass {
  /** Timber of cross frames, posts and rails; `face` along the run, `depth` the other way. */
  readonly stock: string;
  readonly face: number;
  readonly depth: number;
  /** Where it begins, the back of the front frame, and the rear face of its rear posts. */
  readonly front: number;
  readonly back: number;
  /** Underside of its bottom rails and upper side of its top rails: under the top, or under a worktop that reaches further back than the top. */
  readonly low: number;
  readonly high: number;
  /** Recess for toes at the back, below `low`: the feet stand this far in from the posts' rear face. 0: none, the posts stand on the floor. */
  readonly toeDepth: number;
  /** Whether rails run from post to post at the back. */
  readonly rearRail: boolean;
  /** A worktop lower than the top. */
  readonly worktop?: CarcassWorktop;
}

/** A worktop on rails of the carcass: its upper face, its thickness, where its rear edge lies (d). It is notched round posts that it reaches. */
export interface CarcassWorktop {
  /** Its height was refused: what stands behind is set out for the nearest that would do, and the worktop is not made. */
  readonly leftOut?: true;
  readonly stock: string;
  readonly high: number;
  readonly thickness: number;
  readonly edge: number;
}

/** A cross frame stands here, from the front frame to the rear post. */
export interface CrossLine {
  readonly from: number;
  readonly to: number;
  readonly why: 'end' | 'join' | 'bay';
}

/** The space between two cross frames, with what the job says of the bay in front of it. x along the run. */
export interface BackBay {
  readonly index: number;
  readonly from: number;
  readonly to: number;
  /** Bay of the front (its index) that it lies behind, where there is one. */
  readonly bay?: number;
  readonly wish?: SaidOfBay;
  /** Clear at the back: from the bottom rail (the floor, where none runs there) to the rail under the top, or under the worktop. */
  readonly low: number;
  readonly high: number;
}
