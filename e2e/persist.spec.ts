import { expect, test } from '@playwright/test';
import { fact, facts, group, kept, openBoard, openFile, runLength, saved, savedJob, type } from './support/board';

const PARTED = /Another tab has changed this job meanwhile\. Your work in this tab is kept as a job of its own/;

test('two tabs never overwrite each other', async ({ page, context }) => {
  await openBoard(page);
  await type(runLength(page, 'Run A'), '5000');
  await kept(page);

  const other = await context.newPage();
  await openBoard(other);
  await expect(runLength(other, 'Run A')).toHaveValue('5000');
  await type(runLength(other, 'Run A'), '5300');
  await kept(other);

  // This tab still has 5000 on its board, and now changes something else.
  await expect(runLength(page, 'Run A')).toHaveValue('5000');
  await type(runLength(page, 'Run B'), '3000');
  await expect(page.locator('.notice')).toHaveText(PARTED);
  await kept(page);
  // And goes on: the two are two jobs from now on.
  await type(runLength(page, 'Run B'), '3100');
  await kept(page);
  await type(runLength(other, 'Run B'), '2000');
  await kept(other);
  await expect(other.locator('.notice')).toHaveCount(0);

  await Promise.all([page.reload(), other.reload()]);
  await expect(runLength(page, 'Run A')).toHaveValue('5000');
  await expect(runLength(page, 'Run B')).toHaveValue('3100');
  await expect(runLength(other, 'Run A')).toHaveValue('5300');
  await expect(runLength(other, 'Run B')).toHaveValue('2000');

  // Each finds the other's among the other jobs.
  await page.getByRole('button', { name: 'Kept work' }).click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Open: Larkmoor Hall/ })
    .click();
  await expect(runLength(page, 'Run A')).toHaveValue('5300');
  await expect(runLength(page, 'Run B')).toHaveValue('2000');
});

test('every edit is kept; a saved job file opens as it was', async ({ page }) => {
  await openBoard(page);
  await type(runLength(page, 'Run A'), '5000');
  await type(page.getByLabel('Client', { exact: true }), 'Mrs Ødegård & Søn "Ltd"');
  await group(page, 'Top').getByLabel('Corner').selectOption('butted');
  await group(page, 'Pillars').getByLabel('Flutes', { exact: true }).fill('3');
  await group(page, 'Pillars').getByLabel('Flutes', { exact: true }).blur();
  await kept(page);
  const job = await savedJob(page);
  expect(job.client.name).toBe('Mrs Ødegård & Søn "Ltd"');
  expect(job.unit.elements.top).toMatchObject({ corner: 'butted' });
  expect(job.unit.elements.pillar).toMatchObject({ flutes: 3 });
  const file = await saved(page);
  const size = await facts(page);

  await page.reload();
  await expect(runLength(page, 'Run A')).toHaveValue('5000');
  expect(await savedJob(page)).toEqual(job);

  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('New job');
  await expect(fact(page, 'Length')).not.toHaveText(size[0]!);
  await openFile(page, file);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Larkmoor Hall: café servery');
  await expect.poll(() => facts(page)).toEqual(size);
  expect(await savedJob(page)).toEqual(job);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();

  // The job just opened is kept too, and the new one beside it.
  await kept(page);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Larkmoor Hall: café servery');
  await page.getByRole('button', { name: 'Kept work' }).click();
  await expect(page.getByRole('dialog').getByRole('button', { name: /^Open: New job/ })).toHaveCount(1);
});

test('the examples can always be had afresh', async ({ page }) => {
  await openBoard(page);
  await type(runLength(page, 'Run A'), '5000');
  await kept(page);
  await page.getByRole('button', { name: 'Kept work' }).click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Open: Servery/ })
    .click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(runLength(page, 'Run A')).toHaveValue('4800');
  await page.getByRole('button', { name: 'Kept work' }).click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Open: Bar/ })
    .click();
  await expect(runLength(page, 'Run E')).toHaveValue('1500');
  await page.getByRole('button', { name: 'Kept work' }).click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Open: Ticket counter/ })
    .click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await page.getByRole('tab', { name: /^Run A/ }).click();
  await expect(page.locator('.rod-lane-front .rod-width', { hasText: /^flap 720$/ })).toBeVisible();
});
