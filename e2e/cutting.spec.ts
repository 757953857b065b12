import { expect, type Locator, type Page, test } from '@playwright/test';
import { serious } from './support/axe';
import { card, DEMO, drawn, openFile, openNew, runLength, type } from './support/board';

/** The batches, each with what is said of it. */
const batches = (page: Page): Locator => page.getByRole('list', { name: 'Stuff to be cut' }).getByRole('button');

/** What the plan in hand costs and how good it is. */
const cost = (page: Page): Locator => page.locator('.plan-head p').first();

const middle = (page: Page, name: string): Locator => page.getByRole('radio', { name, exact: true });

test('a job is cut: plans, one sheet at a time, into the rack and back', async ({ page }) => {
  await openNew(page);
  await page.keyboard.press('c');
  await expect(middle(page, 'Cutting')).toBeChecked();
  // Every batch has its plan and is at rest.
  await expect.poll(async () => (await batches(page).allTextContents()).every((text) => /£\d/.test(text))).toBe(true);
  const sheets = batches(page)
    .filter({ hasText: /MDF.* sheet/ })
    .first();
  await sheets.click();
  await expect(page.getByRole('button', { name: 'Plan is cut' })).toBeEnabled();

  // The cuts in order, by the keys.
  await page.keyboard.press('ArrowRight');
  await expect(page.locator('.cut-now')).toContainText('Cut 1 of');
  await expect(page.locator('.cut-now')).toContainText('Trim the');
  await page.keyboard.press('ArrowRight');
  await expect(page.locator('.cut-now')).toContainText('Cut 2 of');

  // A piece in the drawing is the part on its card, and the row of the list.
  await page.locator('.sheet-drawing .laid').first().click();
  const picked = page.getByRole('region', { name: 'Pieces' }).getByRole('button', { pressed: true });
  await expect(picked).toHaveCount(1);
  const mark = (await picked.locator('span').first().textContent()) ?? '?';
  await expect(card(page).getByRole('heading')).toContainText(mark);
  await expect(page.locator('.laid.picked')).toHaveCount(1);
  await test.step('nobody is shut out', async () => expect(await serious(page, '.middle')).toEqual([]));

  // Taken in hand by the keyboard it can't lie on its neighbour, and goes back where it was.
  await page.getByRole('button', { name: 'Move by hand' }).click();
  await page.keyboard.press('t');
  for (let i = 0; i < 3; i += 1) await page.keyboard.press('Shift+ArrowDown');
  await expect(page.locator('.hand')).toContainText('in hand');
  await page.keyboard.press('Escape');
  await expect(page.locator('.hand')).toHaveCount(0);

  // What is cut stays; all of it cut, the rack has what is left; and one step takes each back.
  const before = await cost(page).textContent();
  await page.getByLabel('Cut already').check();
  await page.getByRole('button', { name: 'Plan the rest anew' }).click();
  await expect(page.getByRole('button', { name: 'Plan is cut' })).toBeEnabled();
  await expect(page.getByLabel('Cut already')).toBeChecked();
  await expect(cost(page)).toHaveText(before ?? '?');
  await page.getByRole('button', { name: 'Plan is cut' }).click();
  await expect(page.getByText(/^Put into the rack: O1/)).toBeVisible();
  await middle(page, 'Offcut rack').check();
  await expect(page.getByRole('table', { name: 'Offcuts' })).toContainText('O1');
  await test.step('nor from the rack', async () => expect(await serious(page, '.cutting')).toEqual([]));
  await page.reload();
  await drawn(page);
  await page.keyboard.press('c');
  await expect(batches(page).filter({ hasText: /cut$/ })).toHaveCount(1);
  await middle(page, 'Offcut rack').check();
  await page.getByRole('button', { name: 'Throw out O1', exact: true }).click();
  await expect(page.getByRole('table', { name: 'Offcuts' }).getByText('O1', { exact: true })).toHaveCount(0);
  await page.keyboard.press('Control+Z');
  await expect(page.getByRole('table', { name: 'Offcuts' })).toContainText('O1');
});

test('a list without a job is laid out, and its settings are gathered for a job', async ({ page }) => {
  await openNew(page);
  await page.keyboard.press('c');
  await middle(page, 'Settings').check();
  await expect(page.getByRole('table', { name: 'Sheets: panel saw' })).toContainText('rip fence');
  await test.step('settings', async () => expect(await serious(page, '.cutting')).toEqual([]));
  await middle(page, 'A list without a job').check();
  await page.getByLabel('Pieces, one a line').fill('shelf, 782, 380, 6\nside, long, 400, 2');
  await page.getByRole('button', { name: 'Lay it out' }).click();
  await expect(page.getByRole('alert')).toContainText('Line 2');
  await page.getByLabel('Pieces, one a line').fill('shelf, 782, 380, 6\nside, 1800, 400, 2');
  await test.step('the list', async () => expect(await serious(page, '.cutting')).toEqual([]));
  await page.getByRole('button', { name: 'Lay it out' }).click();
  await expect(cost(page)).toContainText('2 sheets, 5.95 m²');
  await expect(page.locator('.sheet-drawing .laid').first()).toBeVisible();
});

