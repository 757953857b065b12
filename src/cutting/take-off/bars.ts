import { boundsOf } from '../../base/outline';
import type { Hardwood, Moulding, Timber } from '../../vocabulary/book';
import type { CutBatch, Offcut } from '../../vocabulary/cut-plan';
import type { BarPiece, BarProblem, BarStock, Slant } from '../../vocabulary/cut-problem';
import type { Finding } from '../../vocabulary/finding';
import type { Job } from '../../vocabulary/job';
import type { Part } from '../../vocabulary/part';
import { lyingInBar } from './ends';
import { merged, type Wanted } from './merged';
import { fits, hundredth, leftOn, within } from './sawn';
import { barsFor, sidesOf, stripOf } from './sides';
import { barStock, blankStock, type Stocked } from './stock';
import { longerThanBar, longerThanBlank, notFromOne } from './too-large';
import { ALL_TURNS, turnsOf } from './turns';

/** What is taken off for one stuff, and what must be said of it. */
export interface Taken {
  readonly batch?: CutBatch;
  readonly findings: readonly Finding[];
}

type Piece = Omit<BarPiece, 'name' | 'quantity'>;

/** One part's piece, as often as it takes. */
interface Cut {
  readonly part: Part;
  readonly copies: number;
  readonly piece: Piece;
}

/** Parts of timber, which may lie on their edge in the bar; large fillets are glued up. */
export function timberBars(
  item: Timber,
  parts: readonly Part[],
  offcuts: readonly Offcut[],
  { cutting, tools }: Job,
): Taken {
  const cuts = parts.map((part): Cut => {
    const { across, out } = sidesOf(part);
    return { part, copies: barsFor(part, item), piece: lyingInBar(part, across < out) };
  });
  const frame = {
    kerf: tools.mitreSawKerf,
    trim: cutting.barTrim,
    section: { width: item.width, thickness: item.thickness, turns: ALL_TURNS },
    leastOffcut: cutting.leastBar,
  };
  const stocked = barStock(item, offcuts, cutting);
  return taken(item.id, item.name, frame, stocked, cuts, (part, length, most) =>
    longerThanBar(part, length, most, item),
  );
}

/** Parts of a moulding, which lie in the bar as they are; the members of a frame from one bar, where it is wished. */
export function mouldingBars(
  item: Moulding,
  parts: readonly Part[],
  offcuts: readonly Offcut[],
  { cutting, tools }: Job,
): Taken {
  const { min, max } = boundsOf(item.section);
  const frame = {
    kerf: tools.mitreSawKerf,
    trim: cutting.barTrim,
    section: {
      width: hundredth(max[0] - min[0]),
      thickness: hundredth(max[1] - min[1]),
      turns: turnsOf(item.section),
    },
    leastOffcut: cutting.leastBar,
  };
  const stocked = barStock(item, offcuts, cutting);
  const cuts = parts.map((part): Cut => ({ part, copies: 1, piece: lyingInBar(part, false) }));
  const most = mostOf(stocked.stock, frame.trim);
  const bound = cutting.framesTogether ? together(cuts, frame.kerf, most) : { cuts, tooLong: [] };
  const made = taken(item.id, item.name, frame, stocked, bound.cuts, (part, length, limit) =>
    longerThanBar(part, length, limit, item),
  );
  const notes = bound.tooLong.map(({ set, length }) => notFromOne(set, length, most, item));
  return { ...made, findings: [...made.findings, ...notes] };
}

