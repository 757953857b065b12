import { choice, length, stock } from '../../base/fields';

/** Hardwood top. Defaults: common practice, no source, unless named. */
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
  edge: stock({
    of: 'cutter',
    label: 'Moulded front edge',
    default: '',
    optional: true,
    help: 'Run along the upper front arris and round free ends. With it inside corners are mitred.',
  }),
  longest: length({
    label: 'Longest length',
    min: 600,
    max: 10_000,
    default: 3000,
    help: 'That can be carried in; the stock may set a shorter one.',
  }),
  jointClear: length({
    label: 'Joints keep clear',
    min: 0,
    max: 1000,
    default: 200,
    help: 'Of joins below, openings, corners and ends.',
  }),
  joint: choice({
    label: 'Joints aligned by',
    options: [
      { value: 'tenons', label: 'loose tenons' },
      { value: 'dowels', label: 'dowels' },
    ],
    default: 'tenons',
    help: 'Square joints, drawn tight by bolts from below.',
  }),
  jointSpacing: length({
    label: 'Tenons or dowels apart, at most',
    min: 50,
    max: 400,
    default: 150,
    help: 'At least two; the first 50 from the edges.',
  }),
  boltSpacing: length({
    label: 'Draw bolts apart, at most',
    min: 100,
    max: 600,
    default: 250,
    help: 'At least two, between the tenons or dowels.',
  }),
  fitted: choice({
    label: 'Top fitted',
    options: [
      { value: 'site', label: 'on site' },
      { value: 'workshop', label: 'in the workshop' },
    ],
    default: 'site',
    help: 'On site: carried in and fitted last. In the workshop: it goes with its section unless it crosses a join.',
  }),
} as const;
