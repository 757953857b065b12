import type { Result } from '../../vocabulary/result';
import { MOST_CHARACTERS } from './limits';

/** A text as JSON. Never throws. */
export function parsed(text: string): Result<unknown> {
  if (text.length > MOST_CHARACTERS)
    return refused(`the file is too long: at most ${MOST_CHARACTERS} characters are read`);
  try {
    return { ok: true, value: JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text) as unknown };
  } catch (error) {
    return refused(`this is not JSON: ${error instanceof Error ? error.message : String(error)}`);
  }
}

const refused = (message: string): Result<never> => ({ ok: false, issues: [{ path: '', message }] });
