import { expect, test } from 'vitest';
import { cover } from '../../../src/elements/cover';
import { design } from '../../../src/flow';
import { bookOf } from '../../../src/job/book';
import { jobOf } from '../job-of';

test('a strip is at least 20 high: the skirting is 120, so the top begins at 140', () => {
  const made = design(
    jobOf({
      elements: { pillar: { rhythm: 'count', bays: 2, width: 100, flutes: 0 } },
      joins: { by: 'hand', at: [{ run: 1, x: 1270 }] },
    }),
  );
  const at = (frameHeight: number) =>
    cover.parts({ sheet: 'mdf-6' }, { rod: { ...made.rod, frameHeight }, framing: [], openings: [], book: bookOf(made.job) }); // biome-ignore format: one line
  expect(at(140).drafts).toHaveLength(1);
  expect(at(139.9).drafts).toEqual([]);
  expect(at(139.9).findings.map((f) => f.rule)).toContain('cover-no-height');
});
