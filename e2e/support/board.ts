import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page } from '@playwright/test';
import type { Job } from '../../src/vocabulary/job';

/** The job that the app opens on at the very first start, from the repository's root. */
export const DEMO = 'public/examples/corner-return.job.json';

/** What a file input takes instead of a path. */
export interface Handed {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

export const handed = (text: string, name = 'handed.job.json'): Handed => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});

/** Opens the app and waits until the unit has been drawn. Saving is by download, as the picker can't be worked from here. */
export async function openBoard(page: Page): Promise<void> {
  await page.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
  await page.goto('./');
  await drawn(page);
}

/** The same, on a new job: 2400 straight, three bays, a carcass behind them. */
export async function openNew(page: Page): Promise<void> {
  await openBoard(page);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(page.locator('.job-name')).toHaveText('New job');
}

/** Waits until the view holds a picture. */
export const drawn = (page: Page): Promise<void> => expect(canvas(page)).toHaveAttribute('data-calls', /^[1-9]/);

export const canvas = (page: Page): Locator => page.locator('.scene canvas');

/** The decisions' group of one run, of one end, or of one room. */
export const group = (page: Page, name: string): Locator => page.getByRole('group', { name, exact: true });

/** The row of an opening, a single bay or a join among the decisions, folded or not, with what is said of it. */
export const thing = (page: Page, name: string): Locator =>
  page.locator('.column.left .thing').filter({ has: page.locator('summary b').getByText(name, { exact: true }) });

export const runLength = (page: Page, run: string): Locator => group(page, run).getByLabel('Length', { exact: true });

/** Types into a field as a person does: over what stands there, then Enter. */
export async function type(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press('Enter');
}

/** Waits until the browser has kept the last edit. */
export const kept = (page: Page): Promise<void> =>
  expect(page.locator('header').getByRole('status')).toHaveText('Kept');

/** One fact by its name: its value, without what the last edit changed. */
export const fact = (page: Page, name: string): Locator => factRow(page, name).locator('.value');

/** What the last edit did to a fact. */
export const factChange = (page: Page, name: string): Locator => factRow(page, name).locator('.by');

const factRow = (page: Page, name: string): Locator =>
  page
    .getByRole('region', { name: 'Over all' })
    .locator('dl > div')
    .filter({ has: page.getByText(name, { exact: true }) });

/** All facts over all, as they stand. */
export const facts = (page: Page): Promise<string[]> =>
  page.getByRole('region', { name: 'Over all' }).locator('.value').allTextContents();

/** The findings, each as its message. */
export const findings = (page: Page): Locator => page.getByRole('region', { name: /^Findings/ }).locator('.message');

/** The part's card. */
export const card = (page: Page): Locator => page.locator('section.card');

/** What the browser downloads while something is done. */
export async function downloaded(page: Page, act: () => Promise<void>): Promise<{ path: string; name: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), act()]);
  return { path: await download.path(), name: download.suggestedFilename() };
}

/** Saves the job on the board as a job file, and gives its path. */
export async function saved(page: Page): Promise<string> {
  const { path } = await downloaded(page, () => page.getByRole('button', { name: 'Save', exact: true }).click());
  return path;
}

/** The job on the board, by way of its file. */
export const savedJob = async (page: Page): Promise<Job> => jobIn(await saved(page));

export const jobIn = (path: string): Job => JSON.parse(readFileSync(path, 'utf8')) as Job;

/** Hands something on from the export menu, and gives the file's content. */
export async function exported(page: Page, label: string): Promise<Buffer> {
  const { path } = await downloaded(page, async () => {
    await page.getByRole('button', { name: 'Export', exact: true }).click();
    await page.getByRole('button', { name: label, exact: true }).click();
  });
  return readFileSync(path);
}

/** Chooses a job file as the dialog of "Open" would. */
export const openFile = (page: Page, file: string | Handed): Promise<void> =>
  page.getByLabel('Job file to open').setInputFiles(file);

/** Brings a run on to the rod. */
export const chooseRun = (page: Page, run: string): Promise<void> =>
  page.getByRole('tab', { name: new RegExp(`^${run}\\b`) }).click();

/** A length as it is written on the board, in mm: to the step of the demo's workshop. A half goes up, noise or no. */
export function toTheStep(mm: number): string {
  const { roundingStep } = jobIn(DEMO).tools;
  return plain(Math.round(mm / roundingStep + 1e-9) * roundingStep);
}

/** Findings as they are shown: those of one rule and severity where the first of them stands. */
export const asShown = <F extends { readonly rule: string; readonly severity: string }>(found: readonly F[]): F[] => {
  const lot = ({ rule, severity }: F) => found.findIndex((one) => one.rule === rule && one.severity === severity);
  return [...found].sort((a, b) => lot(a) - lot(b));
};

/** A length in mm with at most two decimals. */
export const plain = (mm: number): string => String(Number(mm.toFixed(2)));
