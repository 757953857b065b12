const SHOWN = 40;

/** A foreign value in plain words, short enough for a message. */
export function inWords(value: unknown): string {
  if (value === undefined || value === null) return value === null ? 'null' : 'nothing';
  if (typeof value === 'string') return `the text ${JSON.stringify(shorten(value))}`;
  if (typeof value === 'number') return Number.isFinite(value) ? `${value}` : 'a number too large to hold';
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (typeof value === 'object') return 'a group of named values';
  return String(value);
}

const shorten = (text: string) => (text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text);

/** Says what was found and what is allowed. `allowed` is a noun phrase: "a length from 300 to 3000 mm". */
export function complaint(found: unknown, allowed: string): string {
  return found === undefined ? `missing: needs ${allowed}` : `found ${inWords(found)}; allowed is ${allowed}`;
}

/** `a, b or c` */
export function anyOf(options: readonly string[]): string {
  if (options.length < 2) return options.join('');
  return `${options.slice(0, -1).join(', ')} or ${options[options.length - 1]}`;
}

/** A path into a file as a JSON pointer (RFC 6901): `/unit/plan/runs/0`. */
export function pointer(path: readonly PropertyKey[]): string {
  return path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

/** The steps of a JSON pointer; list places stay text. Throws when it does not begin with a slash. */
export function stepsOf(path: string): string[] {
  if (path === '') return [];
  if (!path.startsWith('/')) throw new Error(`'${path}' is no JSON pointer: it must begin with '/'`);
  return path
    .slice(1)
    .split('/')
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}
