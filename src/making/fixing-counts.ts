import type { Hold, Part } from '../vocabulary/part';
import type { Bearing } from './behind';

/** Fixings keep this far from the ends of a piece, mm: at least 25 from a corner (MDF design guides, from memory). */
const FROM_END = 25;
/** A timber whose middle is no further than this from an edge of the sheet is held by the fixings along the edge, mm. */
const AT_EDGE = 50;

/** How many at centres along a length, ends included; two at least. */
export const alongLength = (length: number, centres: number): number =>
  Math.max(2, Math.ceil((length - 2 * FROM_END) / centres - 1e-9) + 1);

/** How many fixings a hold takes, and how in words. */
export function countOfHold(
  { where }: Hold,
  { size }: Pick<Part, 'size'>,
  bearings: readonly Bearing[],
): { readonly amount: number; readonly how: string } {
  switch (where.at) {
    case 'ends':
      return { amount: 2 * where.each, how: `${where.each} in each end` };
    case 'all':
      return { amount: where.each, how: where.each === 0 ? 'none' : `${where.each} in all` };
    case 'length':
      return { amount: alongLength(size.length, where.centres), how: `no more than ${where.centres} apart along it` };
    case 'sheet': {
      // Round the sheet each side begins where the last one ended.
      const edges = [size.length, size.width].reduce((sum, side) => sum + 2 * Math.ceil(side / where.edges - 1e-9), 0);
      const inField = bearings.filter(({ fromEdge }) => fromEdge > AT_EDGE);
      const field = inField.reduce((sum, { length }) => sum + Math.max(1, Math.ceil(length / where.field) - 1), 0);
      return {
        amount: edges + field,
        how: `at ${where.edges} along the edges, ${where.field} on the timbers between`,
      };
    }
  }
}
