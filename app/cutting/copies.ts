import type { AnyCutPlan, CutBatch, PlacedOnBar, PlacedOnSheet } from '../../src/vocabulary/cut-plan';

/** Which copy of its piece each placed piece is: sheet by sheet or bar by bar, in the order of their pieces. */
export type Copies = readonly (readonly number[])[];

/** What is cut, sheet by sheet or bar by bar. */
export const laidOf = (
  plan: AnyCutPlan,
): readonly { readonly stock: number; readonly pieces: readonly (PlacedOnSheet | PlacedOnBar)[] }[] =>
  plan.kind === 'sheets' ? plan.sheets : plan.bars;

/** Those known keep what they are; the others are numbered through, piece by piece, as they come. */
export function copiesOf(plan: AnyCutPlan, known: (sheet: number, place: number) => number | undefined): Copies {
  const taken = new Map<number, Set<number>>();
  const takenOf = (piece: number): Set<number> => {
    const set = taken.get(piece) ?? new Set();
    taken.set(piece, set);
    return set;
  };
  const all = laidOf(plan).map(({ pieces }, sheet) =>
    pieces.map(({ piece }, place) => {
      const copy = known(sheet, place);
      if (copy === undefined || takenOf(piece).has(copy)) return undefined;
      takenOf(piece).add(copy);
      return copy;
    }),
  );
  const next = new Map<number, number>();
  return all.map((sheet, i) =>
    sheet.map((copy, place) => {
      if (copy !== undefined) return copy;
      const { piece } = laidOf(plan)[i]!.pieces[place]!;
      let free = next.get(piece) ?? 0;
      while (takenOf(piece).has(free)) free += 1;
      next.set(piece, free + 1);
      return free;
    }),
  );
}

export const freshCopies = (plan: AnyCutPlan): Copies => copiesOf(plan, () => undefined);

/** Where a placed piece lies on what it is cut from. */
export const placeKey = (placed: PlacedOnSheet | PlacedOnBar): string =>
  'kind' in placed ? `${placed.piece} ${placed.x} ${placed.y} ${placed.turned}` : `${placed.piece} ${placed.at}`;

/** How far apart two placed pieces lie; of different pieces, or turned otherwise: infinitely. */
function apart(a: PlacedOnSheet | PlacedOnBar, b: PlacedOnSheet | PlacedOnBar): number {
  if (a.piece !== b.piece) return Number.POSITIVE_INFINITY;
  if ('kind' in a && 'kind' in b)
    return a.turned === b.turned ? Math.abs(a.x - b.x) + Math.abs(a.y - b.y) : Number.POSITIVE_INFINITY;
  // On a bar they keep their order: the first that is left is the one.
  return 0;
}

/** Where a piece has been moved: from a place in the plan before to a place in the plan after. */
export interface Moved {
  readonly from: CutFrom;
  readonly to: CutFrom;
  /** The sheet or bar of the plan before, of one of the plan after. */
  readonly was: (sheet: number) => number;
}

/** After a move by hand: the piece that has moved is what it was, and so is what lies where it lay, or nearly so. */
export function movedCopies(before: AnyCutPlan, copies: Copies, after: AnyCutPlan, { from, to, was }: Moved): Copies {
  const own = laidOf(after).map(({ pieces }, sheet) => {
    const index = was(sheet);
    const there = (laidOf(before)[index]?.pieces ?? []).flatMap((placed, place) =>
      index === from.sheet && place === from.place ? [] : [{ placed, copy: copies[index]?.[place] }],
    );
    return pieces.map((placed, place) => {
      if (sheet === to.sheet && place === to.place) return copies[from.sheet]?.[from.place];
      const [nearest] = there
        .map((one) => ({ one, by: apart(one.placed, placed) }))
        .sort((a, b) => a.by - b.by)
        .filter(({ by }) => by < Number.POSITIVE_INFINITY);
      if (!nearest) return undefined;
      there.splice(there.indexOf(nearest.one), 1);
      return nearest.one.copy;
    });
  });
  return copiesOf(after, (sheet, place) => own[sheet]?.[place]);
}

/** The marks of the parts in a placed piece: one, or several where blocks are run as a strip; none where the list has no names. */
export function marksOf(batch: CutBatch, piece: number, copy: number | undefined): readonly string[] {
  const all = batch.marks[piece] ?? [];
  return all[copy ?? 0] ?? all[0] ?? [];
}

/** What a placed piece is called where it lies: by its marks; on a list without a job by its name, if it has one. */
export function callOf(batch: CutBatch, piece: number, copy: number | undefined): readonly string[] {
  const marks = marksOf(batch, piece, copy);
  const name = batch.problem.pieces[piece]?.name;
  return marks.length > 0 || name === undefined ? marks : [name];
}

/** What the pieces of one sheet or bar are called, in their order. */
export const calledOn = (
  batch: CutBatch,
  plan: AnyCutPlan,
  copies: Copies,
  index: number,
): readonly (readonly string[])[] =>
  (laidOf(plan)[index]?.pieces ?? []).map(({ piece }, place) => callOf(batch, piece, copies[index]?.[place]));

/** Where a part is cut from: sheet or bar, and the place among its pieces. */
export interface CutFrom {
  readonly sheet: number;
  readonly place: number;
}

/** Every part of a batch by its mark. */
export function placesByMark(batch: CutBatch, plan: AnyCutPlan, copies: Copies): ReadonlyMap<string, CutFrom> {
  const places = new Map<string, CutFrom>();
  for (const [sheet, { pieces }] of laidOf(plan).entries())
    for (const [place, { piece }] of pieces.entries())
      for (const mark of marksOf(batch, piece, copies[sheet]?.[place])) places.set(mark, { sheet, place });
  return places;
}

/** The batch with its marks in the order in which the copies lie in the plan: for who gives them out in that order. */
export function marksInOrder(batch: CutBatch, plan: AnyCutPlan, copies: Copies): CutBatch {
  const inOrder = new Map<number, number[]>();
  for (const [sheet, { pieces }] of laidOf(plan).entries())
    for (const [place, { piece }] of pieces.entries()) {
      const list = inOrder.get(piece) ?? [];
      list.push(copies[sheet]?.[place] ?? list.length);
      inOrder.set(piece, list);
    }
  return {
    ...batch,
    marks: batch.marks.map((marks, piece) => (inOrder.get(piece) ?? []).map((copy) => marks[copy] ?? [])),
  };
}
