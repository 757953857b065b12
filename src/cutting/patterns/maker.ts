import type { Scaled } from '../sheets/scaled';
import { tidied } from '../sheets/tidy';
import type { Wanted } from './blocks';
import { sheetFiller } from './fill-sheet';
import { furnisher } from './furnish';
import { type Lengthwise, lengthwise } from './lengthwise';
import { cellOf, type Pattern, patternOf } from './pattern';

export interface PricedPattern extends Pattern {
  /** Of its pieces, by the worths it was made for. */
  readonly worth: number;
}

/** Makes patterns of one sheet parted one way. */
export interface PatternMaker {
  readonly sheet: number;
  /** The best first, at most so many; takes nothing away from what is wanted. With pauses. */
  make(wanted: Wanted, most: number): Generator<undefined, readonly PricedPattern[]>;
}

export const patternMakers = (scaled: Scaled): readonly PatternMaker[] =>
  lengthwise(scaled).map((side) => makerFor(scaled, side));

function makerFor(scaled: Scaled, side: Lengthwise): PatternMaker {
  const fill = sheetFiller(side);
  const furnish = furnisher(scaled);
  return {
    sheet: side.sheet,
    *make(wanted, most) {
      const sheets = yield* fill(wanted, most);
      return sheets
        .map((filled) => {
          const plain = patternOf(scaled, side.sheet, tidied(cellOf(filled), scaled));
          if (!side.ways.further) return plain;
          const left = wanted.left.map((n, k) => n - plain.counts[k]);
          return patternOf(scaled, side.sheet, furnish(plain.cell, { left, worths: wanted.worths }));
        })
        .map((pattern) => ({
          ...pattern,
          worth: pattern.counts.reduce((sum, count, k) => sum + count * wanted.worths[k], 0),
        }))
        .sort((a, b) => b.worth - a.worth);
    },
  };
}
