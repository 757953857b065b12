import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page, test } from '@playwright/test';
import type { Design } from '../src/vocabulary/design';
import type { Mark } from '../src/vocabulary/rod';
import {
  asShown,
  canvas,
  chooseRun,
  DEMO,
  exported,
  fact,
  factChange,
  facts,
  group,
  jobIn,
  kept,
  openBoard,
  runLength,
  saved,
  savedJob,
  toTheStep,
  type,
} from './support/board';
import { command, findingsOf, partsOf, rodOf } from './support/command';

/** Marks as the rod says them: place and reason, each once. */
const said = (marks: readonly Mark[]): string[] => [
  ...new Set(marks.map(({ x, reason }) => `${toTheStep(x)} mm ${reason}`)),
];

/** Every mark of a lane on the rod, those that share a stroke one by one. */
async function marksOn(page: Page, lane: Mark['lane']): Promise<string[]> {
  const pins = await page.locator(`.rod-lane-${lane} [role=button]`).all();
  const names = await Promise.all(pins.map((pin) => pin.getAttribute('aria-label')));
  return names.flatMap((name) => {
    const [, at, reasons] = /^(\S+ mm) (.*)$/.exec(name ?? '') ?? [];
    return (reasons ?? '').split('; ').map((reason) => `${at} ${reason}`);
  });
}

/** Everything on the rod of every run against the setting-out of the command line. */
async function rodAgrees(page: Page, { rod, framing, marks }: Pick<Design, 'rod' | 'framing' | 'marks'>) {
  expect(rod.runs.map((run) => run.id)).toEqual(['A', 'B', 'RR']);
  for (const run of rod.runs) {
    await chooseRun(page, run.name);
    const tab = page.getByRole('tab', { name: new RegExp(`^${run.name}\\b`) });
    await expect(tab).toHaveAttribute('aria-selected', 'true');
    await expect(tab).toContainText(toTheStep(run.length));

    const widths = page.locator('.rod-lane-front .rod-width');
    const bays = run.bays.map((bay) => toTheStep(bay.to - bay.from));
    await expect.poll(async () => (await widths.allTextContents()).slice(0, bays.length)).toEqual(bays);

    const studs = framing.find((one) => one.run === run.id)?.studs ?? [];
    const centres = studs.map((stud) => `${toTheStep((stud.from + stud.to) / 2)} mm`);
    const timber = await marksOn(page, 'timber');
    expect(new Set(timber.map((name) => name.split(' stud')[0]))).toEqual(new Set(centres));
    for (const lane of ['front', 'skin', 'timber'] as const) {
      const wanted = said((marks[run.id] ?? []).filter((mark) => mark.lane === lane));
      expect(wanted.length).toBeGreaterThan(1);
      expect((await marksOn(page, lane)).sort()).toEqual(wanted.sort());
    }
  }
}

/** Rows of the parts list on a page. */
const ROWS = 250;

/** Mark, name, place and sizes of every row of the parts list, page by page; each page is full but the last. */
async function listed(page: Page, rows: Locator, count: number): Promise<(string | null | undefined)[][]> {
  const shown: (string | null | undefined)[][] = [];
  for (let left = count; left > 0; left -= ROWS) {
    await expect(rows).toHaveCount(Math.min(left, ROWS));
    shown.push(
      ...(await rows.evaluateAll((all) =>
        all.map((row) => [0, 1, 2, 4, 5, 6].map((cell) => row.children[cell]?.textContent)),
      )),
    );
    if (left <= ROWS) break;
    await page.getByRole('button', { name: 'Next', exact: true }).click();
    const number = (count - left) / ROWS + 2;
    await expect(page.getByRole('navigation', { name: 'Pages of the parts list' })).toContainText(`Page ${number} of`);
  }
  return shown;
}

/** Facts, view and parts list against the parts of the command line. */
async function partsAgree(page: Page, { parts, totals }: Pick<Design, 'parts' | 'totals'>) {
  const { length, depth, height } = totals.overall;
  const size = [length, depth, height].map(toTheStep);
  await expect(fact(page, 'Parts')).toHaveText(String(totals.parts));
  expect(await facts(page)).toEqual([
    ...size.map((mm) => `${mm} mm`),
    `${totals.weightKg.toFixed(1)} kg`,
    String(parts.length),
  ]);
  const words = `Servery, finished: ${parts.length} parts, ${size.join(' × ')} over all (length, depth, height).`;
  await expect(canvas(page)).toHaveAttribute('aria-label', words);

  await page.getByRole('radio', { name: 'Parts list' }).check();
  const rows = page.getByRole('region', { name: 'Rows of the parts list' }).locator('tbody tr');
  const shown = await listed(page, rows, parts.length);
  const sizes = parts.map((part) => [part.shopLength, part.size.width, part.size.thickness].map(toTheStep));
  expect(shown).toEqual(parts.map((part, i) => [part.mark, part.name, part.where, ...sizes[i]!]));

  await page.getByRole('radio', { name: 'Alike together' }).check();
  const offs = await rows.getByRole('button').allTextContents();
  expect(offs.length).toBeLessThan(parts.length / 2);
  expect(offs.reduce((sum, off) => sum + Number(/^(\d+) off$/.exec(off)?.[1]), 0)).toBe(parts.length);
  await page.getByRole('radio', { name: 'One by one' }).check();
  await page.getByRole('radio', { name: 'Unit', exact: true }).check();
}

