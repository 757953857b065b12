import { UP } from '../base/place';
import { extentOf } from '../base/solid/extent';
import type { Fixing } from '../vocabulary/book';
import type { Design } from '../vocabulary/design';
import type { Fixings, PartFixing } from '../vocabulary/making';
import type { Hold, Part } from '../vocabulary/part';
import type { Join } from '../vocabulary/section';
import { beadOn, PVA_G_PER_M2, tubOf } from './adhesives';
import { type Around, aroundOf, type Bearing, bearingsOf, stuffBeyond } from './behind';
import { countOfHold } from './fixing-counts';
import { boltFor, chosenFor } from './fixing-sizes';
import { totalsOf } from './fixing-totals';
import type { Touching } from './touching';

/** Which fixings hold which part, by the holds that its room says, and what there is to buy. */
export function fixingsOf(made: Pick<Design, 'job' | 'rod' | 'parts' | 'joins'>, touching: Touching): Fixings {
  const book = made.job.stock.fixings;
  const around = aroundOf(made.parts, touching);
  const number = new Map(made.parts.map((p, i) => [p.mark, i]));
  const parts = [
    ...made.parts.flatMap((part) => {
      const isBefore = (other: Part): boolean => (number.get(other.mark) ?? 0) < (number.get(part.mark) ?? 0);
      return ofPart(part, around, isBefore, book);
    }),
    ...made.joins.flatMap((join) => ofJoin(join, made, book)),
  ];
  return { totals: totalsOf(parts, book), parts };
}

function ofPart(
  part: Part,
  around: Around,
  isBefore: (other: Part) => boolean,
  book: readonly Fixing[],
): readonly PartFixing[] {
  const { holds = [], hardware = [] } = part;
  const bearings = holds.length > 0 ? bearingsOf(part, around, isBefore) : [];
  const glued = new Set<string>();
  return [
    ...holds.flatMap((hold) => {
      const fixing = hold.by === 'glue' ? undefined : fixed(part, hold, bearings, around, book);
      const lines = fixing ? [fixing.line] : [];
      const glue = hold.glue ?? (!fixing || fixing.glued ? 'pva' : undefined);
      if (glue && !glued.has(glue)) lines.push(adhesive(part, hold, glue, bearings, book));
      if (glue) glued.add(glue);
      return lines;
    }),
    ...hardware.map(
      ({ what, count }): PartFixing => ({
        part: part.mark,
        name: what,
        amount: count,
        unit: 'pieces',
        how: 'comes with it',
        rule: 'ironmongery, from its room',
        ironmongery: true,
      }),
    ),
  ];
}

/** The screws, brads, bolts or dowels of one hold, and whether they need glue. */
function fixed(
  part: Part,
  hold: Hold,
  bearings: readonly Bearing[],
  around: Around,
  book: readonly Fixing[],
): { readonly line: PartFixing; readonly glued: boolean } {
  const beyond = beyondOf(part, hold, around);
  const { item, name, rule, work, none, glued = false } = chosenFor(hold, beyond, book);
  const counted = countOfHold(hold, part, bearings);
  const { amount, how } = none ? { amount: 0, how: 'none' } : counted;
  const line: PartFixing = {
    part: part.mark,
    name,
    ...(item ? { item: item.id } : {}),
    amount,
    unit: 'pieces',
    how: work && amount > 0 ? `${how}, ${work}` : how,
    rule: `${hold.rule}; ${rule}`,
  };
  return { line, glued: glued && counted.amount > 0 };
}

/** Under a face that is seen at least this much stays whole over a screw's point, mm (common practice, no source). */
const LEAST_OVER_POINT = 5;

/** How much stuff a fixing may go into before it comes out again; undefined where there is enough, or it can't be told. */
function beyondOf(part: Part, { where, endGrain, into, through }: Hold, around: Around): number | undefined {
  // Screws through a neighbour into an end, or skewed, go in along the piece: there is stuff enough.
  if (where.at === 'ends' || endGrain) return undefined;
  if (into === 'itself') return thicknessAhead(part) - LEAST_OVER_POINT;
  return stuffBeyond(part, through, around);
}

/** How thick a part is the way a screw goes that comes from below or from inside: a board through its thickness, a rail upward. mm. */
function thicknessAhead(part: Part): number {
  if (part.shape.kind === 'board') return part.size.thickness;
  const [low, high] = extentOf(part, UP);
  return high - low;
}

function adhesive(
  part: Part,
  hold: Hold,
  glue: 'pva' | 'grab',
  bearings: readonly Bearing[],
  book: readonly Fixing[],
): PartFixing {
  const tub = tubOf(glue, book);
  const { length, width, thickness } = part.size;
  const common = { part: part.mark, ...(tub ? { item: tub.item.id } : {}) };
  if (glue === 'grab') {
    const name = tub?.item.name ?? 'Grab adhesive, to be bought';
    const onTimber = hold.where.at === 'sheet' && bearings.length > 0;
    const amount = onTimber ? bearings.reduce((sum, b) => sum + b.length, 0) / 1000 : beadOn(length, width);
    const how = onTimber ? 'a bead on each timber' : 'beads along it, no more than 150 apart';
    return { ...common, name, unit: 'm of bead', amount, how, rule: '6 mm bead (computed from the bead’s section)' };
  }
  const name = tub?.item.name ?? 'PVA wood glue, to be bought';
  const bearing = bearings.reduce((sum, b) => sum + b.length * b.width, 0);
  const area = hold.where.at === 'ends' ? 2 * width * thickness : bearing > 0 ? bearing : length * width;
  const how =
    hold.where.at === 'ends' ? 'on both ends' : bearing > 0 ? 'where it lies on what is there' : 'on its back';
  return {
    ...common,
    name,
    unit: 'g',
    amount: (area * PVA_G_PER_M2) / 1e6,
    how,
    rule: `PVA ${PVA_G_PER_M2} g/m², of 120–200 (data sheets, from memory)`,
  };
}

/** The bolts of a join: through both end studs; at a corner through one stud and the depth of the other. */
function ofJoin({ id, at, bolts }: Join, { rod }: Pick<Design, 'rod'>, book: readonly Fixing[]): readonly PartFixing[] {
  if (bolts.length === 0) return [];
  const { face, depth } = rod.timber;
  const { item, name, rule } = boltFor(at === 'corner' ? face + depth : 2 * face, book);
  return [
    {
      part: id,
      name,
      ...(item ? { item: item.id } : {}),
      amount: bolts.length,
      unit: 'pieces',
      how: `through the studs at ${bolts.join(', ')} above the floor`,
      rule,
    },
  ];
}
