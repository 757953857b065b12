import type { Part } from '../vocabulary/part';
import { bodyOf, boxesApart, shadow } from './bodies';
import { liesTo } from './boxes';
import { MOST_GAP } from './contacts';
import type { Touching } from './touching';

/** What touches each part, by its mark. */
export type Around = ReadonlyMap<string, readonly Part[]>;

/** What touches each of some parts. */
export function aroundOf(parts: readonly Part[], touching: Touching): Around {
  const by = new Map(parts.map((p) => [p.mark, p]));
  return new Map([...touching].map(([mark, others]) => [mark, others.flatMap((other) => by.get(other) ?? [])]));
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= MOST_GAP + 0.1;

const touched = (around: Around, part: Part): readonly Part[] => around.get(part.mark) ?? [];

/** Whether two parts stand together when they are fixed: not where they leave the workshop on different sections. */
const together = (a: Part, b: Part): boolean =>
  a.inSection === b.inSection || a.inSection === undefined || b.inSection === undefined;

/**
 * How much stuff there is beyond the first `through` mm, as far as it can be told: what a fixing may go into before it comes out again.
 * From the face of the part backward, through what touches one behind the other. What stands in the next section, across a join, is not
 * counted. Undefined where nothing lies there.
 */
export function stuffBeyond(part: Part, through: number, around: Around): number | undefined {
  const [back, face] = bodyOf(part).reach[2];
  const start = face - through;
  const first = touched(around, part);
  const skin = first.filter((other) => liesBehind(part, other, back));
  const bases = near(start, back) ? skin : skin.flatMap((layer) => layersBehind(part, layer, around, start));
  if (bases.length === 0) return undefined;
  const ends = bases.flatMap((base) => {
    const end = liesTo(part, base).from[2];
    return [end, ...layersBehind(part, base, around, end).map((next) => liesTo(part, next).from[2])];
  });
  return start - Math.min(...ends);
}

/** What touches a layer and lies behind the part, its face at `level`. */
const layersBehind = (part: Part, layer: Part, around: Around, level: number): readonly Part[] =>
  touched(around, layer).filter((other) => other !== part && together(layer, other) && liesBehind(part, other, level));

/** Whether a part lies over another with its face at `level`, by more than an arris. */
function liesBehind(part: Part, other: Part, level: number): boolean {
  const body = bodyOf(other);
  if (!together(part, other)) return false;
  if (boxesApart(bodyOf(part).box, body.box, SKIN) || !near(shadow(body, part.place.out)[1], level)) return false;
  const { over } = liesTo(part, other);
  return over[0] > 1 && over[1] > 1;
}

/** No layers between a part and what it is fixed to are thicker than this, mm: only to look no further than needed. */
const SKIN = 150;

/** Where a part lies on what was there before it: the sides of each overlap, longer first, mm, and how far its middle is from the part's edges. */
export interface Bearing {
  readonly length: number;
  readonly width: number;
  readonly fromEdge: number;
}

/** Where a part lies with its back on parts that are there before it. Boxes round both, so an estimate where they lie askew. */
export function bearingsOf(part: Part, around: Around, isBefore: (other: Part) => boolean): readonly Bearing[] {
  const [[a0, a1], [b0, b1], [back]] = bodyOf(part).reach;
  return touched(around, part)
    .filter(isBefore)
    .flatMap((other): Bearing[] => {
      const { over, from, to } = liesTo(part, other);
      if (!near(to[2], back) || over[0] <= 0 || over[1] <= 0) return [];
      const isAlong = over[0] >= over[1];
      const middle = isAlong ? middleOf(b0, b1, from[1], to[1]) : middleOf(a0, a1, from[0], to[0]);
      const fromEdge = isAlong ? Math.min(middle - b0, b1 - middle) : Math.min(middle - a0, a1 - middle);
      return [{ length: Math.max(over[0], over[1]), width: Math.min(over[0], over[1]), fromEdge }];
    });
}

const middleOf = (a: number, b: number, from: number, to: number): number => (Math.max(a, from) + Math.min(b, to)) / 2;
