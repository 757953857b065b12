import type { SheetInfo } from '../exports/svg';
import { design } from '../flow';
import type { Design } from '../vocabulary/design';
import { type Args, list, UsageError } from './args';
import { type Channels, deliver, openJob } from './files';
import { findingLine, worstFirst } from './words';

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
  const stops = worstFirst(worked.findings).filter((finding) => finding.severity === 'stop');
  if (!saysThem) for (const finding of stops) channels.say(findingLine(finding));
  return stops.length > 0 ? STOPPED : DONE;
}

/** The one word a command takes besides its options. */
export function operand(args: Args, what: string): string {
  const [command, word, extra] = args.words;
  if (word === undefined || word === '') throw new UsageError(`${command} needs ${what}`);
  if (extra !== undefined) throw new UsageError(`${command} takes one ${what}; there is also '${extra}'`);
  return word;
}

/** The run asked for, or the first. */
export function runOf(args: Args, { rod }: Design): string {
  const letters = rod.runs.map((run) => run.id);
  const asked = args.options.run ?? letters[0] ?? '';
  if (!letters.includes(asked)) throw new UsageError(`--run is '${asked}'; the job has ${list(letters)}`);
  return asked;
}

/** What the title block says of a job. */
export const sheetInfo = ({ job }: Design): SheetInfo => ({
  job: job.name,
  unit: job.unit.name,
  units: job.units,
  client: job.client.name,
});
