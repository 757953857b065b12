import { alongFace } from '../base/along';
import { extentOf } from '../base/solid/extent';
import { dot } from '../base/vec';
import type { Packer } from '../vocabulary/making';
import type { Part } from '../vocabulary/part';
import type { Rod, RodRun } from '../vocabulary/rod';
import { bodyOf } from './bodies';
import { liesTo } from './boxes';
import { MOST_GAP } from './contacts';
import type { Floor } from './floor';
import { lowestOf } from './order';
import type { Touching } from './touching';

/** Thinner than this no packer is put in (common practice, no source). */
const LEAST_PACKER = 0.5;
/** No two posts are further apart than this without a packer between them, mm (common practice, no source). */
const CENTRES = 600;

/**
 * A packer under every upright that comes down to the floor, itself or by what lies there under it: studs on their plate, posts, feet. A
 * rail from post to post is carried at its ends, and packed between them only where it is long. Of the frame only: skin and mouldings are
 * scribed, not packed.
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

interface Place {
  readonly mark: string;
  readonly x: number;
}

function placesOf(part: Part, run: RodRun, by: ReadonlyMap<string, Part>, touching: Touching): readonly Place[] {
  const middle = (p: Part): Place => {
    const [from, to] = alongFace(p, run);
    return { mark: p.mark, x: (from + to) / 2 };
  };
  if (isUpright(part)) return [middle(part)];
  const framed = (p: Part): readonly Part[] =>
    (touching.get(p.mark) ?? []).flatMap((mark) => by.get(mark) ?? []).filter((other) => other.from === 'framed');
  const onTop = framed(part).filter((p) => standsOn(p, part));
  // A plate on a kick board: what stands on the plate is carried by both.
  const uprights = [...onTop, ...onTop.flatMap((p) => framed(p).filter((q) => standsOn(q, p)))].filter(isUpright);
  if (uprights.length > 0) return [...new Set(uprights)].map(middle);
  return betweenPosts(part, run, framed(part));
}

/** Where a piece that lies on the floor is packed: where nothing carries its end, and between its ends where it is long. */
function betweenPosts(part: Part, run: RodRun, framed: readonly Part[]): readonly Place[] {
  const [from, to] = bodyOf(part).reach[0];
  const ends = framed.map((other) => liesTo(part, other));
  const carried = [
    ends.some((other) => other.to[0] <= from + MOST_GAP),
    ends.some((other) => other.from[0] >= to - MOST_GAP),
  ];
  const spaces = Math.max(1, Math.ceil((to - from) / CENTRES - 1e-9));
  const share = Array.from({ length: spaces + 1 }, (_, i) => i / spaces);
  const [left, right] = alongFace(part, run);
  // Across the run it is all at one place along it.
  const way = dot(part.place.along, [run.along[0], run.along[1], 0]);
  const at = (t: number): number =>
    Math.abs(way) < 0.5 ? (left + right) / 2 : left + (right - left) * (way > 0 ? t : 1 - t);
  return share
    .filter((t) => (t === 0 ? !carried[0] : t === 1 ? !carried[1] : true))
    .map((t) => ({ mark: part.mark, x: at(t) }));
}

const isUpright = ({ place }: Part): boolean => Math.abs(place.along[2]) > 0.99;

const standsOn = (part: Part, other: Part): boolean =>
  Math.abs(lowestOf(part) - extentOf(other, [0, 0, 1])[1]) <= MOST_GAP;
