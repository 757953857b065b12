import type { Vec3 } from './geometry';

/** One rule that a section breaks: what it is, the number found and the number allowed (mm or kg, as the words say). */
export interface Breach {
  readonly what: string;
  readonly value: number;
  readonly limit: number;
  readonly source: string;
  /** Whether more sections could cure it: length and weight, but no section gets lower by being cut. */
  readonly byCutting: boolean;
}

/** What is carried in one piece: the workshop-fitted parts between joins. */
export interface Section {
  /** S1, S2 … from left to right. */
  readonly id: string;
  /** The pieces of runs it is made of: x along the frame line. */
  readonly pieces: readonly { readonly run: string; readonly from: number; readonly to: number }[];
  /** Marks of its parts. */
  readonly parts: readonly string[];
  /** Box it stands in, along its longest run. */
  readonly size: { readonly length: number; readonly depth: number; readonly height: number };
  readonly weightKg: number;
  readonly centreOfGravity: Vec3;
  /** Where hands or straps take it, as much on one side of the centre of gravity as on the other. */
  readonly liftingPoints: readonly Vec3[];
  readonly breaches: readonly Breach[];
}

/** Where two sections meet. */
export interface Join {
  /** J1, J2 … from left to right. */
  readonly id: string;
  readonly run: string;
  /** Along the run; at a corner the end of its frame line. */
  readonly x: number;
  readonly at: 'run' | 'corner' | 'flap';
  readonly behind: 'pillar' | 'cover' | 'corner' | 'gap';
  readonly sections: readonly [string, string];
  /** Heights of the bolts through the two studs, above the floor. None at a flap. */
  readonly bolts: readonly number[];
}
