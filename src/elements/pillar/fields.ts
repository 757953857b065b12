import { choice, count, length, stock, yesNo } from '../../base/fields';
import type { LengthField, StockField } from '../../vocabulary/field';

/** Decisions of a base or a cap: a strip of sheet, moulded, then cut to length. */
const piece = <const K extends 'base' | 'cap'>(kind: K, label: string, height: string, arris: string) =>
  ({
    [`${kind}Height`]: length({ label: `${label} height`, min: 0, max: 400, default: 0, help: height }),
    [`${kind}Sheet`]: stock({
      of: 'sheet',
      label: `${label} sheet`,
      default: 'mdf-25',
      help: 'Thicker than the pillar board, so that it stands proud of it.',
    }),
    [`${kind}Overhang`]: length({
      label: `${label} wider than the pillar`,
      min: 0,
      max: 30,
      default: 5,
      help: 'On each side of the pillar.',
    }),
    [`${kind}Cutter`]: stock({
      of: 'cutter',
      label: `${label} moulded edge`,
      default: 'ovolo-9',
      optional: true,
      help: `Run along the ${arris} front arris of the strip before pieces are cut from it.`,
    }),
  }) as Record<`${K}Height` | `${K}Overhang`, LengthField> & Record<`${K}Sheet` | `${K}Cutter`, StockField>;

/** Pillar boards on the cladding. Sizes: common practice, no source, unless named. */
export const fields = {
  sheet: stock({
    of: 'sheet',
    label: 'Pillar board',
    default: 'mdf-18',
    help: 'The sheet that pillar boards are ripped from.',
  }),
  width: length({ label: 'Pillar width', min: 40, max: 400, default: 140, help: 'Seen from the front.' }),
  cornerWidth: length({
    label: 'Corner board width',
    min: 30,
    max: 400,
    default: 110,
    help: 'Visible face of each of the two boards mitred at a corner.',
  }),
  atCorners: yesNo({
    label: 'Pillars at corners',
    default: true,
    help: 'Without them bays run into the corner, and skirting is mitred there.',
  }),
  rhythm: choice({
    label: 'Bays',
    options: [
      { value: 'pitch', label: 'by greatest pitch' },
      { value: 'count', label: 'by number' },
    ],
    default: 'pitch',
    help: 'How each run is divided unless the run says otherwise.',
  }),
  pitch: length({
    label: 'Greatest pitch',
    min: 150,
    max: 3000,
    default: 800,
    help: 'Centre to centre of pillars, at most.',
    when: { field: 'rhythm', is: ['pitch'] },
  }),
  bays: count({
    label: 'Bays in each run',
    min: 1,
    max: 40,
    default: 3,
    help: 'The same number in every run.',
    when: { field: 'rhythm', is: ['count'] },
  }),
  flutes: count({
    label: 'Flutes',
    min: 0,
    max: 9,
    default: 5,
    odd: true,
    help: 'An odd number; 0 for plain boards.',
  }),
  fluteMargin: length({
    label: 'Flute margin',
    min: 5,
    max: 150,
    default: 20,
    help: 'From the edge of the visible face to the first flute.',
    when: { field: 'flutes', is: [1, 3, 5, 7, 9] },
  }),
  fluteSpacing: length({
    label: 'Fillet between flutes',
    min: 2,
    max: 100,
    default: 5,
    help: 'A quarter to a third of the flute is classical (Rudiments of Ancient Architecture, 1810).',
    when: { field: 'flutes', is: [3, 5, 7, 9] },
  }),
  fluteDepth: length({
    label: 'Flute depth',
    min: 0.5,
    max: 20,
    default: 5,
    help: 'Half the flute width makes a semicircle.',
    when: { field: 'flutes', is: [1, 3, 5, 7, 9] },
  }),
  fluteEnds: choice({
    label: 'Flutes are',
    options: [
      { value: 'through', label: 'run through' },
      { value: 'stopped', label: 'stopped' },
    ],
    default: 'through',
    help: 'From end to end of the board, or short of its ends.',
    when: { field: 'flutes', is: [1, 3, 5, 7, 9] },
  }),
  fluteStop: length({
    label: 'Left plain at each end',
    min: 1,
    max: 600,
    default: 30,
    help: 'One to one and a half flute widths at least, above the block and below the cap (trade, from memory).',
    when: { field: 'fluteEnds', is: ['stopped'] },
  }),
  ...piece('base', 'Base', 'Height of a base at the foot of each pillar, on its block; 0 for none.', 'upper'),
  ...piece('cap', 'Cap', 'Height of a cap at the head of each pillar, under the top; 0 for none.', 'lower'),
  endReturn: yesNo({
    label: 'Bases and caps turn free ends',
    default: true,
    help: 'A short piece of the same strip, mitred, runs back along the end of the frame.',
  }),
} as const;
