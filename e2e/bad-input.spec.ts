import { readFileSync, writeFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import {
  canvas,
  DEMO,
  drawn,
  exported,
  fact,
  findings,
  handed,
  kept,
  openBoard,
  openFile,
  runLength,
  savedJob,
  type,
} from './support/board';

type Loose = { [name: string]: Loose };

/** The demo's text with something done to it. */
function spoiled(how: (job: Loose) => void): string {
  const job = JSON.parse(readFileSync(DEMO, 'utf8')) as Loose;
  how(job);
  return JSON.stringify(job);
}

/** Sets anything at all at a place in a job: that is what foreign files do. */
const put = (path: string, value: unknown) => (job: Loose) => {
  const steps = path.split('/').slice(1);
  const last = steps.pop()!;
  const at = steps.reduce((place, step) => place[step]!, job);
  if (value === undefined) delete at[last];
  else at[last] = value as Loose;
};
const LENGTH = '/unit/plan/runs/0/length';
const allowed = /^\/unit\/plan\/runs\/0\/length: found .*; allowed is a length from 100 to 30000 mm$/;

/** What is opened, and what must be said of it. */
const REFUSED: readonly (readonly [what: string, text: string, says: RegExp])[] = [
  ['a letter', 'Dear Sirs,\nplease find', /^this is not JSON: line 1, column 1: found "D" where a value should be$/],
  [
    'half a job',
    // Cut off where a decision ends, and in the middle of a word.
    readFileSync(DEMO, 'utf8')
      .slice(0, 900)
      .replace(/[^,]*$/, ''),
    /^this is not JSON: line \d+, column \d+: found the end of the file/,
  ],
  [
    'half a word',
    '{"format":"counterwright-jo',
    /^this is not JSON: line 1, column 11: found "\\"" where a finished text should be$/,
  ],
  ['nothing', '', /^this is not JSON: .*the end of the file/],
  ['a list', '[1, 2, 3]', /^this is no Counterwright job: found a list of 3$/],
  ['other JSON', '{"name": "package", "version": "1.0.0"}', /^\/format: this is JSON but not a Counterwright job/],
  ['a newer version', spoiled(put('/version', 99)), /^\/version: .*99/],
  ['a missing decision', spoiled(put('/unit/plan', undefined)), /^\/unit\/plan: missing: needs /],
  ['an unknown name', spoiled(put('/unit/colour', 'green')), /^\/unit\/colour: /],
  ['an unknown room', spoiled(put('/unit/elements/chandelier', {})), /^\/unit\/elements\/chandelier: /],
  [
    'a text for a length',
    spoiled(put(LENGTH, '4800')),
    /^\/unit\/plan\/runs\/0\/length: found the text "4800"; allowed is/,
  ],
  ['NaN as a text', spoiled(put(LENGTH, 'NaN')), /^\/unit\/plan\/runs\/0\/length: found the text "NaN"; allowed is/],
  [
    'NaN bare',
    spoiled(put(LENGTH, 0)).replace('"length":0', '"length":NaN'),
    /^this is not JSON: line 1, column \d+: found "N"/,
  ],
  ['a number beyond any', spoiled(put(LENGTH, 0)).replace('"length":0', '"length":1e999'), allowed],
  ['a negative length', spoiled(put(LENGTH, -4800)), allowed],
  ['no length', spoiled(put(LENGTH, 0)), allowed],
  ['a huge length', spoiled(put(LENGTH, 1e12)), allowed],
  ['null', spoiled(put(LENGTH, null)), allowed],
  ['a list for a group', spoiled(put('/unit/elements/pillar', [])), /^\/unit\/elements\/pillar: found an empty list/],
  [
    'stock that is not in the book',
    spoiled(put('/unit/elements/frame/timber', 'gold')),
    /^\/unit\/elements\/frame\/timber: .*gold/,
  ],
  [
    'a name of the language',
    spoiled(() => {}).replace('"unit":{', '"unit":{"__proto__":{"a":1},'),
    /^\/unit\/__proto__: /,
  ],
  [
    'mark-up for a name',
    spoiled(put('/unit/<img src=x onerror="window.ran=1">', 1)),
    /^\/unit\/<img src=x onerror="window\.ran=1">: /,
  ],
  [
    'too deep',
    `{"format":"counterwright-job","a":${'['.repeat(50_000)}${']'.repeat(50_000)}}`,
    /nested more than \d+ deep/,
  ],
  [
    'six million characters',
    `{"format":"counterwright-job","name":"${'x'.repeat(6_000_000)}"}`,
    /^the file is too large: 6\.0 million characters; at most 5\.0 million are read$/,
  ],
  [
    'more than twenty megabytes',
    ' '.repeat(20_000_001),
    /^It holds 20000001 bytes; a job file has at most 20000000\.$/,
  ],
];

const notice = (page: Page) => page.locator('.notice');

test('a file that can’t be read is said to be so, with the place, and the job on the board stays', async ({
  page,
}, info) => {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(String(error)));
  await openBoard(page);
  await type(runLength(page, 'Run A'), '5200');
  await kept(page);
  const before = await savedJob(page);
  const long = await fact(page, 'Length').textContent();

  for (const [what, text, says] of REFUSED) {
    await test.step(what, async () => {
      const name = `${what}.json`;
      writeFileSync(info.outputPath(name), text);
      await openFile(page, info.outputPath(name));
      await expect(notice(page)).toHaveRole('alert');
      await expect(notice(page).locator('p')).toHaveText(
        `“${name}” can’t be opened. The job on the board is untouched.`,
      );
      await expect(notice(page).getByRole('listitem').first()).toHaveText(says);
      await expect(fact(page, 'Length')).toHaveText(long ?? '');
      await notice(page).getByRole('button', { name: 'Dismiss' }).click();
      await expect(notice(page)).toHaveCount(0);
    });
  }
  expect(await savedJob(page)).toEqual(before);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);
  expect(faults).toEqual([]);
});

