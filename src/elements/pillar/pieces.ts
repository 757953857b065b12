import { type StripEnd, stripEnd } from '../../base/returned';
import type { DecisionsOf } from '../../vocabulary/field';
import type { PillarMark, Rod, RodRun } from '../../vocabulary/rod';
import type { Bench } from '../../vocabulary/room';
import type { fields } from './fields';

export type Which = 'base' | 'cap';

/** A base or a cap as decided, and where it stands. */
export interface PieceAt {
  readonly which: Which;
  readonly sheet: string;
  readonly thickness: number;
  readonly overhang: number;
  readonly cutter: string;
  readonly endReturn: boolean;
  readonly low: number;
  readonly high: number;
}

/** Less than this can't be held at the saw, mm (common practice, no source). */
export const LEAST_PIECE = 10;

/** What the decisions say of a base or a cap, from height `low` to `high`. */
export function pieceOf(
  which: Which,
  decided: DecisionsOf<typeof fields>,
  book: Bench['book'],
  at: Pick<PieceAt, 'low' | 'high'>,
): PieceAt {
  const sheet = decided[`${which}Sheet`];
  return {
    which,
    sheet,
    thickness: book.item('sheet', sheet).thickness,
    overhang: decided[`${which}Overhang`],
    cutter: decided[`${which}Cutter`],
    endReturn: decided.endReturn,
    ...at,
  };
}

/** From where to where a base or cap reaches at its back, and how it ends. */
export function endsOf(run: RodRun, pillar: PillarMark, piece: PieceAt, rod: Pick<Rod, 'layers'>): Ends {
  const end = (side: 'left' | 'right'): StripEnd => {
    if (pillar.where === side) {
      // At a flap the end of the frame is lined by the flap's own jamb.
      const turned = piece.endReturn && run[side].kind === 'free' && !run[side].flap;
      return stripEnd(run, side, rod.layers.pillar.inner, pillar.mitred ? 'mitred' : turned ? 'returned' : 'square');
    }
    const x = side === 'left' ? pillar.from - piece.overhang : pillar.to + piece.overhang;
    return { x, perOut: 0, how: 'square' };
  };
  return { left: end('left'), right: end('right') };
}

export interface Ends {
  readonly left: StripEnd;
  readonly right: StripEnd;
}
