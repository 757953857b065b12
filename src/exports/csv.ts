import { formatLength } from '../base/lengths';
import type { Design } from '../vocabulary/design';
import type { EdgeWork, EndCut, GrooveWork, Part } from '../vocabulary/part';
import { type Cell, csvText, rounded } from './table/csv-text';

/** Lengths in the tables: hundredths, as they are computed. Shop lengths keep the job's own step. */
const LENGTH = 0.01;
const ANGLE = 0.01;
const WEIGHT = 0.001;

interface Column<T> {
  readonly head: string;
  readonly cell: (row: T) => Cell;
}

/**
 * The parts, one row each, in the design's order. Lengths in mm, angles in degrees, weights in kg, places in unit coordinates
 * (plan x and y, z up from the floor). A job in inches gets three more columns with sizes as the workshop reads them.
 */
export function partsCsv(design: Pick<Design, 'job' | 'parts'>): string {
  const names = new Map(design.job.stock.items.map((item) => [item.id, item.name]));
  const columns: Column<Part>[] = [
    { head: 'mark', cell: (p) => p.mark },
    { head: 'run', cell: (p) => p.run },
    { head: 'part', cell: (p) => p.name },
    { head: 'where', cell: (p) => p.where },
    { head: 'number', cell: () => 1 },
    { head: 'material', cell: (p) => names.get(p.material) ?? p.material },
    { head: 'length mm', cell: (p) => rounded(p.shopLength, LENGTH) },
    { head: 'width mm', cell: (p) => rounded(p.size.width, LENGTH) },
    { head: 'thickness mm', cell: (p) => rounded(p.size.thickness, LENGTH) },
    { head: 'exact length mm', cell: (p) => rounded(p.size.length, LENGTH) },
    { head: 'short point mm', cell: (p) => rounded(p.shortPoint, LENGTH) },
    ...end('start', 0),
    ...end('other end', 1),
    { head: 'other end the same', cell: (p) => (sameCut(p.ends[0], p.ends[1]) ? 'yes' : 'no') },
    { head: 'edge work', cell: (p) => p.edges.map(edgeText).join('; ') },
    { head: 'grooves', cell: (p) => p.grooves.map(grooveText).join('; ') },
    { head: 'x mm', cell: (p) => rounded(p.place.origin[0], LENGTH) },
    { head: 'y mm', cell: (p) => rounded(p.place.origin[1], LENGTH) },
    { head: 'z mm', cell: (p) => rounded(p.place.origin[2], LENGTH) },
    { head: 'weight kg', cell: (p) => rounded(p.weightKg, WEIGHT) },
  ];
  if (design.job.units === 'inch') {
    columns.push(
      { head: 'length in', cell: (p) => formatLength(p.shopLength, 'inch') },
      { head: 'width in', cell: (p) => formatLength(p.size.width, 'inch') },
      { head: 'thickness in', cell: (p) => formatLength(p.size.thickness, 'inch') },
    );
  }
  return table(columns, design.parts);
}

/** The marks of every run, one row each: x in mm from the left end of the run's frame line, with its reason. */
export function rodCsv(design: Pick<Design, 'job' | 'rod' | 'marks'>): string {
  const rows = design.rod.runs.flatMap((run) =>
    [...(design.marks[run.id] ?? [])].sort((a, b) => a.x - b.x).map((mark) => ({ run, mark })),
  );
  const columns: Column<(typeof rows)[number]>[] = [
    { head: 'run', cell: ({ run }) => run.id },
    { head: 'name', cell: ({ run }) => run.name },
    { head: 'lane', cell: ({ mark }) => mark.lane },
    { head: 'x mm', cell: ({ mark }) => rounded(mark.x, LENGTH) },
    { head: 'reason', cell: ({ mark }) => mark.reason },
    { head: 'part', cell: ({ mark }) => mark.part ?? null },
  ];
  if (design.job.units === 'inch') columns.push({ head: 'x in', cell: ({ mark }) => formatLength(mark.x, 'inch') });
  return table(columns, rows);
}

const table = <T>(columns: readonly Column<T>[], rows: readonly T[]): string =>
  csvText(
    columns.map((column) => column.head),
    rows.map((row) => columns.map((column) => column.cell(row))),
  );

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

function edgeText({ edge, work, angleDeg, cutter }: EdgeWork): string {
  return [edge, work, cutter, angleDeg === undefined ? undefined : `${rounded(angleDeg, ANGLE)}°`]
    .filter((word) => word !== undefined)
    .join(' ');
}

const grooveText = ({ centre, width, depth }: GrooveWork): string =>
  `${rounded(width, LENGTH)} wide ${rounded(depth, LENGTH)} deep at ${rounded(centre, LENGTH)}`;
