import { cover, nothing, type Reach } from '../base/reach';
import { cross2 } from '../base/vec';
import type { Vec2 } from '../vocabulary/geometry';
import type { RodRun } from '../vocabulary/rod';

/** The directions in plan in which boxes are asked for: along every run and out of it, parallel ones once. Length 1. */
export interface Compass {
  readonly directions: readonly Vec2[];
  /** The numbers of a run's own two among them. */
  readonly of: ReadonlyMap<RodRun, Own>;
}

interface Own {
  readonly along: number;
  readonly front: number;
}

/** Two directions with a smaller sine between them are one: over a unit of 30 m a box differs by some millionths of a millimetre. */
const PARALLEL = 1e-10;

export function compassOf(runs: readonly RodRun[]): Compass {
  const directions: Vec2[] = [];
  const numberOf = (direction: Vec2): number => {
    const known = directions.findIndex((other) => Math.abs(cross2(other, direction)) < PARALLEL);
    return known < 0 ? directions.push(direction) - 1 : known;
  };
  return {
    directions,
    of: new Map(runs.map((run) => [run, { along: numberOf(run.along), front: numberOf(run.front) }])),
  };
}

/** Throws for a run that the compass was not made for. */
export function ownOf({ of }: Compass, run: RodRun): Own {
  const own = of.get(run);
  if (!own) throw new Error(`the directions of run ${run.id} are not among the compass'`);
  return own;
}

/** The room that something takes: how far it reaches in each direction of the compass, and up. */
export interface Room {
  readonly reaches: readonly Reach[];
  readonly height: Reach;
}

export const isEmpty = ({ height }: Room): boolean => height.least > height.most;

/** Room that grows with what is put in. */
export class Growing implements Room {
  readonly reaches: readonly Reach[];
  readonly height = nothing();

  constructor(private readonly compass: Compass) {
    this.reaches = compass.directions.map(nothing);
  }

  /** A point in plan. */
  at(x: number, y: number): void {
    const { reaches } = this;
    const { directions } = this.compass;
    for (let k = 0; k < reaches.length; k++) {
      const far = x * directions[k][0] + y * directions[k][1];
      cover(reaches[k], far, far);
    }
  }

  /** The ends of a line across a run, from one offset of its frame line to another. */
  line({ origin, along, front }: RodRun, x: number, back: number, fore: number): void {
    const px = origin[0] + along[0] * x;
    const py = origin[1] + along[1] * x;
    this.at(px + front[0] * back, py + front[1] * back);
    this.at(px + front[0] * fore, py + front[1] * fore);
  }

  up(low: number, high: number): void {
    cover(this.height, low, high);
  }
}
