import type { Finding } from '../../src/vocabulary/finding';
import { gathered } from '../facts/gather';

/** What can't be cut from the stock as it is, and what would make it possible; like ones together, folded away. */
export function CutFindings({ findings }: { readonly findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <details className="cut-findings">
      <summary>{findings.length === 1 ? 'One thing' : `${findings.length} things`} to know before cutting</summary>
      <ul className="findings">
        {gathered(findings).map(({ first, others }) => (
          <li key={`${first.rule} ${first.message}`}>
            <div className={`finding ${first.severity}`}>{first.message}</div>
            {others.length > 0 ? <p className="remedy">And {others.length} more like it.</p> : null}
            <p className="remedy">{first.remedy}</p>
            <p className="source">{first.source}</p>
          </li>
        ))}
      </ul>
    </details>
  );
}
