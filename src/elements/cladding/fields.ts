import { length, stock } from '../../base/fields';

/** MDF skin on the frame. Thickness 9–18 is usual (common practice, no source). */
export const fields = {
  sheet: stock({
    of: 'sheet',
    label: 'Cladding sheet',
    default: 'mdf-12',
    help: 'Its thickness carries every layer in front of it.',
  }),
  floorGap: length({
    label: 'Clear of the floor',
    min: 0,
    max: 50,
    default: 5,
    help: 'Keeps the sheet out of mopping water.',
  }),
  trim: length({
    label: 'Trim off sheet edges',
    min: 0,
    max: 30,
    default: 10,
    help: 'Taken off each edge of a sheet before it is used.',
  }),
} as const;
