import type { Job } from '../vocabulary/job';

const WIDTH = 110;

/**
 * A job as JSON text, indented, with what fits on one line kept on one line. Numbers are written in full (the shortest text that
 * reads back to the same number), so that reading gives the same job. The same job always gives the same text.
 */
export function writeJob(job: Job): string {
  return `${pretty(job, '')}\n`;
}

function pretty(value: unknown, indent: string): string {
  const flat = inline(value);
  if (typeof value !== 'object' || value === null || indent.length + flat.length <= WIDTH) return flat;
  const deeper = `${indent}  `;
  const lines = Array.isArray(value)
    ? value.map((item) => `${deeper}${pretty(item, deeper)}`)
    : entriesOf(value).map(([key, item]) => `${deeper}${JSON.stringify(key)}: ${pretty(item, deeper)}`);
  const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}'];
  return lines.length === 0 ? `${open}${close}` : `${open}\n${lines.join(',\n')}\n${indent}${close}`;
}

function inline(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(inline).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = entriesOf(value).map(([key, item]) => `${JSON.stringify(key)}: ${inline(item)}`);
  return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
}

/** JSON knows no `undefined`: an optional value that is not there is left out. */
const entriesOf = (value: object): [string, unknown][] =>
  Object.entries(value).filter(([, item]) => item !== undefined);
