import { list, readArgs, UsageError } from './args';
import { COMMANDS, UNUSABLE } from './commands';

/** Runs the command typed. What the person can mend is said in one line; a bug keeps its stack. */
async function main(typed: readonly string[]): Promise<number> {
  const args = readArgs(typed);
  const name = args.words[0];
  if (name === undefined) throw new UsageError(`say what to do: ${list(Object.keys(COMMANDS))}`);
  if (!Object.hasOwn(COMMANDS, name))
    throw new UsageError(`'${name}' is no command; there are ${list(Object.keys(COMMANDS))}`);
  const command = COMMANDS[name]!;
  const foreign = Object.keys(args.options).filter((option) => !command.takes.includes(option));
  if (name !== 'help' && foreign.length > 0)
    throw new UsageError(`${name} takes no ${list(foreign, '--')}: ${command.usage}`);
  return command.run(args);
}

// A reader that has seen enough (`| head`) is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (error) {
  if (!(error instanceof UsageError)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = UNUSABLE;
}
