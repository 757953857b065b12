import { expect, type Page, test } from '@playwright/test';
import { serious } from './support/axe';
import { canvas, card, openNew } from './support/board';
import { difference } from './support/picture';

/** Where one stands: the number of the step, and how many there are. */
async function standing(page: Page): Promise<readonly [number, number]> {
  const said = await page.locator('.step-number').textContent();
  const [, step, of] = /^Step (\d+) of (\d+)$/.exec(said ?? '') ?? [];
  return [Number(step), Number(of)];
}

/** How many parts there are in the view, by what it says of itself. */
const shown = async (page: Page): Promise<number> =>
  Number(/: (\d+) parts/.exec((await canvas(page).getAttribute('aria-label')) ?? '')?.[1]);

test('the unit is put together step by step, by buttons, keys and by itself', async ({ page }) => {
  await openNew(page);
  await page.keyboard.press('a');
  await expect(page.getByRole('radio', { name: 'Assembly' })).toBeChecked();
  await expect(canvas(page)).toHaveAttribute('aria-label', /step 1 of \d+ of the assembly/);
  const [, of] = await standing(page);
  expect(of).toBeGreaterThan(3);
  await expect(page.getByRole('button', { name: 'Previous' })).toBeDisabled();
  const first = await shown(page);
  await expect(page.getByRole('list', { name: 'Parts of this step' }).getByRole('button')).toHaveCount(first);
  const picture = await canvas(page).screenshot();

  await page.getByRole('button', { name: 'Next', exact: true }).click();
  await expect.poll(() => standing(page)).toEqual([2, of]);
  await expect.poll(() => shown(page)).toBeGreaterThan(first);
  await expect.poll(async () => difference(page, picture, await canvas(page).screenshot())).toBeGreaterThan(0.005);
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => standing(page)).toEqual([3, of]);
  await page.keyboard.press('ArrowLeft');
  await expect.poll(() => standing(page)).toEqual([2, of]);

  const part = page.getByRole('list', { name: 'Parts of this step' }).getByRole('button').first();
  const mark = await part.locator('b').textContent();
  await part.click();
  await expect(card(page).getByRole('heading')).toContainText(mark ?? '?');
  await expect(card(page)).toContainText('in the workshop, on S1');
  await test.step('nobody is shut out', async () => {
    expect(await serious(page, '.middle')).toEqual([]);
    expect(await serious(page, '.column.right')).toEqual([]);
  });

  await page.getByRole('button', { name: 'Play' }).click();
  await expect.poll(async () => (await standing(page))[0]).toBeGreaterThan(2);
  await page.getByRole('button', { name: 'Pause' }).click();
  const [stopped] = await standing(page);
  await page.waitForTimeout(3500);
  expect(await standing(page)).toEqual([stopped, of]);

  await page.getByRole('list', { name: 'All steps' }).getByRole('button').last().click();
  await expect.poll(() => standing(page)).toEqual([of, of]);
  await expect(page.getByRole('button', { name: 'Next', exact: true })).toBeDisabled();
  const all = await page.locator('.facts .figure', { hasText: 'Parts' }).locator('.value').first().textContent();
  expect(await shown(page)).toBeLessThanOrEqual(Number(all));
});

test('who asks for less motion is not played to', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openNew(page);
  await page.keyboard.press('a');
  await expect(page.getByRole('button', { name: 'Next', exact: true })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Play' })).toHaveCount(0);
});
