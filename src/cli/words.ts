import { figures } from '../base/figure';
import { asSawn } from '../exports/table/part-columns';
import { edgesText, endText } from '../exports/table/part-words';
import { cautionsOf } from '../flow';
import type { Design } from '../vocabulary/design';
import type { Job } from '../vocabulary/job';
import type { Alike, Part } from '../vocabulary/part';
import { columns } from './columns';
import { findingLines } from './findings';

/** "1 run", "2 runs". */
const count = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;

/** The unit's size and contents, then the findings, worst first, those alike in one line, then what can hurt somebody. */
export function checkText({ job, rod, parts, totals, findings }: Design): string {
  const size = figures(job);
  const { length, depth, height } = totals.overall;
  const lines = [
    `${job.name}: ${job.unit.name}`,
    `${size(length)} long, ${size(depth)} deep, ${size(height)} high (${job.units})`,
    `${count(rod.runs.length, 'run')}, ${count(totals.parts, 'part')}, ${totals.weightKg.toFixed(1)} kg`,
    findings.length === 0 ? 'nothing found' : `${findings.length} found:`,
    ...findingLines(findings),
    'Cautions:',
    ...cautionsOf({ job, parts }).map((caution) => `- ${caution}`),
  ];
  return `${lines.join('\n')}\n`;
}

const CUT_HEAD = ['length', 'width', 'thick', 'ends', 'edges'];

/** Sizes, ends and edges of a part, as cells. */
function cutCells(part: Part, job: Job): readonly string[] {
  const size = figures(job);
  const [start, other] = part.ends.map(endText);
  return [
    size(part.shopLength),
    size(part.size.width),
    size(part.size.thickness),
    start === other ? `${start}${start === 'square' ? '' : ' both'}` : `${start} / ${other}`,
    edgesText(part.edges, job),
  ];
}

/** The parts as a table for reading on a screen. */
export const partsText = ({ job, parts }: Design): string =>
  columns([
    ['mark', 'part', 'where', ...CUT_HEAD],
    ...parts.map((part) => [part.mark, part.name, part.where, ...cutCells(part, job)]),
  ]);

/**
 * The cutting list, identical parts together, as a table for reading on a screen: sizes to saw to, with what is left on; the marks last, for they may
 * be many.
 */
export const cuttingText = ({ job, parts }: Design, alike: (parts: readonly Part[]) => readonly Alike[]): string =>
  columns([
    ['off', 'part', ...CUT_HEAD, 'marks'],
    ...alike(parts).map(({ marks, part }) => [
      String(marks.length),
      part.name,
      ...cutCells(asSawn(part, job), job),
      marks.join(' '),
    ]),
  ]);

/** The marks of every run as a table for reading on a screen. */
export function rodText({ job, rod, marks }: Design): string {
  const size = figures(job);
  return columns([
    ['run', 'lane', 'at', 'reason'],
    ...rod.runs.flatMap((run) =>
      [...(marks[run.id] ?? [])]
        .sort((a, b) => a.x - b.x)
        .map((mark) => [run.id, mark.lane, size(mark.x), mark.reason]),
    ),
  ]);
}
