import { readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { readJob } from '../flow';
import type { Job } from '../vocabulary/job';
import { UsageError } from './args';

/** Reads a job file. Throws a UsageError whose message is one line: the file, the path inside it, what is wrong. */
export function openJob(file: string): Job {
  const result = readJob(readText(file));
  if (result.ok) return result.value;
  const first = result.issues[0];
  const more = result.issues.length > 1 ? ` (and ${result.issues.length - 1} more)` : '';
  const where = first?.path ? `${first.path}: ` : '';
  throw new UsageError(`${file}: ${where}${oneLine(first?.message ?? 'is no job file')}${more}`);
}

function readText(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    throw new UsageError(`${file}: ${reasonOf(error)}`);
  }
}

/**
 * Writes to a file or to standard output. Throws a UsageError instead of overwriting `source` (the job that was read), by whatever
 * path it is named; and, with `fresh`, instead of overwriting anything.
 */
export function deliver(content: string | Uint8Array, to: string | undefined, source?: string, fresh = false): void {
  if (to === undefined) {
    process.stdout.write(content);
    return;
  }
  if (source !== undefined && realPath(to) === realPath(source))
    throw new UsageError(`${to}: is the job itself and is not overwritten`);
  try {
    writeFileSync(to, content, { flag: fresh ? 'wx' : 'w' });
  } catch (error) {
    throw new UsageError(`${to}: ${reasonOf(error)}`);
  }
}

/** Links resolved as far as the file exists. */
function realPath(file: string): string {
  const path = resolve(file);
  try {
    return realpathSync(path);
  } catch {
    try {
      return join(realpathSync(dirname(path)), basename(path));
    } catch {
      return path;
    }
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EISDIR: 'is a folder',
  ENOTDIR: 'a part of the path is no folder',
  EACCES: 'may not be opened',
  EPERM: 'may not be opened',
  EEXIST: 'exists already and is not overwritten',
  ENAMETOOLONG: 'the name is too long',
};

function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return REASONS[code] ?? `can't be used (${code === '' ? oneLine(String(error)) : code})`;
}

/** A message from elsewhere, kept to one line. */
const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();
