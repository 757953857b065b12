import { choice, length, stock } from '../../base/fields';

/** A worktop behind the front, lower than the top. Defaults: common practice, no source, unless named. */
export const fields = {
  height: length({
    label: 'Worktop height',
    min: 0,
    max: 1200,
    default: 0,
    help: 'From the floor to its upper face; 0: none. 900 is usual, 850–950 (EN 1116; 36 in in the US).',
  }),
  of: choice({
    label: 'Worktop of',
    options: [
      { value: 'hardwood', label: 'hardwood' },
      { value: 'sheet', label: 'sheet' },
    ],
    default: 'hardwood',
    help: 'Where there is water, choose a stuff that bears it.',
  }),
  hardwood: stock({
    of: 'hardwood',
    label: 'Worktop hardwood',
    default: 'oak-32',
    help: 'Planed thickness comes from the stock book.',
    when: { field: 'of', is: ['hardwood'] },
  }),
  sheet: stock({
    of: 'sheet',
    label: 'Worktop sheet',
    default: 'mdf-25',
    help: 'Its thickness comes from the stock book.',
    when: { field: 'of', is: ['sheet'] },
  }),
  depth: length({
    label: 'Worktop depth',
    min: 150,
    max: 900,
    default: 500,
    help: 'From the back of the front frame to its rear edge. Where it reaches further back than the top, the posts stop under it; else they go through to the top, and it is notched round those that it reaches.',
  }),
  behind: length({
    label: 'Overhang at the back',
    min: 0,
    max: 20,
    default: 10,
    help: 'Beyond the rear face of posts that stop under it.',
  }),
} as const;
