/**
 * `npm run picture`: builds the app, opens the demo job in a browser and writes the picture that the README shows.
 */
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { build, preview } from 'vite';
import { BROWSER_ARGS, ensureBrowser } from './browser.ts';

const root = join(import.meta.dirname, '..', '..');
const PORT = 4175;

await build({ root: join(root, 'app'), configFile: join(root, 'vite.config.ts'), logLevel: 'warn' });
const server = await preview({
  root: join(root, 'app'),
  configFile: join(root, 'vite.config.ts'),
  preview: { port: PORT, strictPort: true },
});
const browser = await chromium.launch({ executablePath: ensureBrowser(), args: [...BROWSER_ARGS] });
try {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(`http://127.0.0.1:${PORT}/`);
  await page.locator('canvas').waitFor();
  await page.waitForTimeout(6000); // software rendering: the first frames take their time
  await page.screenshot({ path: join(root, 'app', 'picture.png') });
} finally {
  await browser.close();
  await server.close();
}
