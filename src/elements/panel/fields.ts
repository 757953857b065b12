import { count, length, stock, yesNo } from '../../base/fields';

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
    help: 'Equal from pillar, skirting and top (or the moulding under it) to the outside of the frame; more below where brackets of a foot rail reach higher.',
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
  rail: yesNo({
    label: 'Flat rail between rows',
    default: false,
    help: 'A plain strip across the bay, in the middle between two rows.',
    when: { field: 'rows', is: [2, 3] },
  }),
  railSheet: stock({
    of: 'sheet',
    label: 'Rail sheet',
    default: 'mdf-12',
    help: 'The sheet that rails are ripped from; not thicker than the panel moulding is usual (common practice, no source).',
    when: { field: 'rail', is: [true] },
  }),
  railHeight: length({
    label: 'Rail height',
    min: 10,
    max: 300,
    default: 40,
    help: 'The space between the rows must hold it and a margin above and below.',
    when: { field: 'rail', is: [true] },
  }),
} as const;
