import type { Chance } from './chance';
import type { Forest } from './forest';
import { liesOn } from './lies-on';

/** Which sheet is begun when a piece goes on none: the cheapest by its area, one by chance, or, while there are any, those of one number. */
export type Choice = 'cheapest' | 'chance' | number;

/** What sheets may be used. */
export interface Means {
  readonly choice: Choice;
  /** They may cost so much together. */
  readonly budget: number;
  /** Of each, at most; absent: as many as there are. */
  readonly caps?: Int32Array;
}

export interface SheetChooser {
  /** Whether a piece of a kind may be put on a new sheet. */
  may(kind: number, sheet: number, means: Means): boolean;
  /** The number of the sheet to begin for a kind, or −1. */
  next(kind: number, means: Means): number;
}

export function sheetChooser({ scaled, memory: M, at, tally }: Forest, chance: Chance): SheetChooser {
  const { kinds, sheets } = scaled;
  const fits = kinds.map((kind) => Uint8Array.from(sheets, (sheet) => (liesOn(kind, sheet, scaled) ? 1 : 0)));
  const perArea = sheets.map(({ length, width, price }) => price / (length * width));
  // The greater stand first; of those that cost nothing the smaller serves before a greater one is broken into.
  const cheapest = sheets
    .map((_, s) => s)
    .sort((a, b) => perArea[a] - perArea[b] || (perArea[a] === 0 ? b - a : a - b));

  function may(kind: number, sheet: number, { budget, caps }: Means): boolean {
    const { count, price } = sheets[sheet];
    return fits[kind][sheet] === 1 && M[at.used + sheet] < (caps ? caps[sheet] : count) && tally.cost + price <= budget;
  }

  return {
    may,
    next(kind, means) {
      const { choice } = means;
      if (typeof choice === 'number' && may(kind, choice, means)) return choice;
      let found = -1;
      let seen = 0;
      for (const sheet of cheapest) {
        if (!may(kind, sheet, means)) continue;
        if (choice !== 'chance') return sheet;
        if (chance.below(++seen) === 0) found = sheet;
      }
      return found;
    },
  };
}
