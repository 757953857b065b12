import { useMemo } from 'react';
import { unbroken } from '../shell/format';
import { cutting, useCutting } from './board';
import { changeWords, cutWords } from './changed';
import { atWork, type Held } from './held';
import { type Cost, goodness, standWords, stockWords } from './words';

/** How long "go on" goes on for, s. */
const LONGER = [2, 10, 30, 120] as const;

interface Props {
  readonly held: Held;
  readonly costs: Cost;
  /** What is to be fetched for it. */
  readonly fetch: readonly string[];
  readonly onAnew: () => void;
  readonly children?: React.ReactNode;
}

/** What is known of a batch's plan, and what can be done about it. */
export function PlanHead({ held, costs, fetch, onAnew, children }: Props) {
  const { shown, batch, done } = held;
  const { before } = held;
  const changed = useMemo(() => changeWords({ shown, before }, costs), [shown, before, costs]);
  const cutAlready = cutWords(held);
  return (
    <div className="plan-head">
      <div>
        <h3>{unbroken(batch.name)}</h3>
        {shown ? (
          <p>
            {stockWords(shown.plan)}, {costs(shown.plan.cost)}: <b>{goodness(shown.plan)}</b>
          </p>
        ) : null}
        {fetch.length > 0 ? <p className="fetch">Fetch {unbroken(fetch.join(', '))}</p> : null}
        <Progress held={held} />
        {cutAlready ? <p className="changed">{cutAlready}</p> : null}
        {held.newer && !done ? (
          <p className="changed">
            Stock, prices or the way of cutting have changed since. What is cut stays; plan the rest anew to mind it.
          </p>
        ) : null}
        {changed ? <p className="changed">{changed}</p> : null}
      </div>
      <div className="plan-tools">
        {done ? null : <Search held={held} onAnew={onAnew} />}
        {children}
      </div>
    </div>
  );
}

/** How far the search is; read out only when it has come to rest. */
function Progress({ held }: { readonly held: Held }) {
  const busy = atWork(held);
  return (
    <p className="progress">
      <span role="status">{busy ? '' : standWords(held)}</span>
      {busy ? (
        <>
          <progress
            max={held.allowed}
            value={held.stand === 'waiting' ? undefined : Math.min(held.spent, held.allowed)}
            aria-label="Time spent on bettering it"
          />
          <span>{standWords(held)}</span>
        </>
      ) : null}
    </p>
  );
}

function Search({ held, onAnew }: Pick<Props, 'held' | 'onAnew'>) {
  const { batch, stand, locked } = held;
  const seconds = useCutting((state) => state.longer);
  if (atWork(held))
    return (
      <button type="button" onClick={() => cutting.stop(batch.id)}>
        Stop
      </button>
    );
  // What has been laid by hand, or is cut already, is not to be gone on with but begun anew.
  if (stand === 'by hand' || locked.length > 0 || stand === 'failed')
    return (
      <button type="button" onClick={onAnew}>
        {locked.length > 0 ? 'Plan the rest anew' : 'Plan anew'}
      </button>
    );
  if (held.shown?.plan.proven && stand === 'done') return null;
  return (
    <fieldset className="group go-on" aria-label="Go on bettering it">
      <button type="button" onClick={() => cutting.goOn(batch.id, seconds * 1000)}>
        Go on
      </button>
      <select
        aria-label="For how long"
        value={seconds}
        onChange={(event) => cutting.setState({ longer: Number(event.target.value) })}
      >
        {LONGER.map((s) => (
          <option key={s} value={s}>
            {s < 60 ? `${s} s` : `${s / 60} min`}
          </option>
        ))}
      </select>
    </fieldset>
  );
}
