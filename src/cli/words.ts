import { formatLength } from '../base/lengths';
import type { Design } from '../vocabulary/design';
import type { Finding } from '../vocabulary/finding';

/** A finding in one line: severity, subject, what is wrong, what to do. */
export function findingLine({ severity, subject, message, remedy }: Finding): string {
  const about = subject.part ?? (subject.run ? `run ${subject.run}` : subject.path);
  return [`${severity}:`, about === undefined ? '' : `${about}:`, message, remedy]
    .filter((word) => word !== '')
    .join(' ');
}

/** The unit's size and contents, then the findings, worst first. */
export function checkText(design: Design): string {
  const { job, totals, findings } = design;
  const size = (mm: number): string => formatLength(mm, job.units);
  const lines = [
    `${job.name}: ${job.unit.name}`,
    `${size(totals.overall.length)} long, ${size(totals.overall.depth)} deep, ${size(totals.overall.height)} high (${job.units})`,
    `${design.rod.runs.length} runs, ${totals.parts} parts, ${totals.weightKg.toFixed(1)} kg`,
    findings.length === 0 ? 'nothing found' : `${findings.length} found:`,
    ...worstFirst(findings).map(findingLine),
  ];
  return `${lines.join('\n')}\n`;
}

/** The parts as a table for reading on a screen. */
export function partsText(design: Design): string {
  const size = (mm: number): string => formatLength(mm, design.job.units);
  return columns([
    ['mark', 'part', 'where', 'length', 'width', 'thick', 'ends'],
    ...design.parts.map((part) => [
      part.mark,
      part.name,
      part.where,
      size(part.shopLength),
      size(part.size.width),
      size(part.size.thickness),
      part.ends
        .map((end) => (end.kind === 'square' ? 'square' : `${end.kind} ${Math.round(end.sawDeg * 100) / 100}°`))
        .join(' / '),
    ]),
  ]);
}

/** The marks of every run as a table for reading on a screen. */
export function rodText(design: Design): string {
  return columns([
    ['run', 'lane', 'at', 'reason'],
    ...design.rod.runs.flatMap((run) =>
      [...(design.marks[run.id] ?? [])]
        .sort((a, b) => a.x - b.x)
        .map((mark) => [run.id, mark.lane, formatLength(mark.x, design.job.units), mark.reason]),
    ),
  ]);
}

const SEVERITIES: readonly Finding['severity'][] = ['stop', 'warn', 'note'];

export const worstFirst = (findings: readonly Finding[]): readonly Finding[] =>
  SEVERITIES.flatMap((severity) => findings.filter((finding) => finding.severity === severity));

function columns(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => (row[i] ?? '').length)));
  return rows
    .map(
      (row) =>
        `${row
          .map((cell, i) => cell.padEnd(widths[i] ?? 0))
          .join('  ')
          .trimEnd()}\n`,
    )
    .join('');
}
