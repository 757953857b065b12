import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { initialScriptBudget } from './app/build/budget.ts';
import { offlineCopy } from './app/build/offline.ts';

/** Most initial JavaScript that the app may ask of a browser, gzipped, in bytes (the design's own bound, 420 kB). */
const INITIAL_SCRIPT_BYTES = 420_000;

export default defineConfig({
  root: 'app',
  base: './',
  publicDir: '../public',
  plugins: [react(), initialScriptBudget(INITIAL_SCRIPT_BYTES), offlineCopy('counterwright')],
  worker: { format: 'es' },
  build: { outDir: '../dist', emptyOutDir: true, target: 'es2022', chunkSizeWarningLimit: 1500 },
  server: { host: '127.0.0.1', port: 5173 },
  preview: { host: '127.0.0.1', port: 4173, strictPort: true },
  test: {
    root: import.meta.dirname,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    environment: 'node',
    testTimeout: 30_000,
    // Left to itself it keeps a core free, which on two cores is half of them.
    maxWorkers: '100%',
  },
});
