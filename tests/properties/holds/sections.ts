import type { Design } from '../../../src/vocabulary/design';
import { reachOf, SAME } from '../measure';
import type { Found } from '../sample';

/** Every part belongs to exactly one section or is site-fitted, and no workshop-fitted part crosses a join; weights add up. */
export function parted({ parts, rod, sections, totals }: Design): Found {
  const wrong: string[] = [];
  const listed = new Map<string, string[]>();
  for (const section of sections)
    for (const mark of section.parts) listed.set(mark, [...(listed.get(mark) ?? []), section.id]);
  for (const part of parts) {
    const where = listed.get(part.mark) ?? [];
    if (part.fitted === 'site' && (where.length > 0 || part.inSection !== undefined))
      wrong.push(`${part.mark} is site-fitted and in ${where.join(', ')}`);
    if (part.fitted === 'workshop' && (where.length !== 1 || where[0] !== part.inSection))
      wrong.push(`${part.mark} says section ${part.inSection} and is in ${where.join(', ') || 'none'}`);
    const run = rod.runs.find((r) => r.id === part.run);
    if (!run) wrong.push(`${part.mark} is of no run`);
    else if (part.fitted === 'workshop') {
      const { from, to } = reachOf(run, part);
      const crossed = run.joins.find(
        ({ x }) => from < x - 10 * SAME && to > x + 10 * SAME && Math.min(x - from, to - x) > 0.01,
      );
      if (crossed) wrong.push(`${part.mark} (${part.name}) crosses ${crossed.id} at ${crossed.x}: ${from} to ${to}`);
    }
  }
  const carried = sections.reduce((sum, s) => sum + s.weightKg, 0);
  const loose = parts.reduce((sum, p) => sum + (p.fitted === 'site' ? p.weightKg : 0), 0);
  if (Math.abs(carried + loose - totals.weightKg) > 1e-6)
    wrong.push(`${carried} kg in sections and ${loose} loose make ${totals.weightKg}`);
  return { wrong, looked: parts.length };
}
