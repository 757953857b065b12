import { run } from './run';

// A reader that has seen enough (`| head`) is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

process.exitCode = await run(process.argv.slice(2), {
  out: (content) => process.stdout.write(content),
  say: (line) => process.stderr.write(`${line}\n`),
});
