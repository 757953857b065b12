import type { CutProblem } from '../../vocabulary/cut-problem';
import type { Issue, Result } from '../../vocabulary/result';
import { crossIssues, crossWarnings } from './across';
import { barsOf } from './bars';
import { type Found, oneOf, refuse } from './fields';
import { parsed } from './json';
import { fewest } from './limits';
import { sheetsOf } from './sheets';

export interface ProblemRead {
  readonly problem: CutProblem;
  /** What was planned all the same, but is likely a slip. */
  readonly warnings: readonly Issue[];
}

/**
 * Reads a problem from a file: JSON, the fields those of the vocabulary (`BarProblem`, `SheetProblem`), lengths in mm. Kerf and trim that
 * are absent are 0, an absent quantity is 1. Never throws; issues carry JSON pointers into the file, '' for the whole, 20 at most.
 */
export function readCutProblem(text: string): Result<ProblemRead> {
  const value = parsed(text);
  return value.ok ? checkCutProblem(value.value) : value;
}

/** The same for a value that was already parsed. */
export function checkCutProblem(value: unknown): Result<ProblemRead> {
  const issues: Issue[] = [];
  const file: Found = { value, path: '', issues };
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    refuse(file, 'a group of named values: a cutting problem');
    return { ok: false, issues };
  }
  const kind = oneOf({ value: 'kind' in value ? value.kind : undefined, path: '/kind', issues }, ['bars', 'sheets']);
  // Of another kind, everything else would be unknown too.
  if (issues.length > 0) return { ok: false, issues };
  const { problem, priced } = kind === 'bars' ? barsOf(file) : sheetsOf(file);
  if (issues.length === 0) issues.push(...crossIssues(problem));
  if (issues.length > 0) return { ok: false, issues: fewest(issues) };
  return { ok: true, value: { problem, warnings: fewest(crossWarnings(problem, priced)) } };
}
