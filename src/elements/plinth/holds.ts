import type { Hold } from '../../vocabulary/part';

/** On the cladding: adhesive and brads; what is too thick for them is for the making to say. `thickness` of the piece, mm. */
export const onSkin = (thickness: number, where: Hold['where']): readonly Hold[] => [
  { by: 'brad', through: thickness, where, glue: 'grab', rule: 'pins and adhesive on the skin (trade, from memory)' },
];

/** Like skirting, at studs 400–600 apart: at the least of that (trade, from memory). */
export const ALONG: Hold['where'] = { at: 'length', centres: 400 };

/** A block or short piece: enough to keep it still while the adhesive sets (common practice, no source). */
export const SMALL: Hold['where'] = { at: 'all', each: 4 };

/** Screws down through the bottom plate into the upper edge of a kick board; `plate`: its thickness, mm. */
export const underPlate = (plate: number): readonly Hold[] => [
  {
    by: 'screw',
    through: plate,
    where: { at: 'length', centres: 400 },
    rule: 'down through the plate, piloted, no thicker than a fifth of the board, 25 or more from its ends (MDF design guides, from memory); 400 apart: common practice, no source',
  },
];
