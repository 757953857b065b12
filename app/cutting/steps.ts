import type { AnyCutPlan, CutBatch } from '../../src/vocabulary/cut-plan';
import type { BarCuts, SheetCuts } from '../../src/vocabulary/set-up';
import { type Copies, laidOf, marksOf, placeKey } from './copies';
import { barCutWords, freedWords, type Say, sheetCutWords } from './words';

/** One cut as it is told. */
export interface Told {
  readonly number: number;
  readonly what: string;
  /** What is free after it. */
  readonly off: string;
  /** Marks of the parts that are done with it. */
  readonly marks: readonly string[];
}

/** The cuts of one sheet or bar, in the order of the work, in words; all of them, or those from one place on to before another. */
export function toldCuts(
  cuts: SheetCuts | BarCuts,
  { batch, plan, copies }: { readonly batch: CutBatch; readonly plan: AnyCutPlan; readonly copies: Copies },
  index: number,
  say: Say,
  from = 0,
  to = cuts.cuts.length,
): readonly Told[] {
  const { pieces } = laidOf(plan)[index] ?? { pieces: [] };
  const places = new Map(pieces.map((placed, place) => [placeKey(placed), place]));
  const marksAt = (placed: (typeof pieces)[number]): readonly string[] =>
    marksOf(batch, placed.piece, copies[index]?.[places.get(placeKey(placed)) ?? -1]);
  const called = (placed: (typeof pieces)[number]): string => {
    const marks = marksAt(placed);
    return marks.length > 0
      ? marks.join(', ')
      : (batch.problem.pieces[placed.piece]?.name ?? `piece ${placed.piece + 1}`);
  };
  if (cuts.kind === 'sheet')
    return cuts.cuts.slice(from, to).map((cut) => {
      const freed = cut.frees.filter(({ kind }) => kind !== 'waste');
      return {
        number: cut.number,
        what: sheetCutWords(cut, say),
        off: freed.map((one) => freedWords(one, ({ piece }) => called(piece), say)).join('; '),
        marks: freed.flatMap((one) => (one.kind === 'piece' ? marksAt(one.piece) : [])),
      };
    });
  return cuts.cuts.slice(from, to).map((cut) => {
    const pieces = cut.frees.flatMap((one) => (one.kind === 'piece' ? [one.piece] : []));
    return {
      number: cut.number,
      what: barCutWords(cut, pieces.map(called).join(' and '), say),
      off: cut.frees
        .flatMap((one) =>
          one.kind === 'left' ? [`${say(one.length)}${one.reusable ? ' for the rack' : ', waste'}`] : [],
        )
        .join('; '),
      marks: pieces.flatMap(marksAt),
    };
  });
}
