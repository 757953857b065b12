import type { z } from 'zod';
import type { Issue } from '../vocabulary/result';
import { pointer } from './words';

/** Most issues that are told at once. */
const MOST_ISSUES = 20;

/** What the schema found, each at its path: unknown names one by one. */
export function issuesOf(error: z.ZodError): Issue[] {
  const issues = error.issues.flatMap((issue): Issue[] =>
    issue.code === 'unrecognized_keys'
      ? issue.keys.slice(0, MOST_ISSUES).map((key) => ({ path: pointer([...issue.path, key]), message: issue.message }))
      : [{ path: pointer(issue.path), message: issue.message }],
  );
  return fewest(issues);
}

/** The first of them, and how many more there are. */
export function fewest(issues: readonly Issue[]): Issue[] {
  if (issues.length <= MOST_ISSUES) return [...issues];
  const told = issues.slice(0, MOST_ISSUES - 1);
  return [...told, { path: '', message: `and ${issues.length - told.length} more` }];
}
