import type { Finding } from '../../src/vocabulary/finding';
import { goToDecision } from '../shell/go-to';
import { app } from '../store/app';
import { useDesign } from '../store/hooks';
import { decisionName, shownAt } from './decision-name';
import { type Gathered, gathered } from './gather';
import { canBeShown, showSubject } from './subject';

const words: Readonly<Record<Finding['severity'], string>> = {
  stop: 'Can’t be built so',
  warn: 'Take care',
  note: 'Worth knowing',
};

/** What was found, as a way to what it is about; `headed`: with how grave it is. */
function Said({ finding, headed }: { readonly finding: Finding; readonly headed: boolean }) {
  const { job, parts } = useDesign();
  const { severity, subject, message } = finding;
  const show = () => {
    showSubject(subject, parts, app.getState());
    if (subject.path) goToDecision(shownAt(subject.path, job));
  };
  const text = (
    <>
      {headed ? <span className={`severity ${severity}`}>{words[severity]}</span> : null}
      <span className="message">{message}</span>
    </>
  );
  return canBeShown(subject) ? (
    <button type="button" className={`finding ${severity}`} onClick={show}>
      {text}
    </button>
  ) : (
    <div className={`finding ${severity}`}>{text}</div>
  );
}

/** The others of a lot, folded away; what to do about them is what is to be done about the first. */
function Others({ others }: Pick<Gathered, 'others'>) {
  return (
    <details className="others">
      <summary>and {others.length} more like it</summary>
      <ul>
        {others.map((finding, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two findings may read alike; their order is their identity
          <li key={i}>
            <Said finding={finding} headed={false} />
          </li>
        ))}
      </ul>
    </details>
  );
}

function Lot({ first, others }: Gathered) {
  const { job, rod } = useDesign();
  const decision = first.subject.path === undefined ? null : decisionName(first.subject.path, job, rod.runs);
  return (
    <li>
      <Said finding={first} headed />
      {others.length > 0 ? <Others others={others} /> : null}
      <p className="remedy">{first.remedy}</p>
      {first.caution ? <p className="remedy caution">{first.caution}</p> : null}
      {decision === null ? null : <p className="decided">Decision: {decision}</p>}
      <p className="source">{first.source}</p>
    </li>
  );
}

/** What the checks found, worst first, like ones together; choosing one shows what it is about. */
export function Findings() {
  const { findings } = useDesign();
  return (
    <section className="facts" aria-labelledby="findings-title">
      <h3 id="findings-title">
        Findings <span className="count">{findings.length}</span>
      </h3>
      {findings.length === 0 ? <p className="aside">The checks found nothing to say.</p> : null}
      <ul className="findings">
        {gathered(findings).map((lot) => (
          <Lot key={`${lot.first.severity} ${lot.first.rule}`} {...lot} />
        ))}
      </ul>
    </section>
  );
}
