import { unbroken } from '../shell/format';
import type { Held } from './held';
import { type Cost, goodness, stockWords } from './words';

interface Props {
  readonly batches: readonly Held[];
  readonly chosen: string;
  readonly costs: Cost;
  readonly onChoose: (id: string) => void;
}

/** What is cut from one stuff each: how much of it, what it costs, and how good the plan is known to be. */
export function BatchList({ batches, chosen, costs, onChoose }: Props) {
  return (
    <ul className="batches" aria-label="Stuff to be cut">
      {batches.map((held) => (
        <li key={held.batch.id}>
          <button
            type="button"
            aria-current={held.batch.id === chosen ? 'true' : undefined}
            onClick={() => onChoose(held.batch.id)}
          >
            <b>{unbroken(held.batch.name)}</b>
            <Told held={held} costs={costs} />
          </button>
        </li>
      ))}
    </ul>
  );
}

function Told({ held, costs }: { readonly held: Held; readonly costs: Cost }) {
  const { shown, stand, done } = held;
  if (!shown) return <small>{stand === 'failed' ? 'could not be planned' : 'being laid out…'}</small>;
  const { plan } = shown;
  const left = plan.unplaced.reduce((sum, { quantity }) => sum + quantity, 0);
  return (
    <>
      <small>
        {stockWords(plan)}, {costs(plan.cost)}
      </small>
      {left > 0 ? <small className="short">{left} can’t be cut</small> : null}
      <small className={plan.proven ? 'good' : undefined}>{done ? 'cut' : goodness(plan)}</small>
    </>
  );
}
