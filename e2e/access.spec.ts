import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { serious } from './support/axe';
import { card, downloaded, fact, handed, jobIn, kept, openBoard, openFile, runLength } from './support/board';
import { command, partsOf } from './support/command';

test('no serious fault for people who read or work otherwise', async ({ page }) => {
  await openBoard(page);
  await test.step('main screen', async () => expect(await serious(page, 'html')).toEqual([]));

  await page.getByRole('radio', { name: 'Parts list' }).check();
  await page.getByRole('button', { name: 'A-PL2', exact: true }).click();
  await expect(page.locator('tr.picked')).toHaveCount(1);
  await test.step('parts list', async () => expect(await serious(page, '.parts')).toEqual([]));
  await expect(card(page)).toBeVisible();
  await test.step('part card', async () => expect(await serious(page, 'section.card')).toEqual([]));
  await page.getByRole('radio', { name: 'Unit', exact: true }).check();

  await page.getByRole('button', { name: 'Keys', exact: true }).click();
  await expect(page.getByRole('dialog', { name: 'Keys' })).toBeVisible();
  await test.step('dialog', async () => expect(await serious(page, 'dialog')).toEqual([]));
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);

  await runLength(page, 'Run A').fill('long');
  await page.keyboard.press('Enter');
  await expect(page.getByText(/'long': not a length/)).toBeVisible();
  await test.step('message beside a field', async () => expect(await serious(page, '.column.left')).toEqual([]));
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  await test.step('open menu', async () => expect(await serious(page, 'header')).toEqual([]));
  await openFile(page, handed('no job'));
  await expect(page.getByRole('alert').filter({ hasText: 'can’t be opened' })).toBeVisible();
  await test.step('bad news', async () => expect(await serious(page, '.notices')).toEqual([]));
});

/** More stops than the page has, with every opening and bay unfolded: a place not reached by then is not reached at all. */
const MOST_STOPS = 400;

/** Goes on with one key until a place has the focus. */
async function goTo(page: Page, place: Locator, key: 'Tab' | 'Shift+Tab'): Promise<void> {
  for (let i = 0; i < MOST_STOPS; i += 1) {
    if (await place.evaluateAll((all) => all.includes(document.activeElement as HTMLElement))) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${place} is not reached with ${key}`);
}

test('the main job is done without a mouse', async ({ page }) => {
  await openBoard(page);
  await goTo(page, runLength(page, 'Run A'), 'Tab');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('5200');
  await page.keyboard.press('Enter');
  await kept(page);

  const { path } = await downloaded(page, () => page.keyboard.press('Control+S'));
  expect(jobIn(path).unit.plan.runs[0]).toMatchObject({ length: 5200 });
  const { parts } = partsOf(path);
  await expect(fact(page, 'Parts')).toHaveText(String(parts.length));

  await goTo(page, page.getByRole('button', { name: 'Export', exact: true }), 'Shift+Tab');
  await page.keyboard.press('Enter');
  await goTo(page, page.getByRole('button', { name: 'Parts list (CSV)' }), 'Tab');
  const csv = await downloaded(page, () => page.keyboard.press('Enter'));
  expect(readFileSync(csv.path, 'utf8')).toBe(command('parts', path, '--format', 'csv'));

  // From the list of parts to a card.
  await page.keyboard.press('p');
  const pillar = parts.find(({ kind, run }) => kind === 'pillar' && run === 'A')!;
  await goTo(page, page.getByRole('button', { name: parts[0]!.mark, exact: true }), 'Tab');
  await page.keyboard.press('Enter');
  await expect(card(page).getByRole('heading')).toHaveText(`${parts[0]!.mark} ${parts[0]!.name}`);
  await page.keyboard.press('p');

  // Along the rod: from the first mark to the first pillar's centre, which picks out the pillar.
  const marks = page.getByRole('group', { name: 'Marks of Run A' });
  // The rod is measured again when the list gives its room back.
  await expect(marks).toBeVisible();
  await goTo(page, marks.getByRole('button'), 'Tab');
  await page.keyboard.press('Home');
  const centre = marks.getByRole('button', { name: /pillar board, centre/ }).first();
  for (let i = 0; i < 10 && !(await centre.evaluate((one) => one === document.activeElement)); i += 1) {
    await page.keyboard.press('ArrowRight');
  }
  await expect(centre).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(card(page).getByRole('heading')).toHaveText(`${pillar.mark} ${pillar.name}`);
  await page.keyboard.press('Escape');
  await expect(card(page)).toHaveCount(0);

  await page.keyboard.press('Control+Z');
  await expect(runLength(page, 'Run A')).toHaveValue('4800');
  await page.keyboard.press('Control+Y');
  await expect(runLength(page, 'Run A')).toHaveValue('5200');
});
