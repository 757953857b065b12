import type { Fixing } from '../vocabulary/book';

/** Grams of PVA on a square metre of joint, one side: within 120–200 (data sheets' practice, from memory). */
export const PVA_G_PER_M2 = 150;
/** Grams in a millilitre of PVA: 1.05–1.10 (from memory). */
const PVA_G_PER_ML = 1.08;
/** A bead of grab adhesive, mm across: so 310 ml make 11 m (310 000 / (π · 9), computed). */
const BEAD = 6;
/** Beads on a wide piece are no further apart than this, mm (common practice, no source). */
const BEAD_CENTRES = 150;

/** Metres of bead on a piece so long and wide. */
export const beadOn = (length: number, width: number): number =>
  (Math.max(1, Math.ceil(width / BEAD_CENTRES)) * length) / 1000;

/** Metres of a 6 mm bead from so many millilitres. */
export const beadFrom = (ml: number): number => (ml * 1000) / (Math.PI * (BEAD / 2) ** 2) / 1000;

/** An adhesive of the stock book and what one of it holds: grams for PVA, metres of bead for grab adhesive; 0 where its name doesn't say. */
export interface Tub {
  readonly item: Fixing;
  readonly holds: number;
}

const WORDS = { pva: /pva|wood glue/i, grab: /grab/i } as const;

/** The first adhesive of that sort in the stock book. Its name says what it is and how much one holds: "1 kg", "310 ml". */
export function tubOf(glue: 'pva' | 'grab', book: readonly Fixing[]): Tub | undefined {
  const item = book.find((f) => f.kind === 'adhesive' && WORDS[glue].test(`${f.id} ${f.name}`));
  if (!item) return undefined;
  const [, figure, unit] = /(\d+(?:\.\d+)?)\s*(kg|g|ml|l)\b/i.exec(item.name) ?? [];
  const amount = figure === undefined ? 0 : Number(figure) * (/^(kg|l)$/i.test(unit) ? 1000 : 1);
  const byWeight = /g$/i.test(unit ?? '');
  if (glue === 'pva') return { item, holds: byWeight ? amount : amount * PVA_G_PER_ML };
  return { item, holds: byWeight ? 0 : beadFrom(amount) };
}
