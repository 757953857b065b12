/** Units in a millimetre that are tried; 64ths of an inch (25.4 mm) after the decimal ones. */
const PER_MM = [1, 10, 100, 64 / 25.4];

/** Where none of them holds: hundredths, rounded. */
const COARSE = 100;

/** Of a unit: what doubles make of a sum of lengths typed in decimals. */
const FUZZ = 1e-6;

/** A unit of length in which to count. */
export interface Unit {
  readonly perMm: number;
  /** All lengths are whole numbers of it. */
  readonly exact: boolean;
  up(mm: number): number;
  down(mm: number): number;
}

/** The largest unit that all these lengths, mm, are whole numbers of. */
export function unitFor(lengths: readonly number[]): Unit {
  const isWhole = (perMm: number): boolean =>
    lengths.every((mm) => Math.abs(mm * perMm - Math.round(mm * perMm)) < FUZZ);
  const found = PER_MM.find(isWhole);
  return unitOf(found ?? COARSE, found !== undefined);
}

/** A unit for lengths that are no whole numbers of any. */
export const coarseUnit = (): Unit => unitOf(COARSE, false);

const unitOf = (perMm: number, exact: boolean): Unit => ({
  perMm,
  exact,
  up: (mm) => Math.ceil(mm * perMm - FUZZ),
  down: (mm) => Math.floor(mm * perMm + FUZZ),
});
