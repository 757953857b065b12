import { length, stock, yesNo } from '../../base/fields';

const when = { field: 'wanted', is: [true] };

/** A rail to rest a foot on. 150–230 above the floor and 100–150 in front of the face are usual (trade, from memory). */
export const fields = {
  wanted: yesNo({
    label: 'Foot rail',
    default: false,
    help: 'Along the front, on brackets between the pillars.',
  }),
  moulding: stock({
    of: 'moulding',
    label: 'Rail',
    default: 'rail-round-45',
    help: 'Mitred at corners; joined over a bracket where it is longer than the stock.',
    when,
  }),
  timber: stock({
    of: 'timber',
    label: 'Bracket timber',
    default: 'sawn-47x75',
    help: 'Brackets are cut from it, grain outward, as high as its width at most.',
    when,
  }),
  height: length({
    label: 'Height of the rail',
    min: 100,
    max: 500,
    default: 200,
    help: 'From the floor to the middle of the rail; 150 to 230 is usual.',
    when,
  }),
  out: length({
    label: 'In front of the front',
    min: 50,
    max: 400,
    default: 125,
    help: 'From what stands out furthest at the front to the middle of the rail; 100 to 150 is usual.',
    when,
  }),
  spacing: length({
    label: 'Brackets at most',
    min: 200,
    max: 3000,
    default: 800,
    help: 'Centre to centre; from an end of the rail to the first, half of it.',
    when,
  }),
} as const;
