import type { Finding } from '../../src/vocabulary/finding';

/** What the checks say of the row above, as it is typed or dragged. */
export function Refusals({ found }: { readonly found: readonly Finding[] }) {
  return (
    <div className="refusals" aria-live="polite">
      {found.map((finding, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two findings may read alike; their order is their identity
        <p key={i} className={`refusal ${finding.severity}`}>
          {finding.message} <span className="remedy">{finding.remedy}</span>
        </p>
      ))}
    </div>
  );
}
