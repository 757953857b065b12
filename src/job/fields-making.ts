import { choice, count, length, lengths, number, yesNo } from '../base/fields';

/*
 * Decisions of the job about how it is made, carried and fitted: flaps, joins, openings, single bays, the way in, allowances.
 * Lengths in mm. Defaults are common practice with no source unless one is named.
 */

export const flapFields = {
  width: length({
    label: 'Gap for a flap',
    min: 300,
    max: 1500,
    default: 700,
    help: 'Clear between the two frames; people pass here.',
  }),
  hinge: choice({
    label: 'Hinged at the',
    options: [
      { value: 'left', label: 'left' },
      { value: 'right', label: 'right' },
    ],
    default: 'left',
    help: 'As seen from the front; the gate below hangs at the same side.',
  }),
  gate: yesNo({ label: 'Gate below the flap', default: true, help: 'A plain board from near the floor to the flap.' }),
} as const;

/** Where a join is marked by hand. */
export const joinFields = {
  x: length({
    label: 'Join at',
    min: -2000,
    max: 32_000,
    default: 0,
    help: 'From the left end of the run’s frame line; behind a pillar wherever one is.',
  }),
} as const;

/** Openings. Sizes are of the hole. */
export const openingFields = {
  through: choice({
    label: 'Through the',
    options: [
      { value: 'front', label: 'front' },
      { value: 'top', label: 'top' },
    ],
    default: 'front',
    help: 'The front: skin, and skirting where it reaches so low.',
  }),
  use: choice({
    label: 'For a',
    options: [
      { value: 'socket', label: 'socket' },
      { value: 'pipe', label: 'pipe' },
      { value: 'grille', label: 'grille' },
    ],
    default: 'socket',
    help: 'A pipe’s hole is round. Wiring and gas are for licensed people; local codes come first.',
  }),
  x: length({
    label: 'Middle, along',
    min: -2000,
    max: 32_000,
    default: 0,
    help: 'From the left end of the run’s frame line.',
  }),
  z: length({
    label: 'Middle, up',
    min: 0,
    max: 3000,
    default: 300,
    help: 'Above the floor; through the top: back from its front edge.',
  }),
  width: length({ label: 'Width of the hole', min: 5, max: 2000, default: 145, help: 'Of a pipe: its hole across.' }),
  height: length({
    label: 'Height of the hole',
    min: 5,
    max: 2000,
    default: 85,
    help: 'Through the top: its size from front to back.',
  }),
} as const;

/** One bay that is not like the others. Clearances: common practice, no source; the appliance's own instructions come first. */
export const bayFields = {
  panels: yesNo({ label: 'Panel frames', default: true, help: 'Off: the front of this bay stays plain.' }),
  purpose: choice({
    label: 'Behind it',
    options: [
      { value: 'open', label: 'open to the floor' },
      { value: 'shelves', label: 'shelves' },
      { value: 'appliance', label: 'an appliance' },
      { value: 'sink', label: 'a sink' },
      { value: 'bin', label: 'a bin' },
      { value: 'doors', label: 'doors' },
      { value: 'drawers', label: 'drawers' },
    ],
    default: 'open',
    help: 'As seen by those who serve.',
  }),
  count: count({ label: 'How many', min: 1, max: 8, default: 2, help: 'Shelves, doors or drawers.' }),
  shelves: choice({
    label: 'Shelves are',
    options: [
      { value: 'fixed', label: 'fixed on bearers' },
      { value: 'standards', label: 'adjustable on standards' },
      { value: 'holes', label: 'adjustable in rows of holes' },
    ],
    default: 'fixed',
    help: 'Holes on a pitch of 32 mm.',
    when: { field: 'purpose', is: ['shelves'] },
  }),
  width: length({ label: 'Width', min: 0, max: 2000, default: 0, help: 'Of what stands there; 0: not stated.' }),
  height: length({ label: 'Height', min: 0, max: 2500, default: 0, help: 'Of what stands there; 0: not stated.' }),
  depth: length({ label: 'Depth', min: 0, max: 2000, default: 0, help: 'Of what stands there; 0: not stated.' }),
  besides: length({ label: 'Clear at each side', min: 0, max: 300, default: 5, help: 'For air and fitting.' }),
  above: length({ label: 'Clear above', min: 0, max: 300, default: 10, help: 'For air and fitting.' }),
  behind: length({
    label: 'Clear behind',
    min: 0,
    max: 300,
    default: 50,
    help: 'Towards the front: plugs, pipes, air.',
  }),
} as const;

