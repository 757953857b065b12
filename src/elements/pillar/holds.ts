import type { Hold } from '../../vocabulary/part';

/** How painted stuff on the cladding is held: adhesive and brads; what is too thick for them is for the making to say. `thickness` of the piece, mm; `where` along it. */
export const onSkin = (thickness: number, where: Hold['where']): readonly Hold[] => [
  { by: 'brad', through: thickness, where, glue: 'grab', rule: 'pins and adhesive on the skin (trade, from memory)' },
];

/** Pins in mouldings and boards that are glued as well are 200–300 apart (trade, from memory). */
export const ALONG: Hold['where'] = { at: 'length', centres: 250 };

/** A small piece: enough to keep it still while the adhesive sets (common practice, no source). */
export const SMALL: Hold['where'] = { at: 'all', each: 4 };
