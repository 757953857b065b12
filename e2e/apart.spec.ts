import { expect, type Locator, type Page, test } from '@playwright/test';
import { serious } from './support/axe';
import { canvas, openNew, savedJob, thing } from './support/board';
import { atRest, difference, figures, middleOf } from './support/picture';

/** Most draw calls, drawn apart or not. */
const MOST_CALLS = 60;

const apart = (page: Page): Locator => page.getByRole('slider', { name: 'Drawn apart' });
const sections = (page: Page): Locator => page.getByRole('region', { name: /^Sections/ }).locator('tbody th');
/** Begins with a unit that is taken apart nowhere, whatever a new job says. */
async function inOnePiece(page: Page): Promise<void> {
  await page.getByLabel('The unit is taken apart').selectOption('none');
  await expect(sections(page).filter({ hasText: /^S/ })).toHaveCount(1);
}
const labels = async (page: Page): Promise<string[]> =>
  (await figures(page)).map(({ text }) => text).filter((text) => /^S\d/.test(text));

test('the fewest sections that can be carried, drawn apart and told from what is fitted on site', async ({ page }) => {
  await openNew(page);
  await inOnePiece(page);
  await page.getByLabel('The unit is taken apart').selectOption('least');
  await expect(sections(page).filter({ hasText: /^S/ })).not.toHaveCount(1);
  const count = await sections(page).filter({ hasText: /^S/ }).count();
  expect((await savedJob(page)).unit.joins).toEqual({ by: 'least' });
  // A join less than sections, each through every lane.
  await expect(page.locator('.rod-join')).toHaveCount(count - 1);

  await page.keyboard.press('1');
  await atRest(page);
  const together = await canvas(page).screenshot();
  await apart(page).focus();
  for (let i = 0; i < 20; i += 1) await page.keyboard.press('ArrowRight');
  await expect(apart(page)).toHaveAttribute('aria-valuetext', '100 %');
  await expect.poll(() => labels(page)).toHaveLength(count);
  await atRest(page);
  expect((await labels(page)).every((text) => /^S\d+ +\d+\.\d kg$/.test(text))).toBe(true);
  const drawn = await canvas(page).screenshot();
  expect(await difference(page, together, drawn)).toBeGreaterThan(0.05);
  expect(Number(await canvas(page).getAttribute('data-calls'))).toBeLessThanOrEqual(MOST_CALLS);

  await page.getByRole('checkbox', { name: 'Site-fitted' }).check();
  await expect(page.getByRole('list', { name: 'Legend' })).toContainText('fitted on site');
  await expect.poll(async () => difference(page, drawn, await canvas(page).screenshot())).toBeGreaterThan(0.005);
  expect(Number(await canvas(page).getAttribute('data-calls'))).toBeLessThanOrEqual(MOST_CALLS);

  await test.step('turned by hand, it is not drawn by React', async () => {
    await page.getByRole('button', { name: 'In the room' }).click();
    const before = JSON.stringify(await atRest(page));
    const renders = await canvas(page).getAttribute('data-renders');
    const { x, y } = await middleOf(canvas(page));
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 120, y + 15, { steps: 10 });
    await page.mouse.up();
    await expect.poll(async () => JSON.stringify(await figures(page))).not.toBe(before);
    await atRest(page);
    expect(await canvas(page).getAttribute('data-renders')).toBe(renders);
  });
  await test.step('nobody is shut out', async () => expect(await serious(page, 'html')).toEqual([]));

  await page.keyboard.press('x');
  await expect(apart(page)).toHaveValue('0');
  await expect.poll(() => labels(page)).toEqual([]);
});

test('a join is marked behind a pillar from the rod, moved, and refused where it can’t be', async ({ page }) => {
  await openNew(page);
  await inOnePiece(page);
  await page.locator('.rod-lane-front [role=button]', { hasText: 'pillar board, centre' }).nth(1).click();
  await page.getByRole('button', { name: 'Join behind this pillar' }).click();
  const join = page.getByRole('slider', { name: 'Join 1' });
  await expect(join).toHaveAttribute('aria-valuetext', /^J1, 823\.3 mm/);
  await expect(sections(page).filter({ hasText: /^S/ })).toHaveCount(2);
  await expect(page.getByRole('group', { name: 'Join 1' })).toBeVisible();

  await test.step('drawn along by its line, into the next bay and back to the middle of the pillar', async () => {
    const { x, y } = await middleOf(join.locator('.rod-reach'));
    await page.mouse.move(x + 4, y);
    await page.mouse.down();
    await page.mouse.move(x + 64, y, { steps: 4 });
    await expect(join).not.toHaveAttribute('aria-valuetext', /^J1, 823\.3 mm/);
    // Two pixels are some 7 mm here, less than the 12 within which it goes to the middle.
    await page.mouse.move(x + 6, y, { steps: 4 });
    await page.mouse.up();
    await expect(join).toHaveAttribute('aria-valuetext', /^J1, 823\.3 mm/);
    // A key goes where it goes.
    await page.keyboard.press('ArrowRight');
    await expect(join).toHaveAttribute('aria-valuetext', /^J1, 824\.3 mm/);
  });

  await join.focus();
  for (let i = 0; i < 80; i += 1) await page.keyboard.press('Shift+ArrowLeft');
  await expect(join).toHaveClass(/rod-refused/);
  await expect(thing(page, 'Join 1').locator('.refusal.stop')).toBeVisible();
  await expect(sections(page).filter({ hasText: /^S/ })).toHaveCount(1);
  await page.keyboard.press('Delete');
  await expect(join).toHaveCount(0);
  expect((await savedJob(page)).unit.joins).toEqual({ by: 'hand', at: [] });
});
