/** A heading of the parts list: in full where the room is short for it. */
export interface Heading {
  readonly title: string;
  readonly full?: string;
  readonly number?: boolean;
}

const SIZES: readonly Heading[] = [
  { title: 'Length', full: 'Length, to the long point', number: true },
  { title: 'Width', number: true },
  { title: 'Thick', full: 'Thickness', number: true },
  { title: 'Ends' },
];

/** The list part by part. */
export const ONE_BY_ONE: readonly Heading[] = [
  { title: 'Mark' },
  { title: 'Part' },
  { title: 'Where' },
  { title: 'Material' },
  ...SIZES,
  { title: 'Weight', number: true },
  { title: 'On', full: 'On which section it is fitted, or on site' },
];

/** The list of what is cut alike. */
export const TOGETHER: readonly Heading[] = [
  { title: 'No.', full: 'How many' },
  { title: 'Part' },
  { title: 'Marks' },
  { title: 'Material' },
  ...SIZES,
  { title: 'Each', full: 'Weight of each', number: true },
  { title: 'On', full: 'On which sections they are fitted, or on site' },
];
