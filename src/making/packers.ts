import { extentOf } from '../base/solid/extent';
import type { Packer } from '../vocabulary/making';
import type { Part } from '../vocabulary/part';
import type { Rod, RodRun } from '../vocabulary/rod';
import { MOST_GAP } from './contacts';
import type { Floor } from './floor';
import { lowestOf } from './order';
import type { Touching } from './touching';

/** Thinner than this no packer is put in (common practice, no source). */
const LEAST_PACKER = 0.5;
/** Something longer than this on the floor is packed under what stands on it, not in its middle. */
const LONGEST_POST = 200;
/** Where nothing stands on it, it is packed at its ends and no further apart than this (common practice, no source). */
const CENTRES = 600;

/**
 * A packer under every post that comes down to the floor: under each upright on a plate that lies there, and under posts and feet
 * themselves. Of the frame only: skin and mouldings are scribed, not packed.
 */
export function packersOf(parts: readonly Part[], rod: Rod, floor: Floor, touching: Touching): readonly Packer[] {
  const by = new Map(parts.map((p) => [p.mark, p]));
  const runs = new Map(rod.runs.map((run) => [run.id, run]));
  const down = parts.filter((p) => p.from === 'framed' && lowestOf(p) < MOST_GAP);
  const packers = down.flatMap((part): Packer[] => {
    const run = runs.get(part.run);
    if (!run) return [];
    return placesOf(part, run, by, touching).map(({ mark, x }) => {
      const thickness = floor.datum - floor.at(run, x);
      return { part: mark, run: run.id, x, thickness };
    });
  });
  const inRun = new Map(rod.runs.map((run, i) => [run.id, i]));
  return packers
    .filter(({ thickness }) => thickness > LEAST_PACKER)
    .sort((a, b) => (inRun.get(a.run) ?? 0) - (inRun.get(b.run) ?? 0) || a.x - b.x);
}

function placesOf(
  part: Part,
  run: RodRun,
  by: ReadonlyMap<string, Part>,
  touching: Touching,
): readonly { readonly mark: string; readonly x: number }[] {
  const [from, to] = alongRun(part, run);
  const long = Math.max(to - from, spread(part, run)) > LONGEST_POST;
  if (!long) return [{ mark: part.mark, x: (from + to) / 2 }];
  const [, top] = extentOf(part, [0, 0, 1]);
  const uprights = (touching.get(part.mark) ?? [])
    .flatMap((mark) => by.get(mark) ?? [])
    .filter((p) => p.from === 'framed' && Math.abs(p.place.along[2]) > 0.99 && lowestOf(p) > top - MOST_GAP);
  if (uprights.length > 0)
    return uprights.map((p) => {
      const [a, b] = alongRun(p, run);
      return { mark: p.mark, x: (a + b) / 2 };
    });
  const spaces = Math.max(1, Math.ceil((to - from) / CENTRES));
  return Array.from({ length: spaces + 1 }, (_, i) => ({ mark: part.mark, x: from + ((to - from) * i) / spaces }));
}

function alongRun(part: Part, { origin, along: [x, y] }: RodRun): readonly [number, number] {
  const at = origin[0] * x + origin[1] * y;
  const [from, to] = extentOf(part, [x, y, 0]);
  return [from - at, to - at];
}

const spread = (part: Part, { front }: RodRun): number => {
  const [from, to] = extentOf(part, [front[0], front[1], 0]);
  return to - from;
};
