import { alongFace } from '../base/along';
import { UP } from '../base/place';
import { extentOf } from '../base/solid/extent';
import type { Part } from '../vocabulary/part';
import type { Rod, RodRun } from '../vocabulary/rod';
import type { Join } from '../vocabulary/section';

/** How far from the stud's side nut, washer and spanner need that room, mm (common practice, no source). */
const BESIDE = 30;

/** Timber that ends at a bolted stud, where the nut would be. */
export interface InTheWay {
  readonly join: string;
  readonly run: string;
  readonly name: string;
  readonly low: number;
  readonly high: number;
}

/** A stud's side on which a nut or a head lies: x along the run, and towards which end its bay lies. */
interface Side {
  readonly run: RodRun;
  readonly x: number;
  readonly way: -1 | 1;
}

/**
 * Both studs' sides at a join within a run. At a corner the bolt goes from the bay of the run that stops there through its end stud, and
 * comes out in front of or behind the other's, where no noggin ends.
 */
export function sidesOf({ run: id, at, x }: Join, { runs, timber: { face } }: Rod): readonly Side[] {
  const run = runs.find((r) => r.id === id);
  if (!run || at === 'flap') return [];
  if (at === 'run')
    return [
      { run, x: x - face, way: -1 },
      { run, x: x + face, way: 1 },
    ];
  if (!run.right.through) return [{ run, x: run.right.frameAt - face, way: -1 }];
  const next = runs.find((r) => r.id === run.right.neighbour);
  return next ? [{ run: next, x: next.left.frameAt + face, way: 1 }] : [];
}

/** Framed timber that lies level: from where to where along its run, and its heights. */
interface Level {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
}

/** Framed timber that lies level, run by run: looked up once for all joins. */
export class Beside {
  private readonly known = new Map<string, readonly Level[]>();

  constructor(
    private readonly rod: Rod,
    private readonly parts: readonly Part[],
    private readonly room: number,
  ) {}

  of({ id }: Join, { run, x, way }: Side): readonly InTheWay[] {
    const [from, to] = way < 0 ? [x - BESIDE, x] : [x, x + BESIDE];
    return this.levelIn(run)
      .filter((part) => part.from < to - TOUCH && part.to > from + TOUCH)
      .map(({ name, low, high }) => ({ join: id, run: run.id, name, low, high }));
  }

  private levelIn(run: RodRun) {
    const known = this.known.get(run.id);
    if (known) return known;
    const middle = -this.rod.timber.depth / 2;
    const found: Level[] = [];
    for (const part of this.parts) {
      if (part.run !== run.id || part.from !== 'framed' || Math.abs(part.place.along[2]) >= 0.5) continue;
      const [back, front] = alongFace(part, { origin: run.origin, along: run.front });
      if (back > middle + this.room || front < middle - this.room) continue;
      const [from, to] = alongFace(part, run);
      const [low, high] = extentOf(part, UP);
      found.push({ name: part.name, from, to, low, high });
    }
    this.known.set(run.id, found);
    return found;
  }
}

/** What laps by less only touches, mm (common practice, no source). */
const TOUCH = 0.1;
