import { expect, test } from 'vitest';
import { design } from '../../../src/flow';
import type { Decision } from '../../../src/vocabulary/field';
import { findingOf, jobOf, rulesOf } from '../job-of';

/** Skirting 120 high and a margin of 70: frames begin at 190. Brackets of a foot rail reach as high as its middle and more, 10 is kept clear. */
const made = (height: number, panel: Readonly<Record<string, Decision>> = {}) =>
  design(jobOf({ elements: { footrail: { wanted: true, height }, panel } }));

test('a frame that begins higher than its margin has it, over the brackets of a foot rail, is said once', () => {
  const said = made(300).findings.filter((f) => f.rule === 'panel-raised');
  expect(said).toMatchObject([{ severity: 'note', value: 310, limit: 190 }]);
  for (const figure of ['190 mm', '300 mm', '310 mm']) expect(said[0].message).toContain(figure);
});

test('where the margin is enough, or there are no frames, nothing is said', () => {
  // 300 + 10 − 120 = 190.
  expect(rulesOf(made(300, { margin: 190 }))).not.toContain('panel-raised');
  expect(findingOf(made(300, { margin: 189.9 }), 'panel-raised')).toMatchObject({ value: 310, limit: 309.9 });
  expect(rulesOf(made(300, { rows: 0 }))).not.toContain('panel-raised');
});
