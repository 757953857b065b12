import type { Finding } from '../vocabulary/finding';

const SEVERITIES: readonly Finding['severity'][] = ['stop', 'warn', 'note'];

/** No more marks are named in a line. */
const MOST_NAMED = 6;

/** Findings as lines, worst first. Those alike – of one rule – in one line: the first, how many more, and which. */
export function findingLines(findings: readonly Finding[]): readonly string[] {
  const lots = new Map<string, Finding[]>();
  for (const severity of SEVERITIES)
    for (const finding of findings.filter((one) => one.severity === severity)) {
      const key = `${severity} ${finding.rule}`;
      lots.set(key, [...(lots.get(key) ?? []), finding]);
    }
  return [...lots.values()].map(([first, ...others]) => `${findingLine(first!)}${andMore(others)}`);
}

/** A finding in one line: severity, subject unless the message names it, what is wrong, what to do, what to beware of. */
function findingLine({ severity, subject, message, remedy, caution }: Finding): string {
  const about = subject.part ?? (subject.run ? `run ${subject.run}` : subject.path);
  const isNamed = about === undefined || namesIt(message, about);
  return [`${severity}:`, isNamed ? '' : `${about}:`, message, remedy, caution ?? '']
    .filter((word) => word !== '')
    .join(' ');
}

/** Whether the words stand in a message on their own: A-PL1 is not in A-PL12. */
function namesIt(message: string, words: string): boolean {
  const at = message.toLowerCase().indexOf(words.toLowerCase());
  return at >= 0 && !/[\p{L}\p{N}]/u.test(message[at + words.length] ?? '');
}

function andMore(others: readonly Finding[]): string {
  if (others.length === 0) return '';
  const distinct = (names: readonly (string | undefined)[]): readonly string[] => [
    ...new Set(names.filter((name) => name !== undefined)),
  ];
  const parts = distinct(others.map(({ subject }) => subject.part));
  const runs = distinct(others.map(({ subject }) => subject.run));
  const places = `${runs.length === 1 ? 'run' : 'runs'} ${runs.join(', ')}`;
  const named = parts.length > 0 && parts.length <= MOST_NAMED ? parts.join(', ') : runs.length > 0 ? places : '';
  return ` … and ${others.length} more like it${named === '' ? '' : `: ${named}`}`;
}
