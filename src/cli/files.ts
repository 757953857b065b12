import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { readJob } from '../flow';
import type { Job } from '../vocabulary/job';
import type { Result } from '../vocabulary/result';
import { UsageError } from './args';

/** Reads a job file. Throws a UsageError as `usable` does. */
export const openJob = (file: string): Job => usable(file, readJob(readText(file)));

/** What was read from a file. Throws a UsageError whose message is one line: the file, the path inside it, what is wrong. */
export function usable<T>(file: string, result: Result<T>): T {
  if (result.ok) return result.value;
  const first = result.issues[0];
  const more = result.issues.length > 1 ? ` (and ${result.issues.length - 1} more)` : '';
  const where = first?.path ? `${first.path}: ` : '';
  throw new UsageError(`${file}: ${where}${oneLine(first?.message ?? "can't be read")}${more}`);
}

/** The text of a file. Throws a UsageError that says why there is none. */
export function readText(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    throw new UsageError(`${file}: ${reasonOf(error)}`);
  }
}

/** Where a command's output and its remarks go. */
export interface Channels {
  readonly out: (content: string | Uint8Array) => void;
  readonly say: (line: string) => void;
}

/** Where to deliver: a file, or the channel where none is named. */
export interface Delivery {
  readonly to?: string;
  /** The job that was read: never overwritten, by whatever name or link it is called. */
  readonly source?: string;
  /** Overwrite nothing at all. */
  readonly fresh?: boolean;
}

/** Writes to a file or to the channel. Throws a UsageError instead of overwriting what must stay. */
export function deliver(content: string | Uint8Array, { to, source, fresh }: Delivery, channels: Channels): void {
  if (to === undefined) {
    channels.out(content);
    return;
  }
  if (source !== undefined && isSameFile(to, source)) {
    throw new UsageError(`${to}: is the job itself and is not overwritten`);
  }
  try {
    writeFileSync(to, content, { flag: fresh ? 'wx' : 'w' });
  } catch (error) {
    throw new UsageError(`${to}: ${reasonOf(error)}`);
  }
}

function isSameFile(a: string, b: string): boolean {
  const [one, other] = [a, b].map((file) => statSync(file, { bigint: true, throwIfNoEntry: false }));
  return one !== undefined && other !== undefined && one.dev === other.dev && one.ino === other.ino;
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
