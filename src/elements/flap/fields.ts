import { length, stock } from '../../base/fields';

/** Lifting flap and gate, where the plan has one. Defaults: common practice, no source. */
export const fields = {
  clear: length({
    label: 'Clearance each side',
    min: 1,
    max: 10,
    default: 2.5,
    help: 'Of the flap to the tops beside it, and of the gate to its jambs.',
  }),
  jamb: stock({
    of: 'sheet',
    label: 'Jamb sheet',
    default: 'mdf-25',
    help: 'Lines the ends of the frames on both sides of the gap. No thinner than the plinth blocks, and the gate needs no notches.',
  }),
  bearer: length({
    label: 'Bearer width',
    min: 12,
    max: 80,
    default: 25,
    help: 'How far each bearer stands into the gap. Bearers are of the same hardwood as the top.',
  }),
  bearerHeight: length({
    label: 'Bearer height',
    min: 20,
    max: 120,
    default: 40,
    help: 'Its upper face carries the flap.',
  }),
  gateSheet: stock({
    of: 'sheet',
    label: 'Gate sheet',
    default: 'mdf-18',
    help: 'A plain board; its stop is ripped from the same.',
  }),
  floorClear: length({
    label: 'Gate clear of the floor',
    min: 5,
    max: 300,
    default: 30,
    help: 'For mats, and a floor that is not level.',
  }),
  stop: length({
    label: 'Gate stop stands out',
    min: 8,
    max: 40,
    default: 15,
    help: 'On the jamb across from the hinges, in front of the gate, which opens to the back.',
  }),
} as const;
