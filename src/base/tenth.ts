/** A length as it is said in words: to a tenth of a millimetre, never −0. */
export const tenth = (mm: number): number => Math.round(mm * 10) / 10 + 0;

/** What is left of a length, in words: "12.5 mm", or "nothing" where it comes out at nothing or less. */
export const leftOf = (mm: number): string => (tenth(mm) > 0 ? `${tenth(mm)} mm` : 'nothing');
