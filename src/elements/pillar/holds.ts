import type { Hold } from '../../vocabulary/part';

/** The longest brad of the heavier kind (1.6 mm), mm (trade, from memory). */
const LONGEST_BRAD = 64;
/** A brad is at least so many times as long as what it holds is thick (trade, from memory). */
const BRAD_TIMES = 2.5;

const BRADS = 'adhesive, and brads of 2½ to 3 times the thickness (trade, from memory)';
const SCREWS = 'adhesive, and screws of 2 to 2½ times the thickness, heads filled (joinery textbooks, from memory)';

/**
 * How painted stuff on the cladding is held: adhesive and brads, or screws through the cladding where no brad is long enough.
 * @param thickness of the piece, @param skin of the cladding behind it, mm; @param where along it.
 */
export const onSkin = (thickness: number, skin: number, where: Hold['where']): readonly Hold[] =>
  BRAD_TIMES * thickness <= LONGEST_BRAD
    ? [{ by: 'brad', through: thickness, where, glue: 'grab', rule: BRADS }]
    : [{ by: 'screw', through: thickness + skin, where, glue: 'grab', rule: SCREWS }];

/** Pins in mouldings and boards that are glued as well are 200–300 apart (trade, from memory). */
export const ALONG: Hold['where'] = { at: 'length', centres: 250 };

/** A small piece: enough to keep it still while the adhesive sets (common practice, no source). */
export const SMALL: Hold['where'] = { at: 'all', each: 4 };
