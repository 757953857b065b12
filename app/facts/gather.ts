import type { Finding } from '../../src/vocabulary/finding';

/** Findings of one rule and one severity: the first, and those like it. */
export interface Gathered {
  readonly first: Finding;
  readonly others: readonly Finding[];
}

/** Findings that are alike together, each lot where its first one stands. None is dropped. */
export function gathered(findings: readonly Finding[]): readonly Gathered[] {
  const lots = new Map<string, { first: Finding; others: Finding[] }>();
  for (const finding of findings) {
    const key = `${finding.severity} ${finding.rule}`;
    const lot = lots.get(key);
    if (lot) lot.others.push(finding);
    else lots.set(key, { first: finding, others: [] });
  }
  return [...lots.values()];
}
