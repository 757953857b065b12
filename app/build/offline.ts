import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Plugin } from 'vite';
import { serviceWorkerSource } from './service-worker.ts';

/** One file of the built app: its address relative to the page, and its content. */
export interface ShippedFile {
  readonly address: string;
  readonly content: string | Uint8Array;
}

/** A name for this exact set of files: changes when any address or content does, whatever the order. */
export function contentVersion(files: readonly ShippedFile[]): string {
  const hash = createHash('sha256');
  for (const file of [...files].sort((a, b) => (a.address < b.address ? -1 : 1))) {
    hash.update(`${file.address}\0`).update(createHash('sha256').update(file.content).digest());
  }
  return hash.digest('hex').slice(0, 16);
}

/** Every file below `folder`, addressed relative to it with forward slashes; none when the folder is missing. */
export function filesBelow(folder: string): ShippedFile[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => ({ address: relative(folder, path).split(sep).join('/'), content: readFileSync(path) }));
}

/**
 * Writes `sw.js`: a service worker which keeps a copy of every emitted and public file, so that the app opens and
 * works without a network. `cachePrefix` names the app's caches in the browser.
 */
export function offlineCopy(cachePrefix: string): Plugin {
  let publicDir = '';
  return {
    name: 'counterwright:offline-copy',
    apply: 'build',
    configResolved(config) {
      publicDir = config.publicDir;
    },
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const emitted = Object.values(bundle).map((output) => ({
          address: output.fileName,
          content: output.type === 'chunk' ? output.code : output.source,
        }));
        const files = [...emitted, ...(publicDir ? filesBelow(publicDir) : [])];
        if (!emitted.some((file) => file.address === 'index.html')) {
          this.error('sw.js cannot be written: the build emitted no index.html.');
        }
        this.emitFile({
          type: 'asset',
          fileName: 'sw.js',
          source: serviceWorkerSource(
            `${cachePrefix} `,
            contentVersion(files),
            files.map((file) => file.address),
          ),
        });
      },
    },
  };
}
