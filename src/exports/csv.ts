import { formatLength } from '../base/lengths';
import type { Design } from '../vocabulary/design';
import type { Alike, Part } from '../vocabulary/part';
import {
  asSawn,
  type Column,
  columnsOf,
  cuttingColumns,
  fittingColumns,
  inchColumns,
  lengthCell,
  materialColumns,
  table,
  weightCell,
  workColumns,
} from './table/part-columns';

/**
 * The parts, one row each, in the design's order. Lengths in mm to the job's step, exact ones to a hundredth, angles in degrees,
 * weights in kg; sizes are finished ones, what is left on to be taken off in fitting is said beside. A part's place is that of its own origin: at its start, back and lower edge. A job in inches gets three more columns
 * with sizes as the workshop reads them.
 */
export function partsCsv({ job, parts }: Pick<Design, 'job' | 'parts'>): string {
  const length = lengthCell(job);
  const columns: Column<Part>[] = [
    { head: 'mark', cell: (p) => p.mark },
    { head: 'run', cell: (p) => p.run },
    { head: 'part', cell: (p) => p.name },
    { head: 'where', cell: (p) => p.where },
    ...materialColumns(job),
    ...cuttingColumns(job),
    ...workColumns(job),
    ...fittingColumns,
    { head: 'x mm along first run', cell: (p) => length(p.place.origin[0]) },
    { head: 'y mm to the back', cell: (p) => length(p.place.origin[1]) },
    { head: 'z mm above floor', cell: (p) => length(p.place.origin[2]) },
    { head: 'weight kg', cell: weightCell },
    ...inchColumns(job),
  ];
  return table(columns, parts);
}

const isLeftOn = (part: Part): boolean => (part.oversize ?? []).length > 0;

/**
 * The cutting list: identical parts in one row, with their number and marks. Sizes are those to saw to: where something is left on, it is
 * in them, said beside, and the finished size stands in columns of its own. `alike` gathers them: the flow's function. */
export function cuttingCsv(
  { job, parts }: Pick<Design, 'job' | 'parts'>,
  alike: (parts: readonly Part[]) => readonly Alike[],
): string {
  const length = lengthCell(job);
  const of = (columns: readonly Column<Part>[]): readonly Column<Alike>[] => columnsOf(columns, (row) => row.part);
  const sawn = (columns: readonly Column<Part>[]): readonly Column<Alike>[] =>
    columnsOf(columns, (row) => asSawn(row.part, job));
  const columns: Column<Alike>[] = [
    { head: 'number off', cell: ({ marks }) => marks.length },
    { head: 'marks', cell: ({ marks }) => marks.join(' ') },
    { head: 'part', cell: ({ part }) => part.name },
    ...of(materialColumns(job)),
    ...sawn(cuttingColumns(job)),
    ...of(workColumns(job)),
    { head: 'finished length mm', cell: ({ part }) => (isLeftOn(part) ? length(part.shopLength) : null) },
    { head: 'finished width mm', cell: ({ part }) => (isLeftOn(part) ? length(part.size.width) : null) },
    { head: 'weight each kg', cell: ({ part }) => weightCell(part) },
    ...sawn(inchColumns(job)),
  ];
  return table(columns, alike(parts));
}

/** The marks of every run, one row each: x in mm from the left end of the run's frame line, with its reason. */
export function rodCsv({ job, rod, marks }: Pick<Design, 'job' | 'rod' | 'marks'>): string {
  const length = lengthCell(job);
  const rows = rod.runs.flatMap((run) =>
    [...(marks[run.id] ?? [])].sort((a, b) => a.x - b.x).map((mark) => ({ run, mark })),
  );
  const columns: Column<(typeof rows)[number]>[] = [
    { head: 'run', cell: ({ run }) => run.id },
    { head: 'name', cell: ({ run }) => run.name },
    { head: 'lane', cell: ({ mark }) => mark.lane },
    { head: 'x mm from the left end of the frame line', cell: ({ mark }) => length(mark.x) },
    { head: 'reason', cell: ({ mark }) => mark.reason },
    { head: 'part', cell: ({ mark }) => mark.part ?? null },
  ];
  if (job.units === 'inch') columns.push({ head: 'x in', cell: ({ mark }) => formatLength(mark.x, 'inch') });
  return table(columns, rows);
}
