import { choice, length, yesNo } from '../base/fields';

/*
 * How stock is cut up: decisions of the workshop, the same for all its jobs or not, as one likes. Lengths in mm. Defaults are common practice
 * with no source. Kerfs are among the tools.
 */
export const cuttingFields = {
  sheetTrim: length({
    label: 'Trimmed off the edges of a sheet',
    min: 0,
    max: 50,
    default: 5,
    help: 'Off each edge of a new sheet, before anything is cut from it: edges are knocked and not quite square.',
  }),
  barTrim: length({
    label: 'Cut off the ends of a bar',
    min: 0,
    max: 200,
    default: 20,
    help: 'Off each end of new timber and mouldings, at least: ends are split, dirty or painted.',
  }),
  offcutTrim: length({
    label: 'Trimmed off an offcut',
    min: 0,
    max: 50,
    default: 0,
    help: 'Off each edge or end of what comes out of the rack; 0: it was sawn clean when it went in.',
  }),
  stages: choice({
    label: 'A sheet is cut in',
    options: [
      { value: 'any', label: 'as many stages as it takes' },
      { value: '3', label: 'three stages: rips, cross-cuts, rips' },
      { value: '2', label: 'two stages: rips, cross-cuts' },
    ],
    default: 'any',
    help: 'How often the direction of cutting may change. Fewer: less handling, more waste.',
  }),
  trimsFree: yesNo({
    label: 'A last cut to size is no stage',
    default: true,
    help: 'A piece narrower than its strip is ripped to size afterwards, and that is not counted.',
  }),
  longestCut: length({
    label: 'Longest cut of the saw',
    min: 0,
    max: 10_000,
    default: 0,
    help: 'What the saw can rip or cross-cut in one pass; 0: any length.',
  }),
  leastLength: length({
    label: 'Least offcut of a sheet, length',
    min: 0,
    max: 3000,
    default: 300,
    help: 'Shorter than this it goes into the bin, not into the rack.',
  }),
  leastWidth: length({
    label: 'Least offcut of a sheet, width',
    min: 0,
    max: 3000,
    default: 100,
    help: 'Narrower than this it goes into the bin.',
  }),
  leastBar: length({
    label: 'Least offcut of a bar',
    min: 0,
    max: 5000,
    default: 300,
    help: 'Shorter than this it goes into the bin.',
  }),
  oversizeOn: choice({
    label: 'Sawn over size',
    options: [
      { value: 'none', label: 'nothing' },
      { value: 'worked', label: 'pieces with mitred or moulded edges' },
      { value: 'all', label: 'every piece of sheet' },
    ],
    default: 'none',
    help: 'Which pieces of sheet are sawn larger first and trimmed to size afterwards.',
  }),
  oversize: length({
    label: 'Over size by',
    min: 0,
    max: 30,
    default: 3,
    help: 'On each side of those pieces, for the last trim.',
  }),
  longestStrip: length({
    label: 'Longest strip to mould',
    min: 100,
    max: 5000,
    default: 1200,
    help: 'Blocks, bases and caps are moulded as a strip and then cross-cut. Short enough to pass the router in one go.',
  }),
  framesTogether: yesNo({
    label: 'Each panel frame from one length',
    default: false,
    help: 'So that profile and colour meet at its mitres. It may take more lengths.',
  }),
  eitherFace: yesNo({
    label: 'Hardwood either face up',
    default: false,
    help: 'Blanks for tops are as good on both faces, so that mitred lengths may be turned over to save stuff.',
  }),
} as const;
