import { length, stock } from '../../base/fields';

/** Plinth blocks at the foot of the pillars. 24 mm blocks of 150 with 18 mm pillars and skirting belong together (common practice, no source). */
export const fields = {
  sheet: stock({
    of: 'sheet',
    label: 'Plinth block sheet',
    default: 'mdf-25',
    help: 'Strips are ripped to height, moulded, then cut to length.',
  }),
  height: length({
    label: 'Block height',
    min: 30,
    max: 500,
    default: 150,
    help: 'From the floor to the top of the moulded edge.',
  }),
  overhang: length({
    label: 'Wider than the pillar',
    min: 0,
    max: 50,
    default: 5,
    help: 'On each side of the pillar.',
  }),
  cutter: stock({
    of: 'cutter',
    label: 'Moulded edge',
    default: 'ovolo-9',
    optional: true,
    help: 'Run along the strip before blocks are cut from it.',
  }),
} as const;