test('several faults are told one by one, at their places', async ({ page }) => {
  await openBoard(page);
  const text = spoiled((job) => {
    put(LENGTH, -1)(job);
    put('/unit/height', 'high')(job);
    put('/client', undefined)(job);
    put('/site/town', 'Larkmoor')(job);
  });
  await openFile(page, handed(text));
  const lines = await notice(page).getByRole('listitem').allTextContents();
  expect(lines.map((line) => line.split(':')[0]).sort()).toEqual(
    ['/client', '/site/town', '/unit/height', LENGTH].sort(),
  );
});

test('mark-up in a job’s words is shown as words, and never run', async ({ page }) => {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(String(error)));
  const evil = '<img src=x onerror="window.ran=1"><script>window.ran=1</script>';
  const text = spoiled((job) => {
    put('/name', `${evil}&amp;`)(job);
    put('/unit/name', evil)(job);
    put('/client/name', evil)(job);
    put('/survey/walls/0/name', evil)(job);
    put('/unit/plan/leftEnd/wall', evil)(job);
    for (const item of Object.values(job.stock!.items!)) put('/name', evil)(item);
  });
  await openBoard(page);
  await openFile(page, handed(text, '<b>job</b>.json'));
  await expect(page.getByRole('heading', { level: 1 })).toContainText(`${evil}&amp;`);
  await expect(page.getByRole('group', { name: evil, exact: true })).toBeVisible();
  await expect(findings(page).filter({ hasText: evil })).not.toHaveCount(0);
  await drawn(page);
  await expect(canvas(page)).toHaveAttribute('aria-label', /^<img src=x/);
  await page.getByRole('radio', { name: 'Parts list' }).check();
  await expect(page.getByRole('cell', { name: evil }).first()).toBeVisible();
  await page.getByRole('button', { name: 'Kept work' }).click();
  await expect(page.getByRole('dialog')).toBeVisible();
  await page.keyboard.press('Escape');

  const svg = (await exported(page, 'Front elevation of Run A (SVG)')).toString('utf8');
  const sheet = await page.evaluate((source) => {
    const read = new DOMParser().parseFromString(source, 'image/svg+xml');
    return {
      faults: read.querySelectorAll('parsererror, script, img').length,
      words: read.documentElement.textContent,
    };
  }, svg);
  expect(sheet.faults).toBe(0);
  expect(sheet.words).toContain('<img src=x');
  expect(await page.locator('img[src="x"]').count()).toBe(0);
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);
  expect(faults).toEqual([]);
});
