/* How what is cut is drawn: millimetres to pixels, and what lettering a piece has room for. */

/** Room for a drawing, px. */
export interface Space {
  readonly width: number;
  readonly height: number;
}

/** Round the drawing, px: the outline must not be cut off. */
export const MARGIN = 2;

/** Pixels for a millimetre, so that the whole sheet is in sight. */
export const scaleOf = (sheet: { readonly length: number; readonly width: number }, { width, height }: Space): number =>
  Math.max(1e-4, Math.min((width - 2 * MARGIN) / sheet.length, (height - 2 * MARGIN) / sheet.width));

/** Lettering as it stands in a piece. */
export interface Lettering {
  readonly lines: readonly string[];
  /** Running upwards. */
  readonly turned: boolean;
  /** The first line is the mark. */
  readonly marked: boolean;
  /** Smaller than the others: there is room for no more. */
  readonly small?: true;
}

/** Size of the lettering and what a line takes, px. */
const LETTERS = 11.5;
export const LINE = 13.5;
/** The least that can be read, and how near it may come to the edges, px. */
const SMALL = { letters: 8.5, clear: 1.5 };

/** Mean width of a letter or figure in terms of its size; wide faces reach this (measured on the widest of the house's faces). */
const LETTER_WIDTH = 0.62;

/** Clear of the edges, px. */
const CLEAR = 3;

/** About how wide a line comes out, px. */
const lineWidth = (text: string, letters: number): number => text.length * letters * LETTER_WIDTH;

interface Type {
  readonly letters: number;
  readonly clear: number;
}

const fits = (lines: readonly string[], along: number, across: number, { letters, clear }: Type): boolean =>
  (lines.length * LINE * letters) / LETTERS + 1 <= across &&
  Math.max(...lines.map((line) => lineWidth(line, letters))) + 2 * clear <= along;

/** What a rectangle of so many pixels has room for of some lines: level where it can be, else upwards. */
function placed(
  width: number,
  height: number,
  lines: readonly string[],
  type: Type = { letters: LETTERS, clear: CLEAR },
): Pick<Lettering, 'lines' | 'turned'> | null {
  if (fits(lines, width, height, type)) return { lines, turned: false };
  return height > width && fits(lines, height, width, type) ? { lines, turned: true } : null;
}

/** Mark and size of a piece, the mark alone, or the size alone, small if need be: the fullest that there is room for; null where there is none. */
export function lettered(width: number, height: number, mark: string, size: string): Lettering | null {
  const both = mark ? placed(width, height, [mark, size]) : null;
  if (both) return { ...both, marked: true };
  const one = mark ? placed(width, height, [mark]) : null;
  if (one) return { ...one, marked: true };
  const bare = placed(width, height, [size]);
  if (bare) return { ...bare, marked: false };
  const small = placed(width, height, [size], SMALL);
  return small && { ...small, marked: false, small: true };
}

/** The first of several wordings that there is room for. */
export function worded(width: number, height: number, wordings: readonly (readonly string[])[]): Lettering | null {
  for (const lines of wordings) {
    const room = placed(width, height, lines);
    if (room) return { ...room, marked: false };
  }
  return null;
}

/** Several marks as one writes them in little room. */
export const marksBrief = (marks: readonly string[]): string =>
  marks.length < 2 ? (marks[0] ?? '') : `${marks[0]} +${marks.length - 1}`;

/** Outlines of many rectangles as one path, px: a sheet in small. */
export const outlines = (
  rects: readonly { readonly x: number; readonly y: number; readonly length: number; readonly width: number }[],
  scale: number,
): string => {
  const px = (mm: number): string => (mm * scale).toFixed(1);
  return rects
    .map(({ x, y, length, width }) => `M${px(x)} ${px(y)}h${px(length)}v${px(width)}h${px(-length)}z`)
    .join('');
};
