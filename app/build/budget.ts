import { gzipSync } from 'node:zlib';
import type { Plugin } from 'vite';

/** What the budget needs to know of one emitted chunk. */
export interface WeighedChunk {
  readonly fileName: string;
  readonly code: string;
  readonly isEntry: boolean;
  /** File names of the chunks that load before this one runs. */
  readonly imports: readonly string[];
}

/**
 * The chunks a browser fetches before the app can start: every entry and all that it statically imports.
 * Chunks reached only by `import()` are left out: they are fetched when asked for.
 */
export function initialChunks(chunks: readonly WeighedChunk[]): WeighedChunk[] {
  const byName = new Map(chunks.map((chunk) => [chunk.fileName, chunk]));
  const found = new Set<WeighedChunk>();
  const queue = chunks.filter((chunk) => chunk.isEntry);
  for (let chunk = queue.pop(); chunk; chunk = queue.pop()) {
    if (found.has(chunk)) continue;
    found.add(chunk);
    for (const name of chunk.imports) {
      const next = byName.get(name);
      if (next) queue.push(next);
    }
  }
  return [...found];
}

/** Gzipped size in bytes of the initial chunks, each compressed by itself as a server sends it. */
export function initialBytes(chunks: readonly WeighedChunk[]): number {
  return initialChunks(chunks).reduce((sum, chunk) => sum + gzipSync(chunk.code).length, 0);
}

/** Fails the build when the initial JavaScript, gzipped, is over `maxBytes`, and when there is no entry to weigh. */
export function initialScriptBudget(maxBytes: number): Plugin {
  return {
    name: 'counterwright:initial-script-budget',
    apply: 'build',
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const chunks = Object.values(bundle).filter((output) => output.type === 'chunk');
        const initial = initialChunks(chunks);
        // A worker is bundled apart, and arrives here with no entry of a page.
        if (initial.length === 0) this.error('The initial JavaScript cannot be weighed: the build has no entry chunk.');
        const bytes = initialBytes(chunks);
        const names = initial.map((chunk) => chunk.fileName).join(', ');
        const said = `${(bytes / 1000).toFixed(1)} kB gzipped of ${(maxBytes / 1000).toFixed(0)} kB (${names})`;
        if (bytes > maxBytes) this.error(`The initial JavaScript is over its budget: ${said}.`);
        this.info(`Initial JavaScript: ${said}.`);
      },
    },
  };
}