/** What the app hands on against what the command line writes. */
async function exportsAgree(page: Page, job: string, { parts }: Pick<Design, 'parts'>, model: string) {
  const csv = await exported(page, 'Parts list (CSV)');
  expect(csv.toString('utf8')).toBe(command('parts', job, '--format', 'csv'));
  const cutting = await exported(page, 'Cutting list, alike together (CSV)');
  expect(cutting.toString('utf8')).toBe(command('parts', job, '--alike', '--format', 'csv'));
  for (const run of ['A', 'B']) {
    for (const kind of ['front', 'framing']) {
      const label = `${kind === 'front' ? 'Front' : 'Framing'} elevation of Run ${run} (SVG)`;
      const svg = await exported(page, label);
      expect(svg.toString('utf8')).toBe(command('elevation', job, '--run', run, '--kind', kind));
    }
  }
  const glb = await exported(page, 'Solid model (GLB)');
  command('model', job, '--out', model);
  expect(glb.equals(readFileSync(model))).toBe(true);
  // glTF 2.0, 4.4: twelve bytes of header, then the JSON chunk: its length, the word JSON, its text.
  expect(glb.toString('latin1', 16, 20)).toBe('JSON');
  const { nodes } = JSON.parse(glb.toString('utf8', 20, 20 + glb.readUInt32LE(12))) as { nodes: { name: string }[] };
  expect(nodes.map((node) => node.name)).toEqual(parts.map((part) => part.mark));
}

test('a run is lengthened: rod, facts, view and papers say what the command line says', async ({ page }, info) => {
  await openBoard(page);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Larkmoor Hall: café servery');
  const first = partsOf(DEMO);
  await partsAgree(page, first);

  await expect(group(page, 'Run A').getByLabel('Measured over')).toHaveValue('plinth');
  await type(runLength(page, 'Run A'), '5200');
  await kept(page);
  const file = await saved(page);
  const job = jobIn(file);
  expect(job.unit.plan.runs[0]).toMatchObject({ length: 5200, over: 'plinth' });
  expect(job.unit.plan.runs[1]).toEqual(jobIn(DEMO).unit.plan.runs[1]);

  const now = partsOf(file);
  expect(now.totals.overall.length - first.totals.overall.length).toBeCloseTo(400, 6);
  await expect(factChange(page, 'Length')).toHaveText(/\+400 mm$/);
  await partsAgree(page, now);
  await rodAgrees(page, rodOf(file));
  const found = page.getByRole('region', { name: /^Findings/ }).locator('.message');
  await expect(found).toHaveText(asShown(findingsOf(file)).map(({ message }) => message));
  await exportsAgree(page, file, now, info.outputPath('model.glb'));
});

test('undo takes the length back, redo brings it again, and a reload keeps it', async ({ page }) => {
  await openBoard(page);
  const undo = page.getByRole('button', { name: 'Undo' });
  const redo = page.getByRole('button', { name: 'Redo' });
  await expect(undo).toBeDisabled();
  const before = await facts(page);
  const whole = await savedJob(page);

  await type(runLength(page, 'Run A'), '5200');
  await expect(fact(page, 'Length')).not.toHaveText(before[0]!);
  const after = await facts(page);
  await undo.click();
  await expect(runLength(page, 'Run A')).toHaveValue('4800');
  await expect.poll(() => facts(page)).toEqual(before);
  expect(await savedJob(page)).toEqual(whole);
  await expect(undo).toBeDisabled();
  await page.keyboard.press('Control+Shift+Z');
  await expect(runLength(page, 'Run A')).toHaveValue('5200');
  await expect.poll(() => facts(page)).toEqual(after);
  await expect(redo).toBeDisabled();
  await kept(page);

  await page.reload();
  await expect(runLength(page, 'Run A')).toHaveValue('5200');
  await expect.poll(() => facts(page)).toEqual(after);
  // Steps are the page's own; what the browser kept is what one goes back to after that.
  await expect(undo).toBeDisabled();
  await expect(redo).toBeDisabled();
  await page.getByRole('button', { name: 'Kept work' }).click();
  const versions = page.getByRole('dialog').getByRole('button', { name: /^Go back: / });
  await expect(versions).toHaveCount(3);
  await versions.nth(1).click();
  await expect(runLength(page, 'Run A')).toHaveValue('4800');
  await expect.poll(() => facts(page)).toEqual(before);
  await undo.click();
  await expect(runLength(page, 'Run A')).toHaveValue('5200');
});