/**
 * What sections pass and who carries them. Doors: 762 × 1981 leaf, clear 717 × 1970 (UK trade leaf sizes; rule-of-thumb clear width: leaf
 * + gap 3 − stop 13 − leaf 35; height from memory). Van: a medium panel van, at its lower end, less some at the doors (from memory).
 */
export const carryFields = {
  shopDoorWidth: length({
    label: 'Workshop door, clear width',
    min: 300,
    max: 6000,
    default: 1400,
    help: 'Between the jambs.',
  }),
  shopDoorHeight: length({
    label: 'Workshop door, clear height',
    min: 500,
    max: 6000,
    default: 2000,
    help: 'Under the head.',
  }),
  vanLength: length({
    label: 'Van, length at the floor',
    min: 500,
    max: 14_000,
    default: 2500,
    help: 'Bulkhead to doors; a medium van has 2300 to 3000 (from memory).',
  }),
  vanWidth: length({
    label: 'Van, clear width',
    min: 300,
    max: 3000,
    default: 1200,
    help: 'Between the wheel arches: 1200 to 1390 in a medium van (from memory).',
  }),
  vanHeight: length({
    label: 'Van, clear height at the doors',
    min: 300,
    max: 4000,
    default: 1300,
    help: '1350 in a low medium van, less some at the doors (from memory).',
  }),
  routeDoorWidth: length({
    label: 'Narrowest door on the way, clear',
    min: 300,
    max: 6000,
    default: 717,
    help: 'A 762 leaf opened square gives about 717.',
  }),
  routeDoorHeight: length({
    label: 'Lowest door on the way, clear',
    min: 500,
    max: 6000,
    default: 1970,
    help: 'A 1981 leaf gives about 1970 (from memory).',
  }),
  corridorBefore: length({
    label: 'Corridor before a turn',
    min: 0,
    max: 10_000,
    default: 0,
    help: 'Clear width, turning at a right angle; 0: no such turn.',
  }),
  corridorAfter: length({
    label: 'Corridor after the turn',
    min: 0,
    max: 10_000,
    default: 0,
    help: 'Clear width; 0: no such turn.',
  }),
  people: count({
    label: 'People who carry',
    min: 1,
    max: 6,
    default: 2,
    help: 'Two carry two thirds, three half of the sum of what each may lift alone (HSE L23); more than four are unlikely to help.',
  }),
  liftKg: number({
    label: 'Each lifts',
    unit: 'kg',
    min: 5,
    max: 50,
    default: 25,
    help: '25 kg for men, 16 for women, close to the body at best height (HSE lifting filter; from memory). Not a legal limit.',
  }),
} as const;

export const fitFields = {
  tolerance: length({
    label: 'Tolerances gathered',
    min: 0,
    max: 50,
    default: 3,
    help: 'Cladding, paint and fit in one number: the frame stands this far clear of a wall.',
  }),
  scribe: length({
    label: 'Left on to scribe',
    min: 0,
    max: 50,
    default: 15,
    help: 'On whatever meets a wall; 10 to 25 is usual (common practice, no source).',
  }),
  bolts: lengths({
    label: 'Bolts at a join',
    min: 50,
    max: 2900,
    maxItems: 8,
    default: [150, 450, 850],
    help: 'Heights above the floor of the bolts through the two studs (common practice, no source).',
  }),
} as const;
