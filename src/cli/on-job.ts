import { design } from '../flow';
import type { Design } from '../vocabulary/design';
import { type Args, list, UsageError } from './args';
import { type Channels, deliver, openJob } from './files';
import { findingLines } from './findings';

/** Exit codes: done; a finding says that the unit can't be built so; the input can't be used. */
export const DONE = 0;
export const STOPPED = 1;
export const UNUSABLE = 2;

/**
 * Opens the job, makes the output, delivers it. Findings that stop the job make the exit code; they are said beside the output,
 * unless the output is about them.
 */
export async function onJob(
  args: Args,
  channels: Channels,
  make: (worked: Design) => string | Uint8Array | Promise<Uint8Array>,
  saysThem = false,
): Promise<number> {
  const file = operand(args, 'JOB');
  const worked = design(openJob(file));
  deliver(await make(worked), { to: args.options.out, source: file }, channels);
  const stops = worked.findings.filter((finding) => finding.severity === 'stop');
  if (!saysThem) findingLines(stops).forEach(channels.say);
  return stops.length > 0 ? STOPPED : DONE;
}

/** The one word a command takes besides its options. */
export function operand(args: Args, what: string): string {
  const [command, word, extra] = args.words;
  if (word === undefined || word === '') throw new UsageError(`${command} needs ${what}`);
  if (extra !== undefined) throw new UsageError(`${command} takes one ${what}; there is also '${extra}'`);
  return word;
}

/** The run asked for, in capitals or not, or the first. */
export function runOf(args: Args, { rod }: Design): string {
  const letters = rod.runs.map((run) => run.id);
  const asked = args.options.run ?? letters[0] ?? '';
  const found = letters.find((letter) => letter.toUpperCase() === asked.toUpperCase());
  if (found === undefined) throw new UsageError(`--run is '${asked}'; the job has ${list(letters)}`);
  return found;
}

/** The setting-out of one run alone. */
export const onlyRun = (worked: Design, run: string): Design => ({
  ...worked,
  rod: { ...worked.rod, runs: worked.rod.runs.filter(({ id }) => id === run) },
  framing: worked.framing.filter((one) => one.run === run),
  marks: { [run]: worked.marks[run] ?? [] },
});
