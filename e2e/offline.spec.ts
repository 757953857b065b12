import { expect, test } from '@playwright/test';

test('the app opens again without a network, once it has been visited', async ({ page, context }) => {
  await page.goto('./');
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) =>
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
    );
  });

  await context.setOffline(true);
  await expect(page.evaluate(() => fetch('./not-kept.txt', { cache: 'no-store' }))).rejects.toThrow();
  await page.reload();

  await expect(page.locator('#root > *').first()).toBeAttached();
  const served = await page.evaluate(() => {
    const entries = performance.getEntries().filter((entry) => entry instanceof PerformanceResourceTiming);
    return entries.map((entry) => ({ name: entry.name, byWorker: entry.workerStart > 0 }));
  });
  expect(served.length).toBeGreaterThan(1);
  expect(served.filter((entry) => entry.name.startsWith('http') && !entry.byWorker)).toEqual([]);
});
