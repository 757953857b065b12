import { count, length, stock } from '../../base/fields';

/** Moulded panel frames in the bays. Margins 50–100, 75 common (common practice, no source). */
export const fields = {
  moulding: stock({
    of: 'moulding',
    label: 'Panel moulding',
    default: 'panel-ogee-30',
    help: 'Mitred at 45° and cut to the long point.',
  }),
  margin: length({
    label: 'Margin',
    min: 5,
    max: 400,
    default: 70,
    help: 'Equal from pillar, skirting and top to the outside of the frame.',
  }),
  rows: count({
    label: 'Rows',
    min: 0,
    max: 3,
    default: 1,
    help: 'Frames one above the other in each bay; 0 for none.',
  }),
  rowGap: length({
    label: 'Between rows',
    min: 10,
    max: 400,
    default: 70,
    help: 'Clear height between the frames of two rows.',
    when: { field: 'rows', is: [2, 3] },
  }),
} as const;
