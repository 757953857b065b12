import { expect, test } from '@playwright/test';
import { serious } from './support/axe';
import { canvas, exported, fact, group, openNew, savedJob } from './support/board';
import { atRest, difference } from './support/picture';

test('a bay is given doors from the rod: they are made, seen from behind, listed and fixed', async ({ page }) => {
  await openNew(page);
  await page.keyboard.press('b');
  await atRest(page);
  const open = await canvas(page).screenshot();
  const parts = Number(await fact(page, 'Parts').textContent());

  const bay = page.getByRole('button', { name: 'Behind bay 2: nothing decided' });
  await bay.focus();
  await page.keyboard.press('Enter');
  const purpose = page.locator('#rod-bay-purpose');
  await expect(purpose).toBeFocused();
  await purpose.selectOption('doors');
  await expect(page.getByRole('button', { name: 'Behind bay 2: doors' })).toBeVisible();
  await expect.poll(async () => Number(await fact(page, 'Parts').textContent())).toBeGreaterThan(parts);
  await expect.poll(async () => difference(page, open, await canvas(page).screenshot())).toBeGreaterThan(0.01);
  expect((await savedJob(page)).unit.bays).toMatchObject([{ run: 1, bay: 2, purpose: 'doors', panels: true }]);
  await test.step('nobody is shut out', async () => expect(await serious(page, '.rod')).toEqual([]));

  // Its row, beside it: fewer doors.
  const row = group(page, 'Run A, bay 2');
  await row.getByLabel('How many').fill('1');
  await row.getByLabel('How many').press('Enter');
  expect((await savedJob(page)).unit.bays[0]).toMatchObject({ count: 1 });

  await test.step('without panel frames on its front', async () => {
    const frames = row.getByRole('checkbox', { name: 'Panel frames' });
    const before = await fact(page, 'Parts').textContent();
    await frames.uncheck();
    await expect(fact(page, 'Parts')).not.toHaveText(before ?? '');
  });

  await row.getByRole('button', { name: /like the others/ }).click();
  await expect(row).toHaveCount(0);
  await expect(fact(page, 'Parts')).toHaveText(String(parts));
});

test('the lists about the making are there, and can be handed on', async ({ page }) => {
  await openNew(page);
  await page.getByRole('radio', { name: 'Parts list' }).check();
  await expect(page.getByRole('columnheader', { name: 'On', exact: true })).toBeVisible();
  for (const [name, heading, file] of [
    ['Fixings', 'Fixings', 'Fixings (CSV)'],
    ['Spacers', 'Spacers', 'Spacers (CSV)'],
    ['Fixing map', 'Fixing map', 'Fixing map (CSV)'],
    ['Site work', 'Site work', 'Site work (CSV)'],
  ] as const) {
    await test.step(name, async () => {
      await page.getByRole('radio', { name, exact: true }).check();
      await expect(page.getByRole('heading', { name: heading, exact: true })).toBeVisible();
      const rows = await page.locator('.parts tbody tr').count();
      const lines = (await exported(page, file)).toString('utf8').trimEnd().split('\r\n');
      expect(lines).toHaveLength(rows + 1);
      expect(await serious(page, '.lists')).toEqual([]);
    });
  }
});
