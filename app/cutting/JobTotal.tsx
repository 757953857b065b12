import { useState } from 'react';
import { Table } from '../sheets/Table';
import { Dialog } from '../shell/Dialog';
import { unbroken } from '../shell/format';
import type { Held } from './held';
import { fetchLines, jobTotal } from './order-list';
import { Printed } from './Printed';
import { type Cost, goodness, number, type Say } from './words';

interface Props {
  readonly batches: readonly Held[];
  readonly job: string;
  readonly say: Say;
  readonly costs: Cost;
}

/** What the whole job costs and how good that is, and what is to be fetched for it. */
export function JobTotal({ batches, job, say, costs }: Props) {
  const [listed, setListed] = useState(false);
  const total = jobTotal(batches);
  const left = total.unplaced.reduce((sum, { quantity }) => sum + quantity, 0);
  if (total.open === batches.length) return null;
  const list = <OrderList batches={batches} say={say} costs={costs} />;
  return (
    <section className="job-total" aria-label="The whole job">
      <p>
        All stuffs: <b>{costs(total.cost)}</b>
      </p>
      <small className={total.proven && total.open === 0 ? 'good' : undefined}>
        {total.open > 0 ? `${number(total.open, 'stuff')} still to be laid out` : goodness(total)}
      </small>
      {left > 0 ? <small className="short">{left} can’t be cut</small> : null}
      <button type="button" onClick={() => setListed(true)}>
        What to fetch
      </button>
      {listed ? (
        <Dialog title="What to fetch" onClose={() => setListed(false)}>
          <div className="order-list">
            {list}
            <Printed label="Print" title={`${job || 'Job'}: what to fetch`} head={[]}>
              {list}
            </Printed>
          </div>
        </Dialog>
      ) : null}
    </section>
  );
}

function OrderList({ batches, say, costs }: Omit<Props, 'job'>) {
  const total = jobTotal(batches);
  return (
    <Table
      headings={[{ title: 'Stuff' }, { title: 'Fetch' }, { title: 'Cost', number: true }]}
      label="What to fetch for the job"
    >
      {batches.flatMap(({ batch, shown, locked }) =>
        shown
          ? [
              <tr key={batch.id}>
                <th scope="row">{unbroken(batch.name)}</th>
                <td>
                  {fetchLines(shown, locked, say, costs).map((line) => (
                    <div key={line}>{unbroken(line)}</div>
                  ))}
                </td>
                <td className="number">{costs(shown.plan.cost)}</td>
              </tr>,
            ]
          : [],
      )}
      <tr>
        <th scope="row">All stuffs</th>
        <td>{goodness(total)}</td>
        <td className="number">{costs(total.cost)}</td>
      </tr>
    </Table>
  );
}
