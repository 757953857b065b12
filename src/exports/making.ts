import type { Design } from '../vocabulary/design';
import type { Vec3 } from '../vocabulary/geometry';
import type { Job } from '../vocabulary/job';
import type { FixingLine, FixingMap, Fixings, Making, PartFixing, SiteWork, Spacer, Step } from '../vocabulary/making';
import type { Section } from '../vocabulary/section';
import { rounded } from './table/csv-text';
import { type Column, lengthCell, table } from './table/part-columns';

const EXACT = 0.01;
const WEIGHT = 0.001;

/** How much of a fixing: pieces whole, grams and metres to what can be measured out. */
const amountCell = (amount: number, unit: FixingLine['unit']): number =>
  rounded(amount, unit === 'm of bead' ? 0.01 : unit === 'g' ? 0.1 : 1);

/** The sections, one row each: what is carried, where it balances, where hands or straps take it, what it breaks. */
export function sectionsCsv({ job, sections }: Pick<Design, 'job' | 'sections'>): string {
  const length = lengthCell(job);
  const point = (at: Vec3): string => at.map(length).join(' ');
  const columns: Column<Section>[] = [
    { head: 'section', cell: (s) => s.id },
    {
      head: 'pieces of runs mm',
      cell: (s) => s.pieces.map(({ run, from, to }) => `${run} ${length(from)} to ${length(to)}`).join('; '),
    },
    { head: 'parts', cell: (s) => s.parts.length },
    { head: 'length mm', cell: (s) => length(s.size.length) },
    { head: 'depth mm', cell: (s) => length(s.size.depth) },
    { head: 'height mm', cell: (s) => length(s.size.height) },
    { head: 'weight kg', cell: (s) => rounded(s.weightKg, WEIGHT) },
    { head: 'centre of gravity x mm along first run', cell: (s) => length(s.centreOfGravity[0]) },
    { head: 'centre of gravity y mm to the back', cell: (s) => length(s.centreOfGravity[1]) },
    { head: 'centre of gravity z mm above floor', cell: (s) => length(s.centreOfGravity[2]) },
    { head: 'lifting points x y z mm', cell: (s) => s.liftingPoints.map(point).join('; ') },
    {
      head: 'breaches',
      cell: (s) =>
        s.breaches.map(({ what, value, limit }) => `${what} ${tenths(value)}, ${tenths(limit)} allowed`).join('; ') ||
        null,
    },
  ];
  return table(columns, sections);
}

const tenths = (value: number): number => rounded(value, 0.1);

/** What there is to buy: a row for each fixing, adhesive and piece of ironmongery. */
export function fixingsCsv({ totals }: Fixings): string {
  const columns: Column<FixingLine>[] = [
    { head: 'fixing', cell: (l) => l.name },
    { head: 'unit', cell: (l) => l.unit },
    { head: 'counted', cell: (l) => amountCell(l.amount, l.unit) },
    { head: 'spare', cell: (l) => amountCell(l.spare, l.unit) },
    { head: 'packs', cell: (l) => (l.packs > 0 ? l.packs : null) },
    { head: 'in the stock book', cell: (l) => (l.item === undefined ? 'no' : 'yes') },
    { head: 'rules', cell: (l) => l.rules.join('; ') },
  ];
  return table(columns, totals);
}

/** The fixings of each part, a row for each hold. */
export function partFixingsCsv({ parts }: Fixings): string {
  const columns: Column<PartFixing>[] = [
    { head: 'part', cell: (l) => l.part },
    { head: 'fixing', cell: (l) => l.name },
    { head: 'amount', cell: (l) => amountCell(l.amount, l.unit) },
    { head: 'unit', cell: (l) => l.unit },
    { head: 'how', cell: (l) => l.how },
    { head: 'rule', cell: (l) => l.rule },
  ];
  return table(columns, parts);
}

