import { choice, length, stock, yesNo } from '../../base/fields';

/** The frame behind the front. Defaults: common practice, no source, unless named. */
export const fields = {
  build: yesNo({
    label: 'Frame behind the front',
    default: true,
    help: 'Cross frames from the front frame to rear posts; they carry the top, and what stands behind stands between them.',
  }),
  timber: stock({
    of: 'timber',
    label: 'Carcass timber',
    default: 'sawn-38x63',
    help: 'Posts and rails, on edge: its thickness lies along the run.',
    when: { field: 'build', is: [true] },
  }),
  lines: choice({
    label: 'Cross frames',
    options: [
      { value: 'bays', label: 'behind every pillar' },
      { value: 'ends', label: 'at ends and joins only' },
    ],
    default: 'bays',
    help: 'Where two would leave less than 150 mm between them, one is left out.',
    when: { field: 'build', is: [true] },
  }),
  setBack: length({
    label: 'Set back from the top’s back edge',
    min: 0,
    max: 300,
    default: 40,
    help: 'From the back edge of the top to the rear face of the posts.',
    when: { field: 'build', is: [true] },
  }),
  rearRail: yesNo({
    label: 'Rear rails',
    default: true,
    help: 'From post to post: under the top, and along the bottom where nothing is to be wheeled or set in.',
    when: { field: 'build', is: [true] },
  }),
  midRail: yesNo({
    label: 'Middle rail in each cross frame',
    default: false,
    help: 'Halfway up, from front to back: stiffer, and something to fix a fixed shelf to.',
    when: { field: 'build', is: [true] },
  }),
  toeHeight: length({
    label: 'Recess for toes, height',
    min: 0,
    max: 250,
    default: 0,
    help: 'At the back, below the bottom rails; 0: none. 100–150 is usual (from memory).',
    when: { field: 'build', is: [true] },
  }),
  toeDepth: length({
    label: 'Recess for toes, depth',
    min: 20,
    max: 200,
    default: 60,
    help: 'How far the feet stand in from the rear face of the posts; used where the recess has a height. 50–75 is usual (from memory).',
    when: { field: 'build', is: [true] },
  }),
} as const;
