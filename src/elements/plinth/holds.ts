import type { Hold } from '../../vocabulary/part';

/** The longest brad of the heavier kind (1.6 mm), mm (trade, from memory). */
const LONGEST_BRAD = 64;
/** A brad is at least so many times as long as what it holds is thick (trade, from memory). */
const BRAD_TIMES = 2.5;

const BRADS = 'adhesive, and brads of 2½ to 3 times the thickness (trade, from memory)';
const SCREWS = 'adhesive, and screws of 2 to 2½ times the thickness, heads filled (joinery textbooks, from memory)';

/** On the cladding: adhesive and brads, or screws through it where no brad is long enough. Thickness of the piece and of the skin behind it, mm. */
export const onSkin = (thickness: number, skin: number, where: Hold['where']): readonly Hold[] =>
  BRAD_TIMES * thickness <= LONGEST_BRAD
    ? [{ by: 'brad', through: thickness, where, glue: 'grab', rule: BRADS }]
    : [{ by: 'screw', through: thickness + skin, where, glue: 'grab', rule: SCREWS }];

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
