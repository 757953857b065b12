import { list, readArgs, UsageError } from './args';
import { COMMANDS } from './commands';
import type { Channels } from './files';
import { UNUSABLE } from './on-job';

/** Runs the command typed and gives the exit code. What the person can mend is said in one line; a bug throws. */
export async function run(typed: readonly string[], channels: Channels): Promise<number> {
  try {
    return await obey(typed, channels);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    channels.say(error.message);
    return UNUSABLE;
  }
}

async function obey(typed: readonly string[], channels: Channels): Promise<number> {
  const args = readArgs(typed);
  const name = args.words[0];
  const names = list(Object.keys(COMMANDS));
  if (name === undefined) throw new UsageError(`say what to do: ${names}`);
  if (!Object.hasOwn(COMMANDS, name)) throw new UsageError(`'${name}' is no command; there are ${names}`);
  const command = COMMANDS[name];
  const foreign = Object.keys(args.options).filter((option) => !command.takes.includes(option));
  if (name !== 'help' && foreign.length > 0) {
    throw new UsageError(`${name} takes no ${list(foreign, '--')}: ${command.usage}`);
  }
  return command.run(args, channels);
}
