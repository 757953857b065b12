import { choice, length, stock, yesNo } from '../../base/fields';

/** What stands at the foot of the front. 24 mm blocks of 150 with 18 mm pillars and skirting belong together (common practice, no source). */
export const fields = {
  style: choice({
    label: 'Plinth',
    options: [
      { value: 'blocks', label: 'blocks under the pillars' },
      { value: 'plain', label: 'a board along the front' },
      { value: 'kicked', label: 'a recessed kick board' },
    ],
    default: 'blocks',
    help: 'Blocks, with skirting between them; a moulded board on which the pillars stand; or a kick board set back under the frame.',
  }),
  sheet: stock({
    of: 'sheet',
    label: 'Plinth sheet',
    default: 'mdf-25',
    help: 'Strips are ripped to height, moulded, then cut to length.',
  }),
  height: length({
    label: 'Plinth height',
    min: 30,
    max: 500,
    default: 150,
    help: 'From the floor to the top of the moulded edge; of a kick board, to the underside of the frame (100–150 is usual, EN 1116 and trade, from memory).',
  }),
  overhang: length({
    label: 'Wider than the pillar',
    min: 0,
    max: 50,
    default: 5,
    help: 'On each side of the pillar.',
    when: { field: 'style', is: ['blocks'] },
  }),
  cutter: stock({
    of: 'cutter',
    label: 'Moulded edge',
    default: 'ovolo-9',
    optional: true,
    help: 'Run along the strip before it is cut to length.',
    when: { field: 'style', is: ['blocks', 'plain'] },
  }),
  endReturn: yesNo({
    label: 'Turn free ends',
    default: true,
    help: 'A short piece of the same strip, mitred, runs back along the end of the frame.',
    when: { field: 'style', is: ['blocks', 'plain'] },
  }),
  recess: length({
    label: 'Toe space',
    min: 0,
    max: 200,
    default: 35,
    help: 'From the face of the frame back to the kick board: 50–75 is usual (trade, from memory), but no more than the frame is deep less the board, which carries it.',
    when: { field: 'style', is: ['kicked'] },
  }),
} as const;