/** Parts of hardwood of one width, each from a blank made up to it. Only with `eitherFace` may a piece be turned over. */
export function blankBars(
  item: Hardwood,
  width: number,
  parts: readonly Part[],
  offcuts: readonly Offcut[],
  { cutting, tools }: Job,
): Taken {
  const cuts = parts.map((part): Cut => {
    const { layers, onEdge } = stripOf(part, item.thickness);
    return { part, copies: layers, piece: lyingInBar(part, onEdge) };
  });
  const frame = {
    kerf: tools.sawKerf,
    // A blank is made up with square ends.
    trim: 0,
    section: {
      width,
      thickness: item.thickness,
      turns: cutting.eitherFace ? ALL_TURNS : (['swung'] as const),
    },
    leastOffcut: cutting.leastBar,
  };
  const stocked = blankStock(item, item.id, width, offcuts, cutting);
  const made = taken(`${item.id}:${width}`, `${item.name}, ${width} wide`, frame, stocked, cuts, (part, length, most) =>
    longerThanBlank(part, length, most, item),
  );
  // Its kerf is that of the panel saw.
  return { ...made, batch: made.batch && { ...made.batch, saw: 'panel saw' } };
}

/** How wide the blank is from which a part of hardwood is cut. */
export const blankWidth = (part: Part, { thickness }: Hardwood): number =>
  hundredth(stripOf(part, thickness).width + leftOn(part).width);

/** The longest piece that any of the stock gives. */
const mostOf = (stock: readonly BarStock[], trim: number): number =>
  Math.max(...stock.map((one) => within(one.length, one.trim ?? trim)));

function taken(
  id: string,
  name: string,
  frame: Omit<BarProblem, 'kind' | 'stock' | 'pieces'>,
  { stock, from }: Stocked<BarStock>,
  cuts: readonly Cut[],
  tooLong: (part: Part, length: number, most: number) => Finding,
): Taken {
  const most = mostOf(stock, frame.trim);
  const findings = cuts.flatMap(({ part, piece }) =>
    fits(piece.length, most) ? [] : [tooLong(part, piece.length, most)],
  );
  const wanted = cuts
    .filter(({ piece }) => fits(piece.length, most))
    .flatMap(({ part, copies, piece }) =>
      Array.from({ length: copies }, (): Wanted<Piece> => ({ piece, names: [part.name], marks: [part.mark] })),
    );
  if (wanted.length === 0) return { findings };
  const { pieces, marks } = merged(wanted);
  return { batch: { id, name, problem: { kind: 'bars', ...frame, stock, pieces }, marks, from }, findings };
}

interface TooLong {
  readonly set: readonly Part[];
  readonly length: number;
}

/**
 * Binds the members of each set to one bar. Laid end to end with whole saw cuts between them they must fit the longest: mitred members may
 * lie closer, but a moulding's seldom do.
 */
function together(
  cuts: readonly Cut[],
  kerf: number,
  most: number,
): { readonly cuts: readonly Cut[]; readonly tooLong: readonly TooLong[] } {
  const sets = new Map<string, Cut[]>();
  for (const cut of cuts) {
    const { set } = cut.part;
    if (set === undefined || !fits(cut.piece.length, most)) continue;
    const members = sets.get(set);
    if (members) members.push(cut);
    else sets.set(set, [cut]);
  }
  const lengths = new Map(
    [...sets].map(([set, members]) => {
      const steepest = Math.max(0, ...members.flatMap(({ piece }) => piece.ends?.map(slope) ?? []));
      const sawn = (members.length - 1) * kerf * Math.hypot(1, steepest);
      return [set, members.reduce((sum, { piece }) => sum + piece.length, 0) + sawn] as const;
    }),
  );
  const fitting = (set: string | undefined): set is string =>
    set !== undefined && fits(lengths.get(set) ?? Infinity, most);
  return {
    cuts: cuts.map((cut) =>
      fitting(cut.part.set) ? { ...cut, piece: { ...cut.piece, together: cut.part.set } } : cut,
    ),
    tooLong: [...sets].flatMap(([set, members]) =>
      fitting(set) ? [] : [{ set: members.map(({ part }) => part), length: lengths.get(set) ?? 0 }],
    ),
  };
}

const slope = ([perAcross, perOut]: Slant): number => Math.hypot(perAcross, perOut);
