import { expect, type Locator, test } from '@playwright/test';
import { fact, group, openBoard, openNew, runLength, savedJob, thing, type } from './support/board';

/** The field's own message: beside it on the page, and named as its description. */
const problem = (field: Locator): Locator =>
  field.locator('xpath=ancestor::div[contains(@class,"field")]').getByRole('alert');

async function refused(field: Locator, text: string, message: string | RegExp): Promise<void> {
  await type(field, text);
  await expect(problem(field)).toHaveText(message);
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  const beside = await problem(field).textContent();
  await expect(field).toHaveAccessibleDescription(new RegExp(`${(beside ?? '').replace(/\W/g, '\\$&')}$`));
  await expect(field).toHaveValue(text);
}

/**
 * What is typed, what the job then holds, what is then shown; each another length than the one before it.
 * 47 1/4 inches are 1200.15 mm: 25.4 mm to the inch, exactly (international yard and pound agreement, 1959).
 */
const TYPED = {
  mm: [
    ['1.2 m', 1200, '1200'],
    ['47 1/4"', 1200.15, '1200.15'],
    ['120 cm', 1200, '1200'],
    [`3' 11 1/4"`, 1200.15, '1200.15'],
    ['1203,5', 1203.5, '1203.5'],
    ['1 250', 1250, '1250'],
    ['1203.5', 1203.5, '1203.5'],
    ['3 ft 11 in', 1193.8, '1193.8'],
  ],
  inch: [
    ['47 1/4', 1200.15, '47 1/4"'],
    ['48', 1219.2, '48"'],
    ['47¼', 1200.15, '47 1/4"'],
    ['47.5', 1206.5, '47 1/2"'],
    [`3' 11 1/4"`, 1200.15, '47 1/4"'],
    ['1206.5 mm', 1206.5, '47 1/2"'],
  ],
} as const;

test('lengths are typed as people type them, in millimetres and in inches', async ({ page }) => {
  await openBoard(page);
  const length = group(page, 'Run B').getByLabel('Length', { exact: true });
  for (const units of ['mm', 'inch'] as const) {
    if (units === 'inch') await page.getByRole('radio', { name: 'inches' }).check();
    for (const [text, mm, shown] of TYPED[units]) {
      await test.step(`${text} in ${units}`, async () => {
        await type(length, text);
        await expect(length).toHaveValue(shown);
        await expect(problem(length)).toHaveCount(0);
        expect((await savedJob(page)).unit.plan.runs[1]?.length).toBe(mm);
      });
    }
  }
});

test('what can’t be read, or is out of range, is said beside the field, and the job keeps its value', async ({
  page,
}) => {
  await openBoard(page);
  const length = runLength(page, 'Run A');
  const before = await savedJob(page);
  const was = await fact(page, 'Length').textContent();

  await refused(length, 'about four metres', /'about four metres': not a length; understood are .*47 1\/4"/);
  await refused(length, '1,203', /it may mean 1203 or 1\.203/);
  await refused(length, '47 1/0"', /a fraction over nothing/);
  await refused(length, '99', 'Must be from 100 mm to 30000 mm.');
  await refused(length, '30.01 m', 'Must be from 100 mm to 30000 mm.');
  await refused(length, '-4800', 'Must be from 100 mm to 30000 mm.');
  await refused(length, '', 'Type a length.');
  // Leaving the field is no way round the message either.
  await length.fill('lots');
  await length.blur();
  await expect(problem(length)).toHaveText(/'lots': not a length/);

  const flutes = group(page, 'Pillars').getByLabel('Flutes', { exact: true });
  await refused(flutes, '4', 'Must be an odd number, or 0 for none.');
  await refused(flutes, '2.5', 'Type a whole number.');
  const turn = group(page, 'Run A').getByLabel('Turn to the next run');
  await refused(turn, '151', 'Must be from −150 to 150.');
  await refused(turn, 'square', 'Type a number, such as 45.');

  expect(await savedJob(page)).toEqual(before);
  await expect(fact(page, 'Length')).toHaveText(was ?? '');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();

  for (const [field, value] of [
    [length, '4800'],
    [flutes, '5'],
    [turn, '90'],
  ] as const) {
    await field.press('Escape');
    await expect(field).toHaveValue(value);
    await expect(field).toHaveAttribute('aria-invalid', 'false');
    await expect(problem(field)).toHaveCount(0);
  }
  // Escape before Enter: nothing of what was typed comes in when the field is left.
  await length.fill('5000');
  await length.press('Escape');
  await length.blur();
  await expect(length).toHaveValue('4800');
  expect(await savedJob(page)).toEqual(before);
});

test('another unit changes what is shown and nothing in the job', async ({ page }) => {
  await openBoard(page);
  const before = await savedJob(page);
  const length = runLength(page, 'Run A');
  await expect(length).toHaveValue('4800');
  await expect(fact(page, 'Height')).toHaveText('1100 mm');

  await page.getByRole('radio', { name: 'inches' }).check();
  // 4800 / 25.4 = 188.976…, to the nearest 1/64: 188 62.49/64, so 62/64.
  await expect(length).toHaveValue('188 31/32"');
  // 1100 / 25.4 = 43.307…, to the nearest 1/64: 43 19.65/64, so 20/64.
  await expect(fact(page, 'Height')).toHaveText('43 5/16"');
  await expect(page.getByRole('tab', { name: /^Run A/ })).toContainText('"');
  // What is shown is rounded; leaving the field must not write the rounded value into the job.
  await length.focus();
  await length.press('Enter');
  await length.blur();
  expect(await savedJob(page)).toEqual({ ...before, units: 'inch' });

  await page.getByRole('radio', { name: 'millimetres' }).check();
  await expect(length).toHaveValue('4800');
  await expect(fact(page, 'Height')).toHaveText('1100 mm');
  expect(await savedJob(page)).toEqual(before);
});

test('what is half typed goes with the row it was typed in', async ({ page }) => {
  await openNew(page);
  for (let i = 0; i < 3; i++) await page.getByRole('button', { name: 'Add an opening' }).click();
  const width = (name: string): Locator => thing(page, name).getByLabel('Width of the hole');
  await refused(width('Opening 2'), 'abc', /'abc': not a length/);
  const kept = await width('Opening 3').inputValue();
  await thing(page, 'Opening 2').getByRole('button', { name: 'Remove Opening 2' }).click();
  await expect(thing(page, 'Opening 2')).toHaveCount(0);
  // Still unfolded, and untouched.
  await expect(width('Opening 3')).toBeVisible();
  await expect(width('Opening 3')).toHaveValue(kept);
  await expect(problem(width('Opening 3'))).toHaveCount(0);
  await test.step('and the keyboard goes on from the head of the list', async () => {
    await expect(page.locator('summary').filter({ hasText: /^Openings$/ })).toBeFocused();
  });
});

test('a wall keeps the focus when it is given another name', async ({ page }) => {
  await openNew(page);
  await page.getByRole('button', { name: 'Add a wall' }).click();
  const name = page.getByLabel('Name of the wall');
  await type(name, 'Chimney breast');
  await expect(group(page, 'Chimney breast')).toBeVisible();
  await expect(name).toBeFocused();
});
