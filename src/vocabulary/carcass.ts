import type { BayWish } from './job';

/** The frame behind the front, on the side of those who serve. Offsets d from the front frame's face, negative behind it; heights above the floor. */
export interface Carcass {
  /** Timber of cross frames, posts and rails; `face` along the run, `depth` the other way. */
  readonly stock: string;
  readonly face: number;
  readonly depth: number;
  /** Where it begins, the back of the front frame, and the rear face of its rear posts. */
  readonly front: number;
  readonly back: number;
  /** Underside of its bottom rails and upper side of its top rails. */
  readonly low: number;
  readonly high: number;
  /** Recess for toes at the back: `low` is its height. Depth 0: none. */
  readonly toeDepth: number;
  /** A worktop lower than the top: its upper face, its thickness. */
  readonly worktop?: { readonly stock: string; readonly high: number; readonly thickness: number };
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
  readonly wish?: BayWish;
  /** Clear between bottom and top rails, or under the worktop. */
  readonly low: number;
  readonly high: number;
}
