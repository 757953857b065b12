import type { Stroke } from '../vocabulary/drawing';
import type { Vec2 } from '../vocabulary/geometry';
import type { PlacedOpening } from '../vocabulary/opening';
import type { RodRun } from '../vocabulary/rod';
import type { Drawable } from './drawable';

/** Sides of what stands for a circle. */
const SIDES = 36;

/** The openings through the front of a run, in the order in which they were asked for. */
export const openingsIn = ({ openings }: Pick<Drawable, 'openings'>, run: RodRun): readonly PlacedOpening[] =>
  openings.filter((one) => one.run === run.id && one.through === 'front');

/** Where openings come through, dashed: the holes are in the skin, which is off. */
export const openingLines = (openings: readonly PlacedOpening[]): readonly Stroke[] =>
  openings.map((one) => ({ kind: 'line', points: outlineOf(one), pen: 'narrow', style: 'dashed' }));

function outlineOf({ round, from, to, low, high }: PlacedOpening): readonly Vec2[] {
  if (!round)
    return [
      [from, low],
      [to, low],
      [to, high],
      [from, high],
      [from, low],
    ];
  const [x, y, a, b] = [(from + to) / 2, (low + high) / 2, (to - from) / 2, (high - low) / 2];
  return Array.from({ length: SIDES + 1 }, (_, i): Vec2 => {
    const turn = (2 * Math.PI * i) / SIDES;
    return [x + a * Math.cos(turn), y + b * Math.sin(turn)];
  });
}

/** Where an opening is, in words: its size, and its middle along the run and above the floor. */
export function openingNote(
  { name, index, round, from, to, low, high }: PlacedOpening,
  figure: (mm: number) => string,
) {
  const size = round ? `${figure(to - from)} round` : `${figure(to - from)} × ${figure(high - low)}`;
  const middle = `its middle ${figure((from + to) / 2)} along and ${figure((low + high) / 2)} up`;
  return `${name || `Opening ${index + 1}`}: ${size}, ${middle}.`;
}
