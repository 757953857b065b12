import { choice, length, stock } from '../../base/fields';

/** Doors and drawer fronts behind the front, plain boards. Defaults: common practice, no source. */
export const fields = {
  sheet: stock({
    of: 'sheet',
    label: 'Doors and drawer fronts',
    default: 'mdf-18',
    help: 'Plain boards, as seen by those who serve.',
  }),
  lie: choice({
    label: 'They lie',
    options: [
      { value: 'overlay', label: 'on the posts' },
      { value: 'inset', label: 'between the posts' },
    ],
    default: 'overlay',
    help: 'On the posts they cover half of each; between them they lie flush and shut against stops.',
  }),
  gap: length({
    label: 'Gap round each',
    min: 1,
    max: 10,
    default: 3,
    help: 'Between neighbours, and above and below; paint takes some of it.',
  }),
  floor: length({
    label: 'Clear of the floor, at least',
    min: 0,
    max: 300,
    default: 15,
    help: 'Below the lowest: floors rise, and what drags is planed off.',
  }),
  stop: stock({
    of: 'timber',
    label: 'Stops',
    default: 'sawn-25x38',
    help: 'On the posts, behind what shuts against them.',
    when: { field: 'lie', is: ['inset'] },
  }),
} as const;
