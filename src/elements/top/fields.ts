import { choice, length, stock } from '../../base/fields';

/** Hardwood top. */
export const fields = {
  hardwood: stock({
    of: 'hardwood',
    label: 'Top',
    default: 'oak-40',
    help: 'Planed thickness comes from the stock book.',
  }),
  overhang: length({
    label: 'Overhang at the front',
    min: 0,
    max: 500,
    default: 75,
    help: 'From the face of the frame to the front edge of the top.',
  }),
  endOverhang: length({
    label: 'Overhang at a free end',
    min: 0,
    max: 500,
    default: 30,
    help: 'Beyond the end of the frame line.',
  }),
  corner: choice({
    label: 'Corners',
    options: [
      { value: 'mitred', label: 'mitred' },
      { value: 'butted', label: 'butted' },
    ],
    default: 'mitred',
    help: 'Butted: one length goes through and the next stops against it.',
  }),
} as const;
