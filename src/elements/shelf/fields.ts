import { length, stock } from '../../base/fields';

/** Shelves behind the front. Defaults: common practice, no source. */
export const fields = {
  sheet: stock({
    of: 'sheet',
    label: 'Shelves',
    default: 'mdf-18',
    help: 'One board for each shelf, from the front frame to the rear face of the posts.',
  }),
  bearer: stock({
    of: 'timber',
    label: 'Bearers',
    default: 'sawn-25x38',
    help: 'Under fixed shelves, on edge: one along the front frame, one at each side.',
  }),
  lining: stock({
    of: 'sheet',
    label: 'Side linings',
    default: 'mdf-18',
    help: 'Boards on the cross frames that carry adjustable shelves: holes or standards need something to be in.',
  }),
  least: length({
    label: 'Clear between shelves, at least',
    min: 20,
    max: 1000,
    default: 120,
    help: 'Also below the lowest and above the highest shelf. Closer than that, no shelf is made.',
  }),
  clearance: length({
    label: 'Fixed shelf shorter than its bay',
    min: 0,
    max: 10,
    default: 2,
    help: 'In all, half at each end; half of it at the front frame too.',
  }),
  pitch: length({
    label: 'Pitch of the holes',
    min: 10,
    max: 200,
    default: 32,
    help: '32 is usual: boring jigs and ironmongery are made for it.',
  }),
  hole: length({
    label: 'Holes across',
    min: 2,
    max: 20,
    default: 5,
    help: 'To suit the pins that the shelves lie on.',
  }),
  rows: length({
    label: 'Rows in from the edges',
    min: 15,
    max: 300,
    default: 37,
    help: 'Middle of each row of holes, or of each standard, from the front and rear edge of the lining.',
  }),
  margin: length({
    label: 'First hole from an end, at least',
    min: 10,
    max: 500,
    default: 60,
    help: 'As many holes as fit on the pitch; what is left over is divided equally between both ends.',
  }),
} as const;
