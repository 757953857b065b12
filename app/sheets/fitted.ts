import type { Part } from '../../src/vocabulary/part';

/** Where a part is fitted, for a list: its section, or "site". */
export const fittedOf = ({ fitted, inSection }: Pick<Part, 'fitted' | 'inSection'>): string =>
  fitted === 'site' ? 'site' : (inSection ?? '');

/** Of several: each place once, in the order in which they come. */
export const fittedTogether = (places: readonly string[]): string => [...new Set(places)].filter(Boolean).join(', ');
