import type { Opening } from './job';

/** Something on the front or in the top that an opening must not meet. x along the run, z above the floor (top: back from the front edge). */
export interface Obstacle {
  readonly run: string;
  readonly through: Opening['through'];
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  /** In words: "pillar 2", "panel frame in bay 1". */
  readonly what: string;
  /** How far an opening stays from it, all round; not said: it may touch it. */
  readonly clear?: number;
}

/** An opening that has its place. `index` into the job's openings. */
export interface PlacedOpening {
  readonly index: number;
  readonly name: string;
  readonly run: string;
  readonly through: Opening['through'];
  readonly use: Opening['use'];
  readonly round: boolean;
  readonly from: number;
  readonly to: number;
  /** Front: above the floor. Top: back from the front edge. */
  readonly low: number;
  readonly high: number;
}
