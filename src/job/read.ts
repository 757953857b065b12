import type { Job } from '../vocabulary/job';
import type { Issue, Result } from '../vocabulary/result';
import { crossIssues } from './cross';
import { fewest, issuesOf } from './issues';
import { faultOf } from './json';
import { MOST_CHARACTERS, tooMuch } from './limits';
import { type Foreign, migrate } from './migrate';
import { FORMAT, makeSchema, type RoomWords, VERSION } from './schema';
import { inWords } from './words';

/** Reads a job file. Never throws; issues carry JSON pointers into the file, '' for the whole. */
type Reader = (text: string) => Result<Job>;
/** The same for a value that was already parsed, as from the browser's own database. */
type Checker = (value: unknown) => Result<Job>;

/** A checker for the rooms given. At most 20 issues. Decisions of rooms that are left out take their defaults. */
export function makeChecker(rooms: readonly RoomWords[]): Checker {
  const schema = makeSchema(rooms);
  return (value) => {
    if (!isGroup(value)) return refused('', `this is no Counterwright job: found ${inWords(value)}`);
    if (value.format !== FORMAT) {
      const found = value.format === undefined ? 'it has no "format"' : `its "format" is ${inWords(value.format)}`;
      return refused('/format', `this is JSON but not a Counterwright job: ${found}; allowed is "${FORMAT}"`);
    }
    const excess = tooMuch(value);
    if (excess) return { ok: false, issues: [excess] };
    const current = migrate(value, VERSION);
    if (!current.ok) return current;
    const parsed = schema.safeParse(current.value);
    if (!parsed.success) return { ok: false, issues: issuesOf(parsed.error) };
    const issues = crossIssues(parsed.data, rooms);
    return issues.length > 0 ? { ok: false, issues: fewest(issues) } : { ok: true, value: parsed.data };
  };
}

/** A reader for the rooms given: refuses what is too long unread, then what is not JSON with its line and column, then checks. */
export function makeReader(rooms: readonly RoomWords[]): Reader {
  const check = makeChecker(rooms);
  return (text) => {
    if (text.length > MOST_CHARACTERS) {
      const millions = (n: number) => (n / 1_000_000).toFixed(1);
      return refused(
        '',
        `the file is too large: ${millions(text.length)} million characters; at most ${millions(MOST_CHARACTERS)} million are read`,
      );
    }
    const value = parse(text.startsWith('\uFEFF') ? text.slice(1) : text);
    return value.ok ? check(value.value) : value;
  };
}

function parse(text: string): Result<unknown> {
  try {
    return { ok: true, value: JSON.parse(text) as unknown };
  } catch (error) {
    const why = faultOf(text)?.message ?? (error instanceof Error ? error.message : String(error));
    return refused('', `this is not JSON: ${why}`);
  }
}

function isGroup(value: unknown): value is Foreign {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function refused(path: Issue['path'], message: string): Result<never> {
  return { ok: false, issues: [{ path, message }] };
}
