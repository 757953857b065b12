/** What was typed after the program's name, sorted. */
export interface Args {
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string>>;
}

/** A mistake of the person typing, or a file that can't be read: said in one line, exit code 2. */
export class UsageError extends Error {}

/** Options and what each takes. */
export const OPTIONS: Readonly<Record<string, string>> = {
  run: 'letter of the run, such as A (default: the first)',
  kind: 'front, framing or behind (default: front)',
  format: 'json, csv, svg or text, as far as the command has it',
  alike: 'identical parts together; takes no value',
  each: 'of every part; takes no value',
  out: 'file to write (default: standard output)',
  problem: 'file with a cutting problem, instead of a job',
  rack: 'file with the offcuts there are',
  seconds: 'how long to search, for each stuff (default: 2)',
  steps: 'how many steps to search instead: the same answer on every machine',
  seed: 'whole number from which chance is drawn (default: 1)',
};

/** Options that are there or not. */
const SWITCHES: readonly string[] = ['alike', 'each'];

/** Reads `--name value`, `--name=value` and `--switch`; everything else is a word. Throws a UsageError for an unknown option or a missing value. */
export function readArgs(typed: readonly string[]): Args {
  const words: string[] = [];
  const options: Record<string, string> = {};
  for (let i = 0; i < typed.length; i += 1) {
    const item = typed[i]!;
    if (item === '--') {
      words.push(...typed.slice(i + 1));
      break;
    }
    if (item === '--help' || item === '-h') {
      words.unshift('help');
      continue;
    }
    if (!item.startsWith('--')) {
      words.push(item);
      continue;
    }
    const [name, inline] = splitOnce(item.slice(2));
    if (!Object.hasOwn(OPTIONS, name))
      throw new UsageError(`unknown option --${name}; there are ${list(Object.keys(OPTIONS), '--')}`);
    if (Object.hasOwn(options, name)) throw new UsageError(`--${name} is given twice`);
    if (SWITCHES.includes(name)) {
      if (inline !== undefined) throw new UsageError(`--${name} takes no value`);
      options[name] = 'yes';
      continue;
    }
    if (inline === undefined) i += 1;
    const value = inline ?? typed[i];
    if (value === undefined || value === '' || (inline === undefined && value.startsWith('--')))
      throw new UsageError(`--${name} needs a value: ${OPTIONS[name]}`);
    options[name] = value;
  }
  return { words, options };
}

function splitOnce(text: string): readonly [string, string | undefined] {
  const at = text.indexOf('=');
  return at < 0 ? [text, undefined] : [text.slice(0, at), text.slice(at + 1)];
}

/** "a, b, c" with a sign before each. */
export const list = (items: readonly string[], before = ''): string =>
  items.map((item) => `${before}${item}`).join(', ');

/** The value of an option among a few, or the default. Throws a UsageError that names what is allowed. */
export function choiceOf<T extends string>(args: Args, name: string, allowed: readonly T[], otherwise: T): T {
  const value = args.options[name] ?? otherwise;
  const found = allowed.find((one) => one === value);
  if (found === undefined) throw new UsageError(`--${name} is '${value}'; here it may be ${list(allowed)}`);
  return found;
}
