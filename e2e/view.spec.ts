import { expect, test } from '@playwright/test';
import { canvas, card, DEMO, drawn, openBoard, runLength, type } from './support/board';
import { partsOf } from './support/command';
import { atRest, contents, difference, type Figure, figures, middleOf, written } from './support/picture';

/** Most draw calls for the demo. */
const MOST_CALLS = 60;

test('finished, clad and framed show what belongs to them, in few draw calls', async ({ page }) => {
  const { parts } = partsOf(DEMO);
  const shown = { framed: ['framed'], clad: ['framed', 'clad'], finished: ['framed', 'clad', 'finished'] };
  await openBoard(page);
  const dimensions = page.getByRole('checkbox', { name: 'Dimensions' });
  await page.keyboard.press('d');
  await expect(dimensions).not.toBeChecked();
  await expect(page.locator('.scene-figure')).toHaveCount(0);

  const pictures: Buffer[] = [];
  for (const [key, mode, words] of [
    ['7', 'framed', 'Servery, as framed: '],
    ['6', 'clad', 'Servery, as clad: '],
    ['5', 'finished', 'Servery, finished: '],
  ] as const) {
    await page.keyboard.press(key);
    const name = { framed: 'Framed', clad: 'Clad', finished: 'Finished' }[mode];
    await expect(page.getByRole('radio', { name })).toBeChecked();
    const count = parts.filter(({ from }) => shown[mode].includes(from)).length;
    await expect(canvas(page)).toHaveAttribute('aria-label', new RegExp(`^${words}${count} parts, `));
    await drawn(page);
    const calls = Number(await canvas(page).getAttribute('data-calls'));
    expect(calls).toBeGreaterThan(1);
    expect(calls).toBeLessThanOrEqual(MOST_CALLS);
    const picture = await canvas(page).screenshot();
    const { colours, covered } = await contents(page, picture);
    expect(colours).toBeGreaterThan(50);
    expect(covered).toBeGreaterThan(0.1);
    for (const other of pictures) expect(await difference(page, picture, other)).toBeGreaterThan(0.03);
    pictures.push(picture);
  }
  await page.getByRole('radio', { name: 'Framed' }).check();
  await expect.poll(async () => difference(page, await canvas(page).screenshot(), pictures[0]!)).toBeLessThan(0.001);
});

test('keys and buttons lead to the same looks, and each shows what can be read from there', async ({ page }) => {
  await openBoard(page);
  const stands: string[] = [];
  for (const [key, button, readable] of [
    // A length that is seen end on, or from behind, is not written; the height is seen end on from above.
    ['1', 'Front', ['Run A', 'height']],
    ['2', 'Plan', ['Right return RR', 'Run A', 'Run B']],
    ['3', 'Left end', ['height']],
    ['4', 'Right end', ['Run B', 'height']],
    ['0', 'In the room', ['Run A', 'Run B', 'height']],
  ] as const) {
    await page.keyboard.press(key);
    await expect.poll(async () => written(await figures(page))).toEqual(readable);
    const stand = JSON.stringify(await atRest(page));
    expect(stands).not.toContain(stand);
    stands.push(stand);

    await page.keyboard.press(key === '1' ? '2' : '1');
    await expect.poll(async () => JSON.stringify(await figures(page))).not.toBe(stand);
    await page.getByRole('button', { name: button, exact: true }).click();
    await expect.poll(async () => JSON.stringify(await figures(page))).toBe(stand);
  }

  // Drawn nearer by hand, and fitted again from the same side.
  await page.keyboard.press('1');
  await expect.poll(async () => JSON.stringify(await figures(page))).toBe(stands[0]);
  const { x, y } = await middleOf(canvas(page));
  await page.mouse.move(x, y);
  await page.mouse.wheel(0, -600);
  await expect.poll(async () => JSON.stringify(await figures(page))).not.toBe(stands[0]);
  await page.keyboard.press('f');
  const spot = (all: readonly Figure[]) => all.map((one) => [one.text, Math.round(one.x), Math.round(one.y)]);
  const fitted = spot(JSON.parse(stands[0]!) as Figure[]);
  await expect.poll(async () => spot(await figures(page))).toEqual(fitted);
});

test('turning the view by hand draws frames, and nothing by React', async ({ page }) => {
  await openBoard(page);
  const before = JSON.stringify(await atRest(page));
  const renders = await canvas(page).getAttribute('data-renders');
  expect(Number(renders)).toBeGreaterThan(0);
  const { x, y } = await middleOf(canvas(page));
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 160, y + 20, { steps: 12 });
  await page.mouse.up();
  await expect.poll(async () => JSON.stringify(await figures(page))).not.toBe(before);
  await atRest(page);
  expect(await canvas(page).getAttribute('data-renders')).toBe(renders);
  await expect(card(page)).toHaveCount(0);
  // The counter does count: another stage is drawn by React.
  await page.keyboard.press('7');
  await expect(canvas(page)).not.toHaveAttribute('data-renders', renders ?? '');
});

test('a view that was put away shows the job as it is by then when it is looked at again, and follows it beside the cutting', async ({
  page,
}) => {
  await openBoard(page);
  const label = () => canvas(page).getAttribute('aria-label');
  const pane = (name: string) => page.getByRole('radio', { name, exact: true }).check();
  const before = await label();
  await pane('Cutting');
  await expect(page.getByRole('list', { name: 'Stuff to be cut' })).toBeVisible();
  await type(runLength(page, 'Run A'), '5150');
  await expect(page.getByRole('list', { name: 'Stuff to be cut' })).toContainText('£');
  await pane('Unit');
  await expect.poll(label).not.toBe(before);
  await expect.poll(async () => written(await figures(page))).toContain('Run A');
  // With a part picked out the view stands beside the cutting, and follows.
  await pane('Cutting');
  await page.getByRole('region', { name: 'Pieces' }).getByRole('button').first().click();
  const beside = await label();
  await type(runLength(page, 'Run A'), '5250');
  await expect.poll(label).not.toBe(beside);
});
