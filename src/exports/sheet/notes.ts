import type { Vec2 } from '../../vocabulary/geometry';
import type { Lettering } from './ink';
import { NOTE_MM, textWidth } from './lettering';

/** Distance of base lines, mm of paper. */
const PITCH = 4.2;

/** The notes of a drawing as lines of writing no longer than `width`, mm of paper. */
export function noteLines(notes: readonly string[], unwritten: readonly string[], width: number): readonly string[] {
  const marks = unwritten.length === 0 ? [] : [`Too small to be marked here: ${unwritten.join('; ')}.`];
  return [...notes, ...marks].flatMap((note) => wrapped(note, width));
}

/** How much of the paper's height lines of notes take. */
export const notesHeight = (lines: readonly string[]): number => lines.length * PITCH;

/** The lines on paper, one below the other; `corner` is the lower left corner of the room they stand in. */
export const noteInk = (lines: readonly string[], [x, y]: Vec2): readonly Lettering[] =>
  lines.map((text, i) => ({
    kind: 'text',
    at: [x, y + (lines.length - 1 - i) * PITCH],
    text,
    height: NOTE_MM,
    anchor: 'start',
    turned: false,
  }));

/** Breaks a text at its spaces. A word that is longer than a line gets a line to itself. */
function wrapped(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, NOTE_MM) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}
