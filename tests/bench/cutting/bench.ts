/**
 * `npm run bench:cutting`. The engine is bundled first, as for the browser: the runner of TypeScript files gives every small function a name each
 * time it is made. Everything is measured in one process. No test asserts these figures: they depend on the machine.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { build } from 'vite';

/** Below node_modules, where what the engine imports is found. */
const BUNDLE = join(import.meta.dirname, '..', '..', '..', 'node_modules', '.bench-cutting');

await build({
  configFile: false,
  publicDir: false,
  logLevel: 'error',
  build: { ssr: join(import.meta.dirname, 'tables.ts'), outDir: BUNDLE, emptyOutDir: true, target: 'es2022' },
});

const { status } = spawnSync(process.execPath, [join(BUNDLE, 'tables.js'), ...process.argv.slice(2)], {
  stdio: 'inherit',
});
process.exitCode = status ?? 1;