test('plans stand there when the cutting is opened, and what is edited meanwhile is planned anew', async ({ page }) => {
  await openNew(page);
  // The worker is there before anybody looks.
  await expect.poll(() => page.workers().length).toBe(1);
  await page.keyboard.press('c');
  await expect.poll(async () => (await batches(page).allTextContents()).every((text) => /£\d/.test(text))).toBe(true);
  const first = await batches(page).allTextContents();
  await page.keyboard.press('c');
  await type(runLength(page, 'Run A'), '4200');
  await middle(page, 'Cutting').check();
  await expect
    .poll(async () => (await batches(page).allTextContents()).some((text) => /£\d/.test(text) && !first.includes(text)))
    .toBe(true);
  expect(page.workers(), 'one for all').toHaveLength(1);
});

test('a long list is turned over by pages, and its cuts come in order', async ({ page }) => {
  await openNew(page);
  await page.keyboard.press('c');
  await middle(page, 'A list without a job').check();
  await page.getByLabel('Pieces, one a line').fill('tile, 60, 40, 200');
  await page.getByRole('button', { name: 'Lay it out' }).click();
  await expect(page.locator('.sheet-drawing .laid')).toHaveCount(200);
  await expect(page.getByRole('navigation', { name: 'Pages of pieces' })).toContainText('Page 1 of 4');
  const cuts = page.getByRole('list', { name: 'All cuts' });
  await expect(cuts.getByRole('listitem').first()).toContainText('Trim the');
  await page.getByRole('navigation', { name: 'Pages of cuts' }).getByRole('button', { name: 'Next' }).click();
  await cuts.getByRole('button').first().click();
  await expect(page.locator('.cut-now')).toContainText('Cut 61 of');
  // Stepping back over the edge of a page turns it.
  await page.keyboard.press('ArrowLeft');
  await expect(page.locator('.cut-now')).toContainText('Cut 60 of');
  await expect(page.getByRole('navigation', { name: 'Pages of cuts' })).toContainText('Page 1 of');
  await test.step('nobody is shut out', async () => expect(await serious(page, '.cutting')).toEqual([]));
});

test('what is cut stays when nothing on it is wanted any more, and one job is not compared with another', async ({
  page,
}) => {
  await openNew(page);
  await page.keyboard.press('c');
  const planned = async () => (await batches(page).allTextContents()).every((text) => /£\d/.test(text));
  await expect.poll(planned).toBe(true);
  const total = page.getByRole('region', { name: 'The whole job' });
  await expect(total).toContainText(/All stuffs: £\d/);
  await batches(page).filter({ hasText: 'MDF 25' }).click();
  await expect(cost(page)).toContainText('1 sheet, £47.00');
  await page.getByLabel('Cut already').check();
  await type(page.getByLabel('Plinth height', { exact: true }), '160');
  await expect(cost(page)).toContainText('2 sheets, £94.00');
  await expect(page.locator('.plan-head')).toContainText('Sheet 1 is cut already; nothing on it is wanted any more');
  await expect(page.getByLabel('Cut already; nothing on it is wanted any more')).toBeChecked();
  await expect(page.locator('.plan-head .fetch')).toHaveText('Fetch 2 sheets 2440 × 1220 at £47.00 (1 cut already)');
  await total.getByRole('button', { name: 'What to fetch' }).click();
  const list = page.getByRole('dialog', { name: 'What to fetch' });
  await expect(list.getByRole('row', { name: /^MDF 25/ })).toContainText('£94.00');
  await test.step('nobody is shut out', async () => expect(await serious(page, 'dialog')).toEqual([]));
  await page.keyboard.press('Escape');
  // Its leftovers go into the rack; taken back, it is not said any longer.
  await page.getByRole('button', { name: 'Plan is cut' }).click();
  await expect(page.getByText(/^Put into the rack: O1/)).toBeVisible();
  await page.keyboard.press('Control+Z');
  await expect(page.getByText(/^Put into the rack: O1/)).toHaveCount(0);

  // Another job, while this one's plans are looked at.
  await type(runLength(page, 'Run A'), '3600');
  await expect(page.locator('.plan-head')).toContainText('Against the plan that stood before');
  await openFile(page, DEMO);
  await expect(page.locator('.job-name')).not.toHaveText('New job');
  await expect(batches(page)).toHaveCount(9);
  await expect.poll(planned).toBe(true);
  for (const one of await batches(page).all()) {
    await one.click();
    await expect(cost(page)).toContainText('£');
    await expect(page.locator('.plan-head .changed')).toHaveCount(0);
  }
});

test('what another tab has cut meanwhile is cut here too, though plans were made ahead', async ({ page, context }) => {
  await openNew(page);
  await expect(page.getByText('Kept', { exact: true })).toBeVisible();
  // The worker is there, and has begun to plan by the time the other tab stands.
  await expect.poll(() => page.workers().length).toBe(1);
  const other = await context.newPage();
  await other.goto('/');
  await expect(other.getByRole('heading', { level: 1 })).toBeVisible();
  await other.keyboard.press('c');
  await batches(other).filter({ hasText: 'MDF 25' }).click();
  await other.getByLabel('Cut already').check();
  await page.bringToFront();
  await page.keyboard.press('c');
  await batches(page).filter({ hasText: 'MDF 25' }).click();
  await expect(page.getByLabel('Cut already')).toBeChecked();
});
