import type { Result } from '../vocabulary/result';
import { toVersion2 } from './step-2';

/** A parsed file of an older version; nothing about it is known but that it is a group. */
export type Foreign = Readonly<Record<string, unknown>>;

/** Brings a file from version `from` to `from + 1`. It may meet anything, and leaves what it does not know for the schema. */
export interface Step {
  readonly from: number;
  readonly upgrade: (file: Foreign) => Foreign;
}

/** All steps, oldest first. */
export const STEPS: readonly Step[] = [toVersion2];

/**
 * A file brought up to the current version, step by step. Issues: no version, a version newer than this program, one with no
 * step, a step that could make nothing of it.
 */
export function migrate(file: Foreign, current: number, steps: readonly Step[] = STEPS): Result<Foreign> {
  const found = file.version;
  if (typeof found !== 'number' || !Number.isInteger(found) || found < 1) {
    const what = found === undefined ? 'missing' : `found ${JSON.stringify(found)?.slice(0, 40)}`;
    return refused(`${what}: needs the version of the file, a whole number from 1 to ${current}`);
  }
  if (found > current) return refused(`written by a newer version: ${found}, this one reads up to ${current}`);
  let at = file;
  for (let version = found; version < current; version += 1) {
    const step = steps.find((candidate) => candidate.from === version);
    if (!step)
      return refused(`version ${version} can no longer be read; the oldest that can is ${oldest(steps, current)}`);
    try {
      at = { ...step.upgrade(at), version: version + 1 };
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      return refused(`could not be brought from version ${version} to ${version + 1}: ${why}`);
    }
  }
  return { ok: true, value: at };
}

/** The oldest version from which an unbroken row of steps leads to the current one. */
function oldest(steps: readonly Step[], current: number): number {
  let version = current;
  while (steps.some((step) => step.from === version - 1)) version -= 1;
  return version;
}

const refused = (message: string): Result<never> => ({ ok: false, issues: [{ path: '/version', message }] });
