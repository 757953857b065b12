import type { Issue } from '../../src/vocabulary/result';

/** Each point of a foreign file as a line: its path, then what is wrong there. A point about the whole file has no path. */
export const issueLines = (issues: readonly Issue[]): readonly string[] =>
  issues.map(({ path, message }) => (path ? `${path}: ${message}` : message));
