/**
 * `npm run bench`. The engine is bundled first, as for the browser, for the runner of TypeScript files gives every small function a name
 * each time it is made. Each row is measured in a fresh process: the engine of the language makes its code for what it has seen, and would
 * have seen the other rows. No test asserts these figures: they depend on the machine.
 */
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { build } from 'vite';
import type { Row } from './rows';

/** Below node_modules, where what the engine imports is found. */
const BUNDLE = join(import.meta.dirname, '..', '..', 'node_modules', '.bench');

await build({
  configFile: false,
  publicDir: false,
  logLevel: 'error',
  build: { ssr: join(import.meta.dirname, 'rows.ts'), outDir: BUNDLE, emptyOutDir: true, target: 'es2022' },
});

const run = (...row: readonly string[]): string =>
  execFileSync(process.execPath, [join(BUNDLE, 'rows.js'), ...row], { encoding: 'utf8' });

const rows = Number(run());
for (let row = 0; row < rows; row++) {
  const { what, found, bound, unit } = JSON.parse(run(String(row))) as Row;
  const figures = `${found.toFixed(2).padStart(8)} ${unit.padEnd(2)}  at most ${String(bound).padStart(5)} ${unit.padEnd(2)}`;
  process.stdout.write(`${what.padEnd(48)}  ${figures}  ${found <= bound ? 'holds' : 'over'}\n`);
}
