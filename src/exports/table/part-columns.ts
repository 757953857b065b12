import { formatLength } from '../../base/lengths';
import { toStep } from '../../base/round';
import type { Job } from '../../vocabulary/job';
import type { EndCut, Oversize, Part } from '../../vocabulary/part';
import { type Cell, csvText, rounded } from './csv-text';
import { ANGLE, edgesText, groovesText, oversizeText } from './part-words';

/** Columns named exact: hundredths, as they are computed. All other lengths keep to the job's own step. */
const EXACT = 0.01;
const WEIGHT = 0.001;

export interface Column<T> {
  readonly head: string;
  readonly cell: (row: T) => Cell;
}

/** A table from its columns. */
export const table = <T>(columns: readonly Column<T>[], rows: readonly T[]): string =>
  csvText(
    columns.map((column) => column.head),
    rows.map((row) => columns.map((column) => column.cell(row))),
  );

/** The columns of one kind of row turned into those of another. */
export const columnsOf = <T, S>(columns: readonly Column<T>[], from: (row: S) => T): readonly Column<S>[] =>
  columns.map(({ head, cell }) => ({ head, cell: (row) => cell(from(row)) }));

/** What a part is made of, and its name. */
export function materialColumns({ stock }: Job): readonly Column<Part>[] {
  const names = new Map(stock.items.map((item) => [item.id, item.name]));
  return [
    { head: 'material', cell: (p) => names.get(p.material) ?? p.material },
    { head: 'section', cell: (p) => p.section ?? null },
  ];
}

/** A length in mm, to the job's step. */
export const lengthCell =
  ({ tools }: Job) =>
  (mm: number): number =>
    toStep(mm, tools.roundingStep);

/** All that one must know to cut a part: sizes, both ends, edges, grooves. */
export function cuttingColumns(job: Job): readonly Column<Part>[] {
  const length = lengthCell(job);
  return [
    { head: 'length mm', cell: (p) => length(p.shopLength) },
    { head: 'width mm', cell: (p) => length(p.size.width) },
    { head: 'thickness mm', cell: (p) => length(p.size.thickness) },
    { head: 'exact length mm', cell: (p) => rounded(p.size.length, EXACT) },
    { head: 'exact width mm', cell: (p) => rounded(p.size.width, EXACT) },
    { head: 'short point mm', cell: (p) => length(p.shortPoint) },
    ...end('start', 0),
    ...end('other end', 1),
    { head: 'other end the same', cell: (p) => (sameCut(p.ends[0], p.ends[1]) ? 'yes' : 'no') },
    { head: 'edge work', cell: (p) => edgesText(p.edges, job) },
    { head: 'grooves', cell: (p) => groovesText(p.grooves, job) },
  ];
}

/** Other work beside cuts, edges and grooves; then what is left on beyond the finished size. */
export const workColumns = (job: Job): readonly Column<Part>[] => [
  { head: 'other work', cell: (p) => p.work?.join('; ') || null },
  { head: 'left on', cell: (p) => oversizeText(p.oversize ?? [], job) || null },
];

/** When it is fitted, on which section it leaves, and what holds it, by the words of the rules. */
export const fittingColumns: readonly Column<Part>[] = [
  { head: 'fitted', cell: (p) => p.fitted },
  { head: 'leaves on section', cell: (p) => p.inSection ?? null },
  { head: 'held by', cell: (p) => (p.holds ?? []).map((hold) => `${hold.by}: ${hold.rule}`).join('; ') || null },
  {
    head: 'ironmongery',
    cell: (p) => (p.hardware ?? []).map(({ what, count }) => `${count} ${what}`).join('; ') || null,
  },
];

/** A part as large as it is sawn: what is left on to be taken off in fitting is on it. */
export function asSawn(part: Part, { tools }: Job): Part {
  const more = (on: Oversize['on']): number =>
    (part.oversize ?? []).reduce((sum, one) => sum + (one.on === on ? one.amount : 0), 0);
  const [longer, wider] = [more('length'), more('width')];
  if (longer === 0 && wider === 0) return part;
  const length = part.size.length + longer;
  return {
    ...part,
    size: { ...part.size, length, width: part.size.width + wider },
    shopLength: toStep(length, tools.roundingStep),
    shortPoint: part.shortPoint + longer,
  };
}

export const weightCell = (p: Part): number => rounded(p.weightKg, WEIGHT);

/** Sizes as the workshop reads them, for a job in inches; none for one in millimetres. */
export const inchColumns = ({ units }: Job): readonly Column<Part>[] =>
  units === 'inch'
    ? [
        { head: 'length in', cell: (p) => formatLength(p.shopLength, 'inch') },
        { head: 'width in', cell: (p) => formatLength(p.size.width, 'inch') },
        { head: 'thickness in', cell: (p) => formatLength(p.size.thickness, 'inch') },
      ]
    : [];

function end(name: string, i: 0 | 1): readonly Column<Part>[] {
  return [
    { head: `${name} cut`, cell: (p) => p.ends[i].kind },
    { head: `${name} angle deg`, cell: (p) => rounded(p.ends[i].angleDeg, ANGLE) },
    { head: `${name} saw deg`, cell: (p) => rounded(p.ends[i].sawDeg, ANGLE) },
    { head: `${name} tilt deg`, cell: (p) => rounded(p.ends[i].tiltDeg, ANGLE) },
    { head: `${name} long side`, cell: (p) => (p.ends[i].longSide === 'none' ? null : p.ends[i].longSide) },
  ];
}

/** Same to the hundredth of a degree that the table shows. */
const sameCut = (a: EndCut, b: EndCut): boolean =>
  a.kind === b.kind &&
  a.longSide === b.longSide &&
  (['angleDeg', 'sawDeg', 'tiltDeg'] as const).every((key) => rounded(a[key], ANGLE) === rounded(b[key], ANGLE));
