import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** Serious and critical violations within a part of the page, as rule and places. */
export async function serious(page: Page, within: string): Promise<string[]> {
  const { violations, passes } = await new AxeBuilder({ page }).include(within).analyze();
  // It looked at something.
  expect(passes.length).toBeGreaterThan(5);
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(' | ')}`);
}