/** The blocks against which the frames are built. */
export function spacersCsv(spacers: readonly Spacer[], job: Job): string {
  const names = new Map(job.stock.items.map((item) => [item.id, item.name]));
  const columns: Column<Spacer>[] = [
    { head: 'length mm', cell: (s) => s.shopLength },
    { head: 'exact length mm', cell: (s) => rounded(s.length, EXACT) },
    { head: 'cut from an offcut of', cell: (s) => names.get(s.stock) ?? s.stock },
    { head: 'times used', cell: (s) => s.times },
    { head: 'where', cell: (s) => s.where.join('; ') },
  ];
  return table(columns, spacers);
}

/** The order of assembly, one row for each step. */
export function assemblyCsv(steps: readonly Step[]): string {
  const columns: Column<Step>[] = [
    { head: 'step', cell: (s) => s.number },
    { head: 'place', cell: (s) => s.place },
    { head: 'section', cell: (s) => s.section ?? null },
    { head: 'what to do', cell: (s) => s.what },
    { head: 'parts', cell: (s) => s.parts.join(' ') || null },
  ];
  return table(columns, steps);
}

/** Timber behind the skin: running measurements from the datum end of each frame, heights above the floor. */
export function mapCsv(maps: readonly FixingMap[], job: Job): string {
  const length = lengthCell(job);
  const rows = maps.flatMap((map) => map.timber.map((timber) => ({ map, timber })));
  const columns: Column<(typeof rows)[number]>[] = [
    { head: 'run', cell: ({ map }) => map.run },
    { head: 'measured from the', cell: ({ map }) => `${map.datum} end of the frame` },
    { head: 'from mm', cell: ({ timber }) => length(timber.from) },
    { head: 'to mm', cell: ({ timber }) => length(timber.to) },
    { head: 'low mm above floor', cell: ({ timber }) => length(timber.low) },
    { head: 'high mm above floor', cell: ({ timber }) => length(timber.high) },
    { head: 'timber', cell: ({ timber }) => timber.name },
    { head: 'part', cell: ({ timber }) => timber.part },
  ];
  return table(columns, rows);
}

/** One thing that waits on site. */
export interface SiteRow {
  readonly what: 'packer' | 'scribe' | 'notch';
  readonly run: string;
  readonly where: string;
  /** Along the run from its left frame-line end, of a packer. */
  readonly x?: number;
  /** Of a scribe's line; of a notch its height. */
  readonly length?: number;
  /** Thickness of a packer or of what is notched over; the most that is scribed off. */
  readonly depth: number;
  /** What was left on to be scribed. */
  readonly left?: number;
}

/** All that waits on site as rows of one table. */
export const siteRows = ({ packers, scribes, notches }: SiteWork): readonly SiteRow[] => [
  ...packers.map(({ part, run, x, thickness }) => ({
    what: 'packer' as const,
    run,
    where: `under ${part}`,
    x,
    depth: thickness,
  })),
  ...scribes.map(({ where, run, length, most, left }) => ({
    what: 'scribe' as const,
    run,
    where,
    length,
    depth: most,
    left,
  })),
  ...notches.map(({ where, run, parts, height, thickness }) => ({
    what: 'notch' as const,
    run,
    where: `${where}: ${parts.join(' ')}`,
    length: height,
    depth: thickness,
  })),
];

/** What waits on site: packers, scribes, notches. */
export function siteCsv({ site }: Pick<Making, 'site'>, job: Job): string {
  const length = lengthCell(job);
  const optional = (value: number | undefined): number | null => (value === undefined ? null : length(value));
  const columns: Column<SiteRow>[] = [
    { head: 'what', cell: (r) => r.what },
    { head: 'run', cell: (r) => r.run },
    { head: 'where', cell: (r) => r.where },
    { head: 'x mm from the left end of the frame line', cell: (r) => optional(r.x) },
    { head: 'length of scribe or height of notch mm', cell: (r) => optional(r.length) },
    { head: 'thickness or most mm', cell: (r) => length(r.depth) },
    { head: 'left on mm', cell: (r) => optional(r.left) },
  ];
  return table(columns, siteRows(site));
}

/** Any of it as plain JSON, lengths in mm. */
export const makingJson = (job: Pick<Job, 'name'>, what: Readonly<Record<string, unknown>>): string =>
  `${JSON.stringify({ job: job.name, units: 'mm', ...what }, null, 2)}\n`;
