import type { Kind, Scaled, Sheet } from './scaled';

type Limits = Pick<Scaled, 'stages' | 'trimsFree' | 'longestCut'>;

/** Whether a piece can be cut by itself out of a sheet. */
export function liesOn(kind: Omit<Kind, 'members' | 'quantity' | 'set'>, sheet: Sheet, limits: Limits): boolean {
  const { length, width, turns } = kind;
  return cutsOut(length, width, sheet, limits) || (turns && cutsOut(width, length, sheet, limits));
}

function cutsOut(a: number, b: number, { length, width }: Sheet, { stages, trimsFree, longestCut }: Limits): boolean {
  if (a > length || b > width) return false;
  const across = a < length;
  const along = b < width;
  const cuts = (across ? 1 : 0) + (along ? 1 : 0);
  if (cuts - (trimsFree && cuts > 0 ? 1 : 0) > stages) return false;
  if (!across) return !along || length <= longestCut;
  if (!along) return width <= longestCut;
  return (width <= longestCut && a <= longestCut) || (length <= longestCut && b <= longestCut);
}
