import type { Vec2 } from '../../vocabulary/geometry';
import type { Box, Lettering } from './ink';

/** Lettering heights, mm of paper: figures and notes, and titles. Two of the heights of ISO 3098-1 (1.8, 2.5, 3.5, 5 …). */
export const NOTE_MM = 2.5;
export const TITLE_MM = 3.5;
/** For captions of the title block's fields. ISO 3098-1. */
export const CAPTION_MM = 1.8;

/** Height of the capitals as a share of the font size: 0.716 in Arial-like fonts, 0.729 in the widest fall-back (measured from the fonts' files). */
export const CAPITALS = 0.72;

/**
 * Width of a text in mm of paper when its capitals are `height` high. Taken from the widest of the fonts asked for, so that
 * what fits here fits with each of them.
 */
export function textWidth(text: string, height: number): number {
  let ems = 0;
  for (const sign of text) ems += widthOf(sign);
  return (ems * height) / CAPITALS;
}

function widthOf(sign: string): number {
  if (/[0-9]/.test(sign)) return 0.64;
  if (/[ .,:;'|ijlIft()/-]/.test(sign)) return 0.4;
  if (/[mwMW@%—]/.test(sign)) return 0.99;
  if (/[A-Z&]/.test(sign)) return 0.76;
  // Signs outside Latin scripts may be as wide as they are high.
  return sign.charCodeAt(0) < 0x250 ? 0.64 : 1;
}

/** The box that the lettering takes on paper, with no margin. */
export function boxOf(letters: Lettering): Box {
  const width = Math.min(textWidth(letters.text, letters.height), letters.atMost ?? Number.POSITIVE_INFINITY);
  const start = letters.anchor === 'start' ? 0 : letters.anchor === 'middle' ? -width / 2 : -width;
  const [x, y] = letters.at;
  const h = letters.height;
  return letters.turned
    ? { min: [x - h, y + start], max: [x, y + start + width] }
    : { min: [x + start, y], max: [x + start + width, y + h] };
}

/** Whether two boxes come nearer to each other than `gap`. */
export const collide = (a: Box, b: Box, gap: number): boolean =>
  a.min[0] < b.max[0] + gap && b.min[0] < a.max[0] + gap && a.min[1] < b.max[1] + gap && b.min[1] < a.max[1] + gap;

/** The box around points; null when there are none. */
export function around(points: Iterable<Vec2>): Box | null {
  let box: { min: [number, number]; max: [number, number] } | null = null;
  for (const [x, y] of points) {
    if (!box) box = { min: [x, y], max: [x, y] };
    box.min = [Math.min(box.min[0], x), Math.min(box.min[1], y)];
    box.max = [Math.max(box.max[0], x), Math.max(box.max[1], y)];
  }
  return box;
}
