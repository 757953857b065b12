/** A sheet of ISO 216, landscape, mm. Listed from the smallest. */
export interface SheetSize {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** ISO 216 trimmed sizes (A0 and the rule of halves read; the rest follow). */
const A4: SheetSize = { name: 'A4', width: 297, height: 210 };
const A3: SheetSize = { name: 'A3', width: 420, height: 297 };
const A2: SheetSize = { name: 'A2', width: 594, height: 420 };
const A1: SheetSize = { name: 'A1', width: 841, height: 594 };
export const SHEETS: readonly SheetSize[] = [A4, A3, A2, A1];

/** Border inside the trimmed edge: left, and the other three sides. ISO 5457:1999 (from memory; the 1980 edition differed). */
const BORDER_LEFT = 20;
const BORDER = 10;

/** A sheet and a scale to try: the scale as the number that the model is divided by, all of them of ISO 5455 (from memory). */
export interface Fit {
  readonly sheet: SheetSize;
  readonly scale: number;
}

/**
 * What to try, best first. Elevations are drawn 1:10 or 1:20 (UK joinery practice, from memory): on A4 or A3, which a small
 * workshop can print, before a larger sheet; something as small as a moulding larger; only what is too long for any sheet at 1:20
 * goes to 1:50 and 1:100. `extent` is the model's greater side, mm.
 */
export function fits(extent: number): readonly Fit[] {
  const of = (sheets: readonly SheetSize[], scales: readonly number[]): Fit[] =>
    scales.flatMap((scale) => sheets.map((sheet) => ({ sheet, scale })));
  // Below 4 cm on paper at 1:10 nothing could be read.
  const detail = extent < 400 ? of([A4, A3], [1, 2, 5]) : [];
  return [...detail, ...of([A4, A3], [10, 20]), ...of([A2], [10, 20]), ...of([A1], [10, 20]), ...of(SHEETS, [50, 100])];
}

/** The sheets at one scale, for a drawing made for it. */
export const fitsAt = (scale: number): readonly Fit[] => SHEETS.map((sheet) => ({ sheet, scale }));

/** For what no sheet holds: a length off a roll, as wide as one of the sheets is long where that is enough. mm. */
export function roll(width: number, height: number): SheetSize {
  const side = SHEETS.map((sheet) => sheet.width).find((one) => one >= height) ?? Math.ceil(height);
  return { name: `roll ${side}`, width: Math.max(A4.width, Math.ceil(width)), height: side };
}

/** Where there is room to draw: inside the border. Origin at the sheet's lower left corner, mm. */
export function drawingSpace(sheet: SheetSize): { min: [number, number]; max: [number, number] } {
  return { min: [BORDER_LEFT, BORDER], max: [sheet.width - BORDER, sheet.height - BORDER] };
}
