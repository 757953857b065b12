import { defineConfig } from '@playwright/test';
import { BROWSER_ARGS, ensureBrowser } from './tests/tools/browser.ts';

// Not the port of `npm start`, so that the journeys run while somebody is using the app.
const port = Number(process.env.JOURNEY_PORT ?? 4174);

// Playwright reads this page again in its workers, which then need not search.
process.env.CHROMIUM_PATH = ensureBrowser();

export default defineConfig({
  testDir: 'e2e',
  testMatch: '**/*.spec.ts',
  outputDir: 'node_modules/.cache/journeys',
  workers: 1,
  fullyParallel: false,
  forbidOnly: Boolean(process.env.CI),
  retries: 0,
  timeout: 90_000,
  expect: { timeout: 20_000 },
  reporter: 'list',
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    acceptDownloads: true,
    launchOptions: { executablePath: process.env.CHROMIUM_PATH, args: [...BROWSER_ARGS] },
  },
  webServer: {
    // Always a fresh build: a stale one must not pass.
    command: `npx vite build --logLevel warn && npx vite preview --port ${port}`,
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
    timeout: 180_000,
  },
});
