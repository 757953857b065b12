import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import type { EndCut, Part } from '../src/vocabulary/part';
import {
  canvas,
  card,
  chooseRun,
  DEMO,
  jobIn,
  openBoard,
  openFile,
  plain,
  runLength,
  saved,
  toTheStep,
  type,
} from './support/board';
import { findingsOf, partsOf } from './support/command';
import { atRest, difference, figures, middleOf, placeOf, written } from './support/picture';

/** The demo in one piece, so that long parts are long. */
const WHOLE = join(mkdtempSync(join(tmpdir(), 'whole-')), 'whole.job.json');
const demo = jobIn(DEMO);
writeFileSync(WHOLE, JSON.stringify({ ...demo, name: 'In one piece', unit: { ...demo.unit, joins: { by: 'none' } } }));

const { parts } = partsOf(WHOLE);

async function openWhole(page: Page): Promise<void> {
  await openBoard(page);
  await openFile(page, WHOLE);
  await expect(page.locator('.job-name')).toHaveText('In one piece');
}

/** Turns the parts list, of two pages, to the one on which a part stands. */
async function turnTo(page: Page, part: Part): Promise<void> {
  await page.getByRole('radio', { name: 'Parts list' }).check();
  const there = page.getByRole('button', { name: part.mark, exact: true });
  const pages = page.getByRole('navigation', { name: 'Pages of the parts list' });
  await expect(pages).toBeVisible();
  if ((await there.count()) === 0) await pages.getByRole('button', { disabled: false }).click();
  await expect(there).toBeVisible();
}

function find(name: string, where: string, run: string): Part {
  const part = parts.find((one) => one.name === name && one.where === where && one.run === run);
  if (!part) throw new Error(`the demo has no ${name} at ${where} of run ${run}`);
  return part;
}

const row = (page: Page, name: string) =>
  card(page)
    .locator('dl > div')
    .filter({ has: page.getByText(name, { exact: true }) })
    .locator('dd');

/** What the card must say of an end, from the command line's own figures. Only what is narrow can stand at the saw. */
function endSays({ kind, sawDeg, tiltDeg, longSide }: EndCut, width: number): string {
  const [saw, tilt] = [`${plain(sawDeg)}°`, `${plain(tiltDeg)}°`];
  const words = {
    square: '',
    mitre: `mitred, saw at ${saw}`,
    bevel: `bevelled, blade tilted ${tilt}, lying on its back${width > 160 ? '' : ` (or saw at ${tilt}, standing on edge)`}`,
    compound: `compound cut, saw at ${saw}, blade tilted ${tilt}, lying on its back`,
  }[kind];
  return kind === 'square' ? 'square' : `${words}, longer at the ${longSide}`;
}

/** The card, the rod, the view and the parts list all show the part. */
async function shownEverywhere(page: Page, part: Part): Promise<void> {
  await expect(card(page).getByRole('heading')).toHaveText(`${part.mark} ${part.name}`);
  const slanted = part.ends.some(({ kind }) => kind !== 'square');
  await expect(row(page, 'Cut to')).toHaveText(`${plain(part.shopLength)} mm${slanted ? ' to the long point' : ''}`);
  const { length, width, thickness } = part.size;
  const exact = [length, width, thickness].map(plain).join(' × ');
  await expect(row(page, 'Exact size')).toHaveText(`${exact} mm`);
  await expect(row(page, 'First end')).toHaveText(endSays(part.ends[0], width));
  await expect(row(page, 'Second end')).toHaveText(endSays(part.ends[1], width));
  await expect(row(page, 'Place')).toContainText(part.where);

  await expect(page.getByRole('tab', { selected: true })).toHaveAttribute('id', `rod-run-${part.run}`);
  await page.getByRole('radio', { name: 'Unit', exact: true }).check();
  await expect(page.locator('.rod-block-picked title')).toHaveText(new RegExp(`^${part.mark}\\s`));
  await expect(page.locator('.rod-extent')).toHaveCount(1);
  const sizes = [length, width, thickness].map(toTheStep);
  await expect(page.locator('.scene-figure')).toHaveText(sizes);

  await page.getByRole('radio', { name: 'Parts list' }).check();
  await expect(page.locator('.parts').getByRole('button', { pressed: true })).toHaveText(part.mark);
  await page.getByRole('radio', { name: 'Unit', exact: true }).check();
}

