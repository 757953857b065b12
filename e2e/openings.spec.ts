import { expect, type Locator, type Page, test } from '@playwright/test';
import { serious } from './support/axe';
import { findings, handed, openFile, openNew, savedJob, thing } from './support/board';
import { middleOf } from './support/picture';

const hole = (page: Page): Locator => page.getByRole('slider', { name: 'Opening 1' });
const row = (page: Page): Locator => thing(page, 'Opening 1');
const along = (page: Page): Locator => row(page).getByLabel('Middle, along');
const slip = (page: Page): Locator => page.getByRole('region', { name: 'In hand on the rod' });
/** What is said where an opening meets a pillar. */
const MEETS = /meets pillar 2/;

test('an opening is added, drawn on to a pillar, refused as it goes, and put back in one step', async ({ page }) => {
  await openNew(page);
  await page.getByRole('button', { name: 'Add an opening' }).click();
  // In the middle of the first bay: (140 + 753.3) / 2.
  await expect(along(page)).toHaveValue('447');
  await expect(hole(page)).toHaveAttribute('aria-valuenow', '447');
  await expect(row(page).locator('.refusal.stop')).toHaveCount(0);
  expect((await savedJob(page)).unit.openings).toHaveLength(1);

  const { x, y } = await middleOf(hole(page).locator('.rod-cut'));
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 20, y, { steps: 2 });
  await page.mouse.move(x + 120, y, { steps: 4 });
  await test.step('while it is drawn along', async () => {
    await expect(slip(page)).toContainText(MEETS);
    await expect(row(page).locator('.refusal.stop')).toContainText(MEETS);
    await expect(hole(page)).toHaveAttribute('aria-valuetext', MEETS);
    await expect(hole(page)).toHaveClass(/rod-refused/);
  });
  await page.mouse.up();
  await expect(findings(page).filter({ hasText: MEETS })).toHaveCount(1);
  await expect(along(page)).not.toHaveValue('447');

  await page.keyboard.press('Control+z');
  await expect(along(page)).toHaveValue('447');
  await expect(findings(page).filter({ hasText: MEETS })).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(hole(page)).toHaveCount(0);
});

test('Escape lets an opening spring back while it is drawn', async ({ page }) => {
  await openNew(page);
  await page.getByRole('button', { name: 'Add an opening' }).click();
  const { x, y } = await middleOf(hole(page).locator('.rod-cut'));
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 40, y, { steps: 4 });
  await expect(along(page)).not.toHaveValue('447');
  await page.keyboard.press('Escape');
  await expect(along(page)).toHaveValue('447');
  await page.mouse.up();
  await expect(along(page)).toHaveValue('447');
  await expect(page.getByRole('button', { name: 'Redo' })).toBeDisabled();
});

test('the same by the keyboard, and as it is typed', async ({ page }) => {
  await openNew(page);
  await page.getByRole('button', { name: 'Add an opening' }).click();
  await hole(page).focus();
  await page.keyboard.press('ArrowRight');
  await expect(along(page)).toHaveValue('448');
  await page.keyboard.press('Shift+ArrowLeft');
  await expect(along(page)).toHaveValue('438');
  await page.keyboard.press('ArrowUp');
  await expect(row(page).getByLabel('Middle, up')).toHaveValue('551');
  await page.keyboard.press('Enter');
  await expect(row(page).getByLabel('In run')).toBeFocused();

  // Not decided yet: only typed.
  await along(page).fill('823');
  await expect(row(page).locator('.refusal.stop')).toContainText(MEETS);
  await expect(findings(page).filter({ hasText: MEETS })).toHaveCount(0);
  await test.step('nobody is shut out', async () => {
    expect(await serious(page, '.column.left')).toEqual([]);
    expect(await serious(page, '.rod')).toEqual([]);
  });
  await along(page).press('Escape');
  await expect(row(page).locator('.refusal.stop')).toHaveCount(0);
  await along(page).fill('823');
  await along(page).press('Enter');
  await expect(findings(page).filter({ hasText: MEETS })).toHaveCount(1);

  await row(page).getByRole('button', { name: 'Remove Opening 1' }).click();
  await expect(hole(page)).toHaveCount(0);
  expect((await savedJob(page)).unit.openings).toEqual([]);
});

test('openings in the front and in the top over one another are each taken by their middle', async ({ page }) => {
  await openNew(page);
  const job = await savedJob(page);
  const over = { run: 1, x: 447, width: 145, height: 85 } as const;
  const openings = [
    { ...over, name: 'Low', through: 'front', use: 'socket', z: 350 },
    { ...over, name: 'High', through: 'front', use: 'socket', z: 600 },
    { ...over, name: 'Tap', through: 'top', use: 'pipe', z: 200, width: 60, height: 60 },
  ] as const;
  await openFile(page, handed(JSON.stringify({ ...job, name: 'Three', unit: { ...job.unit, openings } })));
  await expect(page.locator('.job-name')).toHaveText('Three');
  await expect(page.locator('.rod-hole')).toHaveCount(3);
  for (const [i, { name }] of openings.entries()) {
    const { x, y } = await middleOf(page.getByRole('slider', { name, exact: true }).locator('.rod-cut'));
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 8, y, { steps: 4 });
    await page.mouse.up();
    // This one went along; those not yet drawn are where they were.
    const { unit } = await savedJob(page);
    expect(unit.openings.map((one) => one.x > 447)).toEqual(openings.map((_, k) => k <= i));
  }
});
