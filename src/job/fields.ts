import { choice, length, number, yesNo } from '../base/fields';

/*
 * Decisions that belong to the job and to no room: unit, range, default and words in one place, for the schema and the form.
 * Ranges only keep out what can't be meant; whether a design is any good is for the checks to say. Lengths in mm.
 * Defaults are common practice with no source unless one is named.
 */

/** How lengths are shown. */
export const jobFields = {
  units: choice({
    label: 'Lengths shown in',
    options: [
      { value: 'mm', label: 'millimetres' },
      { value: 'inch', label: 'inches' },
    ],
    default: 'mm',
    help: 'Either may be typed; the file always holds millimetres.',
  }),
} as const;

export const unitFields = {
  height: length({
    label: 'Height',
    min: 300,
    max: 3000,
    default: 1100,
    help: 'From the finished floor to the upper face of the top.',
  }),
  depth: length({
    label: 'Depth of the top',
    min: 100,
    max: 2000,
    default: 400,
    help: 'From the front edge of the top to its back edge.',
  }),
} as const;

export const runFields = {
  length: length({ label: 'Length', min: 100, max: 30_000, default: 2400, help: 'Taken over the layer named.' }),
  deflectionDeg: number({
    label: 'Turn to the next run',
    unit: 'deg',
    min: -150,
    max: 150,
    default: 90,
    help: 'Positive at an outside corner, negative at an inside one; 90 at a square corner, 0 straight on.',
  }),
  through: choice({
    label: 'Frame through at the corner',
    options: [
      { value: 'this', label: 'this run' },
      { value: 'next', label: 'the next run' },
    ],
    default: 'this',
    help: 'The frame of that run goes through; the other stops against it.',
  }),
} as const;

export const endFields = {
  length: length({
    label: 'Return length',
    min: 50,
    max: 5000,
    default: 500,
    help: 'Back from the corner, over the layer it was taken to.',
  }),
} as const;

/** Bays of one run, where it says otherwise than the pillars do. */
export const rhythmFields = {
  count: { kind: 'count', label: 'Bays', min: 1, max: 40, default: 3, help: 'Equal bays in this run.' },
  pitch: length({
    label: 'Greatest pitch',
    min: 150,
    max: 3000,
    default: 800,
    help: 'Centre to centre of pillars, at most.',
  }),
  mark: length({
    label: 'Pillar centre',
    min: -2000,
    max: 32_000,
    default: 0,
    help: 'Of a pillar between those at the ends, from the left end of the run’s frame line.',
  }),
} as const;

export const surveyFields = {
  directionDeg: number({
    label: 'Direction of the wall',
    unit: 'deg',
    min: -180,
    max: 180,
    default: 90,
    help: 'In plan, counter-clockwise from the first run.',
  }),
  leanDeg: number({
    label: 'Lean from plumb',
    unit: 'deg',
    min: -15,
    max: 15,
    default: 0,
    help: 'Positive where the wall leans back.',
  }),
  skirtingHeight: length({
    label: 'Skirting on it, height',
    min: 0,
    max: 500,
    default: 0,
    help: 'That stays on the wall: what stands against it is notched. 0: none.',
  }),
  skirtingThickness: length({
    label: 'Skirting on it, thickness',
    min: 0,
    max: 60,
    default: 0,
    help: 'At its thickest.',
  }),
  along: length({
    label: 'Along the run',
    min: -2000,
    max: 32_000,
    default: 0,
    help: 'From the left end of the run’s frame line.',
  }),
  height: length({
    label: 'Floor level',
    min: -500,
    max: 500,
    default: 0,
    help: 'Above the datum; negative below it.',
  }),
} as const;

/** Kerfs from memory: 3.2 for a table saw, 2.2–2.6 for a mitre saw. */
export const toolFields = {
  sawKerf: length({ label: 'Saw kerf', min: 0, max: 10, default: 3.2, help: 'Sheets and rips.' }),
  mitreSawKerf: length({ label: 'Mitre saw kerf', min: 0, max: 10, default: 2.4, help: 'Timber and mouldings.' }),
  mostTiltDeg: number({
    label: 'Blade tilts to',
    unit: 'deg',
    min: 0,
    max: 60,
    default: 47,
    help: 'A bevel beyond it is cut another way; a finding says where (45 to 48 is usual: common practice, no source).',
  }),
  roundingStep: length({
    label: 'Shop lengths to the nearest',
    min: 0.01,
    max: 10,
    default: 0.1,
    help: 'A tenth of a millimetre, or 0.396875 for 1/64 inch. The exact length is kept beside it.',
  }),
} as const;

/** What every thing in the stock book may have. */
export const stockFields = {
  densityKgM3: number({
    label: 'Density',
    unit: 'kg/m³',
    min: 50,
    max: 3000,
    default: 700,
    help: 'As it is in the workshop.',
  }),
  pricePence: number({
    label: 'Price',
    unit: 'pence',
    min: 0,
    max: 10_000_000,
    default: 0,
    help: 'What you pay, before tax.',
  }),
  pricePencePerM2: number({
    label: 'Price for a square metre',
    unit: 'pence',
    min: 0,
    max: 10_000_000,
    default: 0,
    help: 'Planed to thickness, before tax.',
  }),
  length: length({ label: 'Length', min: 100, max: 10_000, default: 2400, help: 'As bought.' }),
  grain: yesNo({
    label: 'Grain',
    default: false,
    help: 'It runs along the length of the sheet, and pieces may not be turned across it.',
  }),
  sheetWidth: length({ label: 'Width', min: 100, max: 3000, default: 1220, help: 'The shorter side of the sheet.' }),
  width: length({ label: 'Width', min: 5, max: 600, default: 63, help: 'The greater side of the section.' }),
  thickness: length({ label: 'Thickness', min: 1, max: 150, default: 18, help: 'Actual, not nominal.' }),
  maxLength: length({
    label: 'Longest board',
    min: 300,
    max: 10_000,
    default: 3000,
    help: 'The longest top in one piece.',
  }),
  section: length({
    label: 'Section point',
    min: 0,
    max: 400,
    default: 0,
    help: 'Across the face, and out from the back.',
  }),
  cut: length({
    label: 'Cutter point',
    min: -60,
    max: 0,
    default: 0,
    help: 'Back from the face, and down from the edge.',
  }),
  radius: length({
    label: 'Radius',
    min: -2000,
    max: 2000,
    default: 10,
    help: 'Positive: round. Negative: hollow. Never 0.',
  }),
} as const;

export const fixingFields = {
  diameter: length({ label: 'Diameter', min: 0, max: 50, default: 5, help: '0 where it has none.' }),
  length: length({ label: 'Length', min: 0, max: 1000, default: 65, help: '0 where it has none.' }),
  pack: { kind: 'count', label: 'Pack of', min: 1, max: 100_000, default: 200, help: 'How many come for the price.' },
} as const;

/** Most of a thing that a file may hold; far above any real job, so that a foreign file is refused quickly. */
export const MOST = {
  runs: 40,
  marks: 80,
  walls: 40,
  levels: 400,
  items: 300,
  fixings: 200,
  cutters: 100,
  stockLengths: 20,
  segments: 32,
  joins: 80,
  openings: 200,
  bays: 200,
} as const;
