import type { Finding } from '../../src/vocabulary/finding';
import { goToDecision } from '../shell/go-to';
import { app } from '../store/app';
import { useDesign } from '../store/hooks';
import { canBeShown, showSubject } from './subject';

const words: Readonly<Record<Finding['severity'], string>> = {
  stop: 'Can’t be built so',
  warn: 'Take care',
  note: 'Worth knowing',
};

function Text({ finding }: { readonly finding: Finding }) {
  return (
    <>
      <span className={`severity ${finding.severity}`}>{words[finding.severity]}</span>
      <span className="message">{finding.message}</span>
    </>
  );
}

function Item({ finding }: { readonly finding: Finding }) {
  const { parts } = useDesign();
  const { subject } = finding;
  const show = () => {
    showSubject(subject, parts, app.getState());
    if (subject.path) goToDecision(subject.path);
  };
  return (
    <li>
      {canBeShown(subject) ? (
        <button type="button" className="finding" onClick={show}>
          <Text finding={finding} />
        </button>
      ) : (
        <div className="finding">
          <Text finding={finding} />
        </div>
      )}
      <p className="remedy">{finding.remedy}</p>
      {finding.caution ? <p className="remedy caution">{finding.caution}</p> : null}
      <p className="source">{finding.source}</p>
    </li>
  );
}

/** What the checks found, worst first; choosing one shows what it is about. */
export function Findings() {
  const { findings } = useDesign();
  return (
    <section className="facts" aria-labelledby="findings-title">
      <h3 id="findings-title">
        Findings <span className="count">{findings.length}</span>
      </h3>
      {findings.length === 0 ? <p className="aside">The checks found nothing to say.</p> : null}
      <ul className="findings">
        {findings.map((finding, i) => (
          // Two findings may read alike; their order is their identity.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <Item key={`${finding.rule} ${i}`} finding={finding} />
        ))}
      </ul>
    </section>
  );
}
