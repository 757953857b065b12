import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/**
 * Full path of a program of the system (for example `pdftotext`), or null when this machine has none.
 * A test that needs it says by name that it was skipped: `test.skipIf(!findTool('pdftotext'))(...)`.
 */
export function findTool(name: string): string | null {
  const endings = process.platform === 'win32' ? ['.exe', '.cmd', ''] : [''];
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    if (folder === '') continue;
    for (const ending of endings) {
      const path = join(folder, name + ending);
      if (isProgram(path)) return path;
    }
  }
  return null;
}

/** Whether `path` is a file that may be run. */
export function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}