test('a part chosen in the list, in the view or on the rod shows its card, and shows everywhere', async ({ page }) => {
  await openWhole(page);
  await expect(card(page)).toHaveCount(0);
  const board = find('pillar board', 'pillar 3', 'A');
  const skin = find('cladding', '2077 to 4763', 'A');
  const moulding = find('panel moulding', 'bay 2, top', 'B');

  await test.step('in the list', async () => {
    await turnTo(page, moulding);
    await page.getByRole('button', { name: moulding.mark, exact: true }).click();
    await shownEverywhere(page, moulding);
    expect(moulding.ends.map((end) => end.kind)).toEqual(['mitre', 'mitre']);
    await turnTo(page, skin);
    await page.getByRole('cell', { name: skin.where, exact: true }).click();
    await shownEverywhere(page, skin);
    expect(skin.ends.map((end) => end.kind)).toEqual(['square', 'bevel']);
  });

  await test.step('on the rod, by a mark and by what is drawn there', async () => {
    await chooseRun(page, 'Run A');
    await page.locator('.rod-lane-front [role=button]', { hasText: 'pillar board, centre' }).nth(2).click();
    await shownEverywhere(page, board);
    const stud = find('stud', 'cladding joint, cross frame, pillar', 'A');
    const block = page.locator('.rod-lane-timber .rod-block', { hasText: new RegExp(`^${stud.mark}\\s`) });
    // The mark on its middle lies over it: it is hit beside that.
    const box = (await block.boundingBox())!;
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    await shownEverywhere(page, stud);
  });

  await test.step('in the view', async () => {
    await page.keyboard.press('Escape');
    await expect(card(page)).toHaveCount(0);
    await expect(page.locator('.rod-block-picked')).toHaveCount(0);
    await page.keyboard.press('1');
    await expect.poll(async () => written(await figures(page))).toEqual(['Run A', 'height']);
    await atRest(page);
    // Where the board is, by the sizes that its choice brings beside it; then its colour, chosen and not.
    const pin = page.locator('.rod-lane-front [role=button]', { hasText: 'pillar board, centre' }).nth(2);
    await pin.click();
    // Above the middle, clear of the figures.
    const { x, y } = await placeOf(page, true);
    const there = { x, y: y - 40 };
    const look = () => page.screenshot({ clip: { x: there.x - 6, y: there.y - 6, width: 12, height: 12 } });
    const unlike = async (other: Buffer) => difference(page, other, await look());
    await page.keyboard.press('Escape');
    await expect.poll(async () => written(await figures(page))).toEqual(['Run A', 'height']);
    const plainly = await look();
    await pin.click();
    await expect.poll(() => unlike(plainly)).toBeGreaterThan(0.5);
    await page.keyboard.press('Escape');
    await expect.poll(() => unlike(plainly)).toBeLessThan(0.01);
    await page.mouse.click(there.x, there.y);
    await shownEverywhere(page, board);
  });

  await test.step('and beside the unit puts the card away', async () => {
    const { x } = await middleOf(canvas(page));
    const { y } = (await canvas(page).boundingBox())!;
    await page.mouse.click(x, y + 5);
    await expect(card(page)).toHaveCount(0);
    await expect.poll(async () => (await figures(page)).map(({ text }) => text)).toContain('Run A: 4800 over plinth');
  });
});

test('a finding leads to its part, on its run', async ({ page }) => {
  await openWhole(page);
  await type(runLength(page, 'Run A'), '8000');
  const job = await saved(page);
  const finding = findingsOf(job).find(({ rule }) => rule === 'longer-than-stock');
  const part = partsOf(job).parts.find(({ mark }) => mark === finding?.subject.part);
  if (!finding || !part) throw new Error('plates of 8 m should be longer than any timber in the book');
  await chooseRun(page, 'Run B');
  await page.getByRole('button', { name: finding.message }).click();
  await shownEverywhere(page, part);
});
