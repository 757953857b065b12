/** A length as it is said in words: to a tenth of a millimetre, never −0. */
export const tenth = (mm: number): number => Math.round(mm * 10) / 10 + 0;
