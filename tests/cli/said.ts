import { run as runCommand } from '../../src/cli/run';

/** What a command answered. */
export interface Done {
  readonly code: number | null;
  readonly out: string;
  readonly said: string;
}

/** Runs a command within the test, without starting the program. */
export async function run(...typed: string[]): Promise<Done> {
  const bytes: Uint8Array[] = [];
  let said = '';
  const code = await runCommand(typed, {
    out: (content) => bytes.push(Buffer.from(content)),
    say: (line) => {
      said += `${line}\n`;
    },
  });
  return { code, out: Buffer.concat(bytes).toString(), said };
}
