import { expect, type Locator, type Page, test } from '@playwright/test';
import type { Finding } from '../src/vocabulary/finding';
import {
  asShown,
  canvas,
  chooseRun,
  fact,
  facts,
  findings,
  group,
  openBoard,
  runLength,
  saved,
  type,
} from './support/board';
import { findingsOf, partsOf } from './support/command';

/**
 * The app says what the command line finds in the same job, the rule looked for among it; what can be made is still
 * drawn in the view.
 */
async function said(page: Page, rule: string): Promise<readonly Finding[]> {
  const job = await saved(page);
  const found = findingsOf(job);
  // A return may stay plain: that is noted, and stops nothing.
  const broken = found.filter((finding) => finding.rule === rule && finding.severity !== 'note');
  expect(broken.length).toBeGreaterThan(0);
  await expect(findings(page)).toHaveText(asShown(found).map(({ message }) => message));
  for (const { severity, value, limit } of broken) {
    expect(severity).toBe('stop');
    expect([value, limit].every(Number.isFinite)).toBe(true);
  }
  const item = page.getByRole('listitem').filter({ hasText: broken[0]!.message });
  await expect(item).toContainText('Can’t be built so');
  await expect(item).toContainText(broken[0]!.remedy);

  const { parts, totals } = partsOf(job);
  expect(parts.length).toBeGreaterThan(20);
  await expect(fact(page, 'Parts')).toHaveText(String(parts.length));
  const size = [totals.overall.length, totals.overall.depth, totals.overall.height];
  expect(size.every((mm) => Number.isFinite(mm) && mm > 0)).toBe(true);
  await expect(canvas(page)).toHaveAttribute('aria-label', new RegExp(`finished: ${parts.length} parts, `));
  await expect(canvas(page)).toHaveAttribute('data-triangles', /^[1-9]\d{2,}$/);
  await expect(page.locator('.fault')).toHaveCount(0);
  return broken;
}

/** What is drawn of the frame on the rod of the run in hand. */
const timber = (page: Page): Locator => page.locator('.rod-lane-timber .rod-block');

/** Undoes so many edits, and everything is as it was. */
async function undone(page: Page, edits: number, before: readonly string[], messages: readonly string[]) {
  for (let i = 0; i < edits; i += 1) await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await expect.poll(() => facts(page)).toEqual(before);
  await expect(findings(page)).toHaveText([...messages]);
}

test('pillars wider than a run, and panels without room: said with the numbers, the rest is drawn', async ({
  page,
}) => {
  await openBoard(page);
  const before = await facts(page);
  const messages = await findings(page).allTextContents();

  await test.step('pillars', async () => {
    const width = group(page, 'Pillars').getByLabel('Pillar width', { exact: true });
    const corner = group(page, 'Pillars').getByLabel('Corner board width', { exact: true });
    await type(width, '400');
    await type(corner, '400');
    const [finding] = await said(page, 'pillars-wider-than-run');
    // A board of 400 at the corner and one of 400 at the end; the return's face is some 550 long.
    expect(finding).toMatchObject({ subject: { run: 'RR' }, limit: 800 });
    expect(finding!.message).toContain('800 mm');
    await chooseRun(page, 'Right return RR');
    await expect(timber(page)).not.toHaveCount(0);
    await undone(page, 2, before, messages);
  });

  await test.step('panels', async () => {
    const margin = group(page, 'Panel frames').getByLabel('Margin', { exact: true });
    await type(margin, '400');
    const left = await said(page, 'panel-no-room');
    // Two mouldings of 30 and a field of 10 between them.
    expect(left[0]).toMatchObject({ limit: 70 });
    const { parts } = partsOf(await saved(page));
    expect(parts.filter(({ kind }) => kind === 'panel')).toEqual([]);
    await margin.blur();
    await page.getByRole('button', { name: left[0]!.message }).click();
    await expect(margin).toBeFocused();
    await undone(page, 1, before, messages);
  });
});

test('a plan that folds on itself, and a run with nothing left: said, the rest is drawn', async ({ page }) => {
  await openBoard(page);
  const before = await facts(page);
  const messages = await findings(page).allTextContents();

  await test.step('folds', async () => {
    await type(group(page, 'Run A').getByLabel('Turn to the next run'), '150');
    await type(group(page, 'Right end').getByLabel('Return length'), '1500');
    const [finding] = await said(page, 'plan-folds');
    await expect(timber(page)).not.toHaveCount(0);
    expect(finding!.value).toBeGreaterThan(1e4);
    expect(finding!.message).toMatch(/runs A and RR want the same \d+(\.\d+)? m² of floor/);
    await undone(page, 2, before, messages);
  });

  await test.step('nothing left of a run', async () => {
    await type(runLength(page, 'Run B'), '100');
    const [finding] = await said(page, 'run-too-short');
    await expect(page.getByRole('tab', { name: /^Run B/ })).toHaveAttribute('aria-selected', 'true');
    await expect(timber(page)).toHaveCount(0);
    expect(finding).toMatchObject({ subject: { run: 'B' } });
    // 100 less what its two corners take, 63 more than there is.
    expect(finding!.value).toBe(-63);
    expect(finding!.message).toContain('has nothing left after its corners; 76 mm is the least');
    await chooseRun(page, 'Run A');
    await expect(timber(page)).not.toHaveCount(0);
    await undone(page, 1, before, messages);
  });
});
